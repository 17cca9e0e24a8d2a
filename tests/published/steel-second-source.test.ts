import { describe, expect, it } from 'vitest';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';
import type { StrengthRange } from '../../src/steel/answer/designation-answer.ts';

const tell = (text: string) => describeDesignation(text, { find: false });

type Limits = readonly [min: number | null, max: number | null];

/** Yield and tensile strength in MPa of a grade on a public page that is not the standard; null where the page prints no such limit. */
type Row = readonly [text: string, yielding: Limits, tensile: Limits];

/**
 * Looked up by search in November 2026 in pages that repeat a standard. What each page is stands beside its rows; its address was not
 * kept, so whoever doubts a row looks in the standard that is named. Rows marked seen may have been
 * written from the same page; those of DC01 strip, of stainless steel and of JIS G 3302 have another page or memory behind them.
 */
const pages: readonly (readonly [page: string, rows: readonly Row[]])[] = [
  [
    'product pages of a European mill that repeat EN 10268:2006+A1:2013 and EN 10346:2015, transverse',
    [
      ['HC340LA', [340, 420], [410, 510]],
      ['HX300LAD', [300, 380], [380, 480]],
      ['DX53D', [140, 260], [270, 380]],
      ['DX57D', [120, 170], [260, 350]],
    ],
  ],
  [
    'a directory of mills, structural steels of EN 10326 (now in EN 10346), table 1',
    [
      ['S220GD', [220, null], [300, null]],
      ['S250GD', [250, null], [330, null]],
      ['S280GD', [280, null], [360, null]],
      ['S320GD', [320, null], [390, null]],
      ['S350GD', [350, null], [420, null]],
      ['S550GD', [550, null], [560, null]],
    ],
  ],
  [
    'a strip mill, DC01 work hardened by EN 10139:1998',
    [
      ['DC01+C290', [200, 380], [290, 430]],
      ['DC01+C340', [250, null], [340, 490]],
      ['DC01+C390', [310, null], [390, 540]],
      ['DC01+C440', [360, null], [440, 590]],
      ['DC01+C490', [420, null], [490, 640]],
      ['DC01+C590', [520, null], [590, 740]],
      ['DC01+C690', [630, null], [690, null]],
    ],
  ],
  [
    'a steel merchant, EN 10149-2',
    [
      ['S315MC', [315, null], [390, 510]],
      ['S355MC', [355, null], [430, 550]],
      ['S420MC', [420, null], [480, 620]],
      ['S460MC', [460, null], [520, 670]],
      ['S500MC', [500, null], [550, 700]],
    ],
  ],
  [
    'a steel merchant, sheet for hot stamping after hardening (GB/T 34566 style)',
    [
      ['HC340/460HS', [340, 460], [460, 600]],
      ['HC370/550HS', [370, 550], [550, 750]],
      ['HC800/1000HS', [800, 1100], [1000, 1300]],
      ['HC950/1300HS', [950, 1250], [1300, 1700]],
      ['HC1100/1700HS', [1100, 1400], [1700, 2000]],
      ['HC1200/1800HS', [1200, 1500], [1800, 2150]],
    ],
  ],
  [
    'a one-page copy of a Japanese mill’s table of JIS G 3135',
    [
      ['SPFC340', [175, null], [340, null]],
      ['SPFC440', [265, null], [440, null]],
      ['SPFC590', [355, null], [590, null]],
      ['SPFC590Y', [265, null], [590, null]],
      ['SPFC780Y', [365, null], [780, null]],
      ['SPFC980Y', [490, null], [980, null]],
      ['SPFC340H', [185, null], [340, null]],
    ],
  ],
  [
    'a Chinese merchant, JIS G 3113 below 6 mm (it prints 195 for the informative yield of SAPH310, others 185)',
    [
      ['SAPH370', [225, null], [370, null]],
      ['SAPH400', [255, null], [400, null]],
      ['SAPH440', [305, null], [440, null]],
    ],
  ],
  [
    'a Korean steel centre, JIS G 3302 on hot-rolled base',
    [
      ['SGH340', [245, null], [340, null]],
      ['SGH400', [295, null], [400, null]],
      ['SGH440', [335, null], [440, null]],
    ],
  ],
  [
    'a directory of mills, cold-rolled sheet for automotive use (EN 10130:1991, ASTM A1008)',
    [
      ['FeP01', [140, 280], [270, 410]],
      ['FeP03', [140, 240], [270, 370]],
      ['FeP04', [140, 210], [270, 350]],
      ['ASTM A1008 DS', [150, 240], [null, null]],
    ],
  ],
  [
    'a stainless mill (ASTM A240 and JIS G 4305) and a merchant’s JIS G 4305 table',
    [
      ['A240 301', [205, null], [515, null]],
      ['A240 301L', [220, null], [550, null]],
      ['A240 301LN', [240, null], [550, null]],
      ['SUS304', [205, null], [520, null]],
      ['SUS316L', [175, null], [480, null]],
      ['SUS430', [205, null], [450, null]],
    ],
  ],
  [
    'a stainless merchant, 1.4310 by EN 10151 (ranges of the bending table)',
    [
      ['1.4310+C1150', [null, null], [1150, 1300]],
      ['1.4310+C1300', [null, null], [1300, 1500]],
      ['1.4310+C1500', [null, null], [1500, 1700]],
    ],
  ],
];

const limits = (range: StrengthRange | null): Limits => [range?.min ?? null, range?.max ?? null];

describe.each(pages)('as on the page of %s', (_page, rows) => {
  it.each(rows)('%s', (text, yielding, tensile) => {
    const answer = tell(text);
    expect(answer.class).not.toBeNull();
    expect([text, limits(answer.yield), limits(answer.tensile)]).toEqual([text, yielding, tensile]);
  });
});

// A distributor's page gives minima in ksi; ASTM prints MPa beside them, rounded to 5.
describe('tempers of stainless sheet', () => {
  const mpaPerKsi = 6.894757; // NIST SP 811
  it.each([
    ['AISI 301 1/4 hard', 75, 125],
    ['AISI 301 1/2 hard', 110, 150],
    ['AISI 301 full hard', 140, 185],
    ['AISI 304 1/4 hard', 75, 125],
    ['AISI 304 1/2 hard', 110, 150],
  ])('%s has %i and %i ksi', (text, yieldKsi, tensileKsi) => {
    const answer = tell(text);
    expect(Math.abs((answer.yield?.min ?? 0) - yieldKsi * mpaPerKsi)).toBeLessThanOrEqual(5);
    expect(Math.abs((answer.tensile?.min ?? 0) - tensileKsi * mpaPerKsi)).toBeLessThanOrEqual(5);
  });

  // A Korean dealer in spring strip: 1320 for 301 hard, 1130 for 304 hard.
  it.each([
    ['SUS301-CSP-H', 1320],
    ['SUS304-CSP-H', 1130],
  ])('%s has %i MPa', (text, tensileMpa) => {
    expect(tell(text).tensile?.min).toBe(tensileMpa);
  });
});
