import { describe, expect, test } from 'vitest';
import { judgeText } from './judge-text.ts';
import { measuredRing } from './measured-ring.ts';
import { changed, lineOf } from './one-change.ts';
import type { Change } from './one-change.ts';

// What cannot be measured, and what only looks so: one sentence, at its line, and never an exception.

const z3 = 'nominal: [0 mm, 1120 mm, 0 mm], before: [0.1 mm, 1120.3 mm, 0 mm], after: [0 mm, 1120 mm, 0 mm]';
const z4 =
  'nominal: [1800 mm, 1120 mm, 0 mm], before: [1800.3 mm, 1120.2 mm, -0.1 mm], after: [1800.2 mm, 1120 mm, 0.1 mm]';
const onLine = (x: number): string =>
  `nominal: [${String(x)} mm, 0 mm, 0 mm], before: [${String(x)} mm, 0 mm, 0 mm], after: [${String(x)} mm, 0 mm, 0 mm]`;

const cases: readonly (readonly [string, readonly Change[], string, string])[] = [
  ['two zero points', [['[Z1, Z2, Z3, Z4]', '[Z1, Z2]']], 'too-few-zero-points', 'zero_points:'],
  [
    'zero points on one line',
    [
      [z3, onLine(500)],
      [z4, onLine(900)],
    ],
    'zero-points-on-one-line',
    'zero_points:',
  ],
  [
    'readings of the zero points on one line',
    [
      ['after: [1800 mm, 0 mm, 0 mm]', 'after: [1 mm, 0 mm, 0 mm]'],
      ['after: [0 mm, 1120 mm, 0 mm]', 'after: [2 mm, 0 mm, 0 mm]'],
      ['after: [1800.2 mm, 1120 mm, 0.1 mm]', 'after: [3 mm, 0 mm, 0 mm]'],
    ],
    'datum-not-fitted-after',
    'zero_points:',
  ],
  [
    'zero points that are not listed',
    [['[Z1, Z2, Z3, Z4]', '[Z1, Z2, Q3, Q4]']],
    'entry-points-nowhere',
    'zero_points:',
  ],
  ['no number', [['before: [1681.2 mm', 'before: [NaN mm']], 'entry-unreadable-quantity', 'name: C3'],
  [
    'a number without end',
    [['before: [1681.2 mm', 'before: [1e308 mm']],
    'entry-unreadable-quantity',
    'name: C3',
  ],
  [
    'beyond any vehicle',
    [['before: [1681.2 mm', 'before: [1681200000 mm']],
    'entry-unreadable-quantity',
    'name: C3',
  ],
  ['no unit', [['before: [1681.2 mm', 'before: [1681.2']], 'entry-unreadable-quantity', 'name: C3'],
  [
    'two axes',
    [['before: [1681.2 mm, 66.3 mm, 1099.4 mm]', 'before: [1681.2 mm, 66.3 mm]']],
    'entry-wrong-kind',
    'name: C3',
  ],
  [
    'a tolerance below nothing',
    [['tolerance: 3 mm, after', 'tolerance: -3 mm, after']],
    'entry-unreadable-quantity',
    'name: A1',
  ],
  [
    'an uncertainty below nothing',
    [['uncertainty: 0.5 mm', 'uncertainty: -0.5 mm']],
    'entry-unreadable-quantity',
    'uncertainty:',
  ],
  ['three corners', [['corners: [C1, C2, C3, C4]', 'corners: [C1, C2, C3]']], 'entry-wrong-kind', 'corners:'],
  [
    'a day to come',
    [['  after: 2026-10-13', '  after: 2027-10-13']],
    'entry-dated-ahead',
    'after: 2027-10-13',
  ],
];

test.each(cases)('%s', (_name, changes, rule, on) => {
  const text = changed(measuredRing, changes);
  const report = judgeText(text);
  expect(report.notJudged).toEqual([]);
  const found = report.findings.filter(({ finding }) => finding.rule === rule);
  expect(found.map(({ place }) => place.line)).toContain(lineOf(text, on));
  for (const { finding } of found)
    expect(finding.message).toMatch(/^[^.]{8,}[^.]*(?:\.[^ ][^.]*)*\.(?: [A-Z“`].*)?$/u);
  expect(['held', 'stopped']).toContain(report.verdict);
});

describe('sets that are no set', () => {
  test('a thousand points in one place: one sentence for all', () => {
    const same = Array.from(
      { length: 1000 },
      (_one, index) =>
        `    - { name: S${String(index)}, on: floor, nominal: [5 mm, 6 mm, 7 mm], before: [5 mm, 6 mm, 7 mm], after: [5 mm, 6 mm, 7.1 mm] }\n`,
    ).join('');
    const text = changed(measuredRing, [['  points:\n', `  points:\n${same}`]]);
    const report = judgeText(text);
    expect(
      report.findings
        .filter(({ finding }) => finding.severity !== 'note' && !finding.rule.startsWith('signed-with'))
        .map(({ finding }) => [finding.rule, finding.message]),
    ).toEqual([
      ['points-in-one-place', 'Points with one and the same nominal place: S0, S1, S2, S3, S4 and 995 more.'],
    ]);
  });

  test('zero points that are one point', () => {
    const text = measuredRing.replaceAll(
      /(name: Z\d, on: floor, nominal: )\[[^\]]*\]/gu,
      '$1[1 mm, 2 mm, 3 mm]',
    );
    const rules = judgeText(text).findings.map(({ finding }) => finding.rule);
    expect(rules).toContain('zero-points-on-one-line');
    expect(rules).toContain('points-in-one-place');
  });

  test.each([
    ['after', 'Z1', 'Z2', 'stop', 'points-exchanged-after'],
    ['after', 'Z1', 'Z4', 'stop', 'points-exchanged-after'],
    ['after', 'Z2', 'C1', 'stop', 'points-exchanged-after'],
    ['before', 'Z1', 'Z2', 'hold', 'points-exchanged-before'],
    ['nominal', 'Z1', 'Z3', 'stop', 'points-exchanged-after'],
  ])(
    '%s of %s and %s in each other’s rows: one %s, and nothing that follows from it',
    (key, one, other, severity, rule) => {
      const row = (name: string): string =>
        new RegExp(`name: ${name},.*?${key}: (\\[[^\\]]*\\])`, 'u').exec(measuredRing)?.[1] ?? '';
      const put = (text: string, name: string, place: string): string =>
        text.replace(new RegExp(`(name: ${name},.*?${key}: )\\[[^\\]]*\\]`, 'u'), `$1${place}`);
      const text = put(put(measuredRing, one, row(other)), other, row(one));
      const report = judgeText(text);
      const worst = report.findings.filter(
        ({ finding }) => finding.severity !== 'note' && !finding.rule.startsWith('signed-with'),
      );
      expect(worst.map(({ finding }) => [finding.severity, finding.rule])).toEqual([[severity, rule]]);
      expect(worst[0]?.finding.message).toContain(`${one} and ${other}, whose deviation falls from`);
      expect(worst[0]?.place.line).toBe(lineOf(text, `name: ${one},`));
    },
  );

  test('a mirrored reading is one stop, and no hundred of them', () => {
    const text = measuredRing.replaceAll(
      /after: \[(-?[\d.]+) mm, (-?)([\d.]+) mm/gu,
      (_whole, x: string, sign: string, y: string) => `after: [${x} mm, ${sign === '-' ? '' : '-'}${y} mm`,
    );
    const worst = judgeText(text).findings.filter(
      ({ finding }) => finding.severity !== 'note' && !finding.rule.startsWith('signed-with'),
    );
    expect(worst.map(({ finding }) => [finding.rule, finding.message])).toEqual([
      ['readings-misread-after', 'The readings after the repair are mirrored: y bears the wrong sign.'],
    ]);
  });
});
