import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvRows } from '../../.build/steel-table.ts';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';
import { steelRank } from '../../src/steel/strength-class.ts';

const tell = (text: string) => describeDesignation(text, { find: false });
const tables = (path: string): readonly string[] => [
  ...new Set(
    csvRows(readFileSync(new URL(path, import.meta.url), 'utf8')).map(
      (row) => row['designation'] ?? row['text'] ?? '',
    ),
  ),
];
const needStandard = new Set(['CS', 'DS', 'DDS', 'EDDS']);
const grades = tables('../../src/steel/data/grades.csv').filter((name) => !needStandard.has(name));
const drawings = tables('drawing-names.csv');

const wide = (text: string): string =>
  text.replaceAll(/[!-~]/g, (char) => String.fromCharCode(char.charCodeAt(0) + 0xfee0));

/** Between a letter and a figure, where a hyphen or blank parts no number. */
const parted = (text: string, by: string): string =>
  text.replaceAll(/(?<=[a-z])(?=\d)|(?<=\d)(?=[a-z])/gi, by);

const spellings: readonly (readonly [how: string, spell: (name: string) => string])[] = [
  ['as it is', (name) => name],
  ['in lower case', (name) => name.toLowerCase()],
  ['without blanks', (name) => name.replaceAll(' ', '')],
  ['without hyphens', (name) => name.replaceAll('-', '')],
  ['with a blank for the hyphen', (name) => name.replaceAll('-', ' ')],
  ['with hyphens', (name) => parted(name, '-')],
  ['with blanks', (name) => parted(name, ' ')],
  ['full-width', wide],
  ['in all of it', (name) => wide(parted(name.toLowerCase(), '–'))],
];

/** SAE prints DP 590T/340Y, ASTM DP590T/340Y. */
const squeezed = (text: string): string => text.replaceAll(/[\s-]/g, '');

/** Designation, standard, class and strengths of every reading. */
function substance(text: string): unknown {
  return tell(text).readings.map((one) => [
    one.designation,
    one.standard,
    one.class,
    one.tensile,
    one.yield,
    one.condition,
  ]);
}

describe.each(spellings)('a grade of the table %s', (_how, spell) => {
  it('reads to itself', () => {
    for (const name of grades) {
      const text = spell(name);
      const own = tell(text).readings.map((one) => squeezed(one.designation));
      expect([text, own.includes(squeezed(name))]).toEqual([text, true]);
      expect([text, substance(text)]).toEqual([text, substance(name)]);
    }
  });
});

describe('whatever the spelling', () => {
  it('no name of a drawing reads weaker than as it is written properly, nor surer', () => {
    const rank = (text: string): number => steelRank(tell(text).class ?? 'aluminium') ?? -1;
    const how = fc.constantFrom(...spellings.map(([, spell]) => spell));
    fc.assert(
      fc.property(fc.constantFrom(...grades, ...drawings), how, how, (name, first, second) => {
        const text = second(first(name));
        const [own, other] = [tell(name), tell(text)];
        fc.pre(own.known !== 'unknown' && other.known !== 'unknown');
        expect([text, rank(text) >= rank(name)]).toEqual([text, true]);
        expect([text, other.class]).toEqual([text, own.class]);
        if (own.known === 'ambiguous') expect([text, other.known]).toEqual([text, 'ambiguous']);
      }),
      { numRuns: 1200 },
    );
  });

  it('a coating or a size behind a name never makes it weaker', () => {
    const behind = fc.constantFrom(
      ...[
        '+Z100',
        '+AS150',
        ' G90',
        ', G60',
        ' GI50/50-U',
        ' 1.2 mm',
        ' t=1.4',
        ' CR HD70G70G',
        '-UC',
        ' A40',
      ],
    );
    fc.assert(
      fc.property(fc.constantFrom(...grades, ...drawings), behind, (name, tail) => {
        const [own, other] = [tell(name), tell(`${name}${tail}`)];
        fc.pre(own.class !== null && other.class !== null);
        const weaker = (steelRank(other.class) ?? -1) < (steelRank(own.class) ?? -1);
        expect([`${name}${tail}`, weaker]).toEqual([`${name}${tail}`, false]);
      }),
      { numRuns: 1200 },
    );
  });

  it('words, sentences and codes that are no grade have no class', () => {
    const words = [
      'door',
      'left',
      'sill',
      'inner',
      'panel',
      'part',
      'no',
      'see',
      'drawing',
      'rev',
      'the',
      'of',
    ];
    const sentence = fc
      .array(fc.oneof(fc.constantFrom(...words), fc.lorem({ maxCount: 1 })), { minLength: 1, maxLength: 6 })
      .map((list) => list.join(' '));
    fc.assert(
      fc.property(sentence, (text) => {
        expect([text, tell(text).class]).toEqual([text, null]);
      }),
      { numRuns: 2000 },
    );
    for (const code of [
      '51-07-234',
      'A 204 880 01 21',
      '8K0 809 605',
      'LH-2231',
      'M8x1.25',
      '#12',
      'T-2',
      'B-pillar',
    ])
      expect([code, tell(code).class]).toEqual([code, null]);
  });
});
