import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvRows } from '../../.build/steel-table.ts';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';
import { steelRank } from '../../src/steel/strength-class.ts';
import { isTradeStep } from '../../src/steel/table/trade-grade.ts';

const tell = (text: string) => describeDesignation(text, { find: false });
const grades = csvRows(readFileSync(new URL('../../src/steel/data/grades.csv', import.meta.url), 'utf8'));
const letters = (text: string): string =>
  text
    .toUpperCase()
    .replaceAll(/\[\d+\]/g, '')
    .replaceAll(/[^A-Z0-9./]/g, '');

/** Names of sheet that must not be heated, of the table and as shops write them. */
const strong = [
  ...new Set(grades.map((row) => row['designation'] ?? '')),
  ...['DP980', 'DP1180', 'MS1500', 'PHS1500', '980DP', '1500P', '1500HF', '1470P'],
  ...['22MnB5+AS150', 'CR1500T-MB-AS75/75', 'CR590Y980T-DP-GI50/50-U', 'HCT980X+Z100', 'DC01+C690'],
].filter((name) => (steelRank(tell(name).class ?? 'aluminium') ?? -1) >= 2);

/** Whether a table grade of its own stands letter for letter in the text, or a trade name in a step that sheet is made in. */
function isAnotherGrade(text: string): boolean {
  return tell(text).readings.every((one) =>
    one.from === 'table'
      ? letters(text).includes(letters(one.designation.replace(/^EN AW-/, '').replace(/ \(extrusion\)/, '')))
      : one.standard === 'trade name' && isTradeStep(one.designation),
  );
}

describe('a name with one wrong sign', () => {
  it('is never surely a weaker steel, or no steel at all, unless it is the name of another grade letter for letter', () => {
    expect(strong.length).toBeGreaterThan(150);
    const sign = fc.constantFrom('', ...'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789+-/ .');
    fc.assert(
      fc.property(fc.constantFrom(...strong), fc.nat(40), sign, fc.boolean(), (name, at, put, over) => {
        const place = at % (name.length + 1);
        const text = name.slice(0, place) + put + name.slice(over || put === '' ? place + 1 : place);
        const rank = steelRank(tell(name).class ?? 'aluminium') ?? -1;
        const answer = tell(text);
        fc.pre(answer.known === 'known');
        const weaker = (steelRank(answer.class ?? 'aluminium') ?? -1) < rank;
        expect([text, weaker && !isAnotherGrade(text)]).toEqual([text, false]);
      }),
      { numRuns: 400 },
    );
  });

  // Each was once read as surely weaker: a temper for a shop's letter, a coating for cold hardening.
  it.each([
    ['1500 F', '1500 P'],
    ['1500 O', '1500 P'],
    ['1500 W', '1500 P'],
    ['1180 F', '1180 MPa'],
    ['1470T4', '1470'],
    ['1912W', '1912 MPa'],
    ['2120O', '2120 MPa'],
    ['1528UW', '1528 MPa'],
    ['AL 590', '590'],
    ['AL590Y', 'JAC590Y'],
    ['AL5 steel', '590'],
    ['DC01+Z590', 'DC01+C590'],
    ['DC01+Z690', 'DC01+C690'],
  ])('%s is not known as what %s is not', (text) => {
    expect(tell(text).known).not.toBe('known');
  });

  it('keeps the strongest reading of a shop name, and both of a temper', () => {
    expect(tell('1500 HF')).toMatchObject({ known: 'ambiguous', class: 'press-hardened' });
    const classes = tell('1500 F').readings.map((one) => one.class);
    expect(classes).toContain('press-hardened');
    expect(classes).toContain('aluminium');
    expect(tell('1500 F').class).toBeNull();
    expect(tell('DC01+Z590').class).toBe('advanced high-strength');
  });
});

// EN 573-3 registers the alloys; body sheet is of the series 5xxx, 6xxx and 7xxx (EN 485-2). From memory.
describe('aluminium', () => {
  it.each(['6016-T4', '6013-T4', '5052-O', '7021-T6', 'A5052P-O', '6111-T4'])(
    '%s is a body alloy',
    (text) => {
      expect(tell(text)).toMatchObject({ known: 'known', class: 'aluminium' });
    },
  );

  it.each(['EN AW-1050A-H24', 'AA 2024-T3', 'EN AW-3003'])('%s has its prefix', (text) => {
    expect(tell(text)).toMatchObject({ known: 'known', class: 'aluminium' });
  });

  it.each(['1050-H14', '2024-T3', '3003-O', '6999-T4'])('%s is not sure without one', (text) => {
    expect(tell(text).known).toBe('ambiguous');
  });

  it('is named by VDA 239-200 with letters of a closed list', () => {
    expect(tell('AL6-OUT')).toMatchObject({ known: 'known', family: 'aluminium 6xxx' });
    expect(tell('AL6-QQ').known).toBe('unknown');
    expect(tell('VDA 239-200 AL5').family).toBe('aluminium 5xxx');
    expect(tell('AL5').known).toBe('unknown');
  });
});
