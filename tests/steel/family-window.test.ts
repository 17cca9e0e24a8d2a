import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { csvRows } from '../../.build/steel-table.ts';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';
import { outsideFamily } from '../../src/steel/table/family-window.ts';

const tell = (text: string) => describeDesignation(text, { find: false });
const grades = csvRows(readFileSync(new URL('../../src/steel/data/grades.csv', import.meta.url), 'utf8'));

// No such sheet is made: mild steel ends below 340 MPa (EN 10130), interstitial-free and bake-hardening at about 480 (EN 10268,
// EN 10346), low-alloy sheet at S700MC and HR700LA (EN 10149-2, VDA 239-100), ferrite-bainite at 800. What counts is the class
// that any steel of that strength may have.
describe('a trade name whose figures do not go with its family', () => {
  it.each([
    ['MILD 500/900', 'advanced high-strength'],
    ['IF 300/900', 'advanced high-strength'],
    ['BH 220/950', 'advanced high-strength'],
    ['HSLA 350/970', 'advanced high-strength'],
    ['HSLA 350/1000', 'ultra-high-strength'],
    ['BH 220/1300', 'press-hardened'],
    ['FB950', 'advanced high-strength'],
    // The number may be a yield: hot-rolled martensitic sheet has 900 MPa (EN 10338, HDT1200M), hardened boron steel 950.
    ['HSLA900', 'press-hardened'],
    ['HSLA 950', 'press-hardened'],
    ['BH950', 'press-hardened'],
    ['DP1500', 'press-hardened'],
    ['CP1500', 'press-hardened'],
    ['DP 350/1500', 'press-hardened'],
  ])('%s is ambiguous, and counts as %s', (text, expected) => {
    expect(tell(text)).toMatchObject({ known: 'ambiguous', class: expected });
    expect(tell(text).reason).toContain('letters or a figure must be wrong');
  });

  // Pairs of the application guidelines of the steel industry (yield/tensile).
  it.each([
    ['MILD 140/270', 'mild'],
    ['BH 210/340', 'high-strength'],
    ['IF 300/420', 'high-strength'],
    ['HSLA 350/450', 'high-strength'],
    ['HSLA 700/780', 'advanced high-strength'],
    ['FB 450/600', 'advanced high-strength'],
    ['DP 280/600', 'advanced high-strength'],
    ['DP 700/1000', 'ultra-high-strength'],
    ['TRIP 450/800', 'advanced high-strength'],
    ['CP 700/800', 'advanced high-strength'],
    ['TWIP 450/1000', 'ultra-high-strength'],
    ['MS 950/1200', 'ultra-high-strength'],
    ['MS 1250/1500', 'ultra-high-strength'],
  ])('%s is one that is made: %s', (text, expected) => {
    expect(tell(text)).toMatchObject({ known: 'known', class: expected });
  });

  it('holds in the names of standards too', () => {
    expect(tell('JSC980D')).toMatchObject({ known: 'ambiguous', class: 'ultra-high-strength' });
    expect(tell('JSC590C')).toMatchObject({ known: 'ambiguous', class: 'advanced high-strength' });
    expect(tell('HC900LA').class).toBe('press-hardened');
    expect(tell('CR340/1500DP').class).toBe('press-hardened');
  });

  it('has room for every row of the grade table', () => {
    const number = (cell: string | undefined): number | undefined =>
      cell === undefined || cell === '' ? undefined : Number(cell);
    const outside = grades.filter((row) => {
      const yieldMinMpa = number(row['rp02_min_mpa']);
      const tensileMinMpa = number(row['rm_min_mpa']);
      return outsideFamily({
        familyKey: row['class'] ?? '',
        ...(yieldMinMpa === undefined ? {} : { yieldMinMpa }),
        ...(tensileMinMpa === undefined ? {} : { tensileMinMpa }),
      });
    });
    expect(outside.map((row) => row['designation'])).toEqual([]);
  });
});
