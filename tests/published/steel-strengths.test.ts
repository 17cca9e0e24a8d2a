import { describe, expect, it } from 'vitest';
import { readDesignation } from '../../src/steel/reading/read-designation.ts';

/**
 * Strengths in MPa as the named standard's table of mechanical properties gives them.
 * memory: written down from memory of the standard; copy: from a public copy of its table.
 */
const rows: readonly (readonly [string, string, 'memory' | 'copy', Readonly<Record<string, number>>])[] = [
  // EN 10130:2006, mechanical properties; the yield is a maximum
  ['DC01', 'EN 10130', 'copy', { yieldMaxMpa: 280, tensileMinMpa: 270, tensileMaxMpa: 410 }],
  ['DC04', 'EN 10130', 'copy', { yieldMaxMpa: 210, tensileMinMpa: 270, tensileMaxMpa: 350 }],
  ['DC06', 'EN 10130', 'copy', { yieldMaxMpa: 170, tensileMinMpa: 270, tensileMaxMpa: 330 }],
  // EN 10268:2006, mechanical properties
  [
    'HC220B',
    'EN 10268',
    'memory',
    { yieldMinMpa: 220, yieldMaxMpa: 270, tensileMinMpa: 320, tensileMaxMpa: 400 },
  ],
  [
    'HC340LA',
    'EN 10268',
    'memory',
    { yieldMinMpa: 340, yieldMaxMpa: 420, tensileMinMpa: 410, tensileMaxMpa: 510 },
  ],
  [
    'HC420LA',
    'EN 10268',
    'memory',
    { yieldMinMpa: 420, yieldMaxMpa: 520, tensileMinMpa: 470, tensileMaxMpa: 590 },
  ],
  // EN 10338:2015, mechanical properties of multiphase steels
  ['HCT590X', 'EN 10338', 'memory', { yieldMinMpa: 330, yieldMaxMpa: 430, tensileMinMpa: 590 }],
  ['HCT780X', 'EN 10338', 'memory', { yieldMinMpa: 440, yieldMaxMpa: 550, tensileMinMpa: 780 }],
  ['HCT980X', 'EN 10338', 'memory', { yieldMinMpa: 590, yieldMaxMpa: 740, tensileMinMpa: 980 }],
  ['HCT690T', 'EN 10338', 'memory', { yieldMinMpa: 400, yieldMaxMpa: 520, tensileMinMpa: 690 }],
  ['HCT780C', 'EN 10338', 'memory', { yieldMinMpa: 570, yieldMaxMpa: 720, tensileMinMpa: 780 }],
  ['HDT580F', 'EN 10338', 'memory', { yieldMinMpa: 460, yieldMaxMpa: 620, tensileMinMpa: 580 }],
  // EN 10346:2015, mechanical properties of hot-dip coated low-carbon and high-yield steels
  ['DX51D', 'EN 10346', 'memory', { tensileMinMpa: 270, tensileMaxMpa: 500 }],
  [
    'DX54D',
    'EN 10346',
    'memory',
    { yieldMinMpa: 120, yieldMaxMpa: 220, tensileMinMpa: 260, tensileMaxMpa: 350 },
  ],
  [
    'HX340LAD',
    'EN 10346',
    'memory',
    { yieldMinMpa: 340, yieldMaxMpa: 420, tensileMinMpa: 410, tensileMaxMpa: 510 },
  ],
  // EN 10149-2:2013, thermomechanically rolled
  ['S700MC', 'EN 10149-2', 'copy', { yieldMinMpa: 700, tensileMinMpa: 750, tensileMaxMpa: 950 }],
  ['S355MC', 'EN 10149-2', 'copy', { yieldMinMpa: 355, tensileMinMpa: 430, tensileMaxMpa: 550 }],
  ['S315MC', 'EN 10149-2', 'copy', { yieldMinMpa: 315, tensileMinMpa: 390, tensileMaxMpa: 510 }],
  ['S420MC', 'EN 10149-2', 'copy', { yieldMinMpa: 420, tensileMinMpa: 480, tensileMaxMpa: 620 }],
  ['S460MC', 'EN 10149-2', 'copy', { yieldMinMpa: 460, tensileMinMpa: 520, tensileMaxMpa: 670 }],
  ['S500MC', 'EN 10149-2', 'copy', { yieldMinMpa: 500, tensileMinMpa: 550, tensileMaxMpa: 700 }],
  // EN 10139:1998, mechanical properties of DC01 strip, work hardened
  ['DC01+C390', 'EN 10139', 'copy', { yieldMinMpa: 310, tensileMinMpa: 390, tensileMaxMpa: 540 }],
  ['DC01+C440', 'EN 10139', 'copy', { yieldMinMpa: 360, tensileMinMpa: 440, tensileMaxMpa: 590 }],
  ['DC01+C490', 'EN 10139', 'copy', { yieldMinMpa: 420, tensileMinMpa: 490, tensileMaxMpa: 640 }],
  ['DC01+C590', 'EN 10139', 'copy', { yieldMinMpa: 520, tensileMinMpa: 590, tensileMaxMpa: 740 }],
  // VDA 239-100:2016, mechanical properties
  [
    'CR330Y590T-DP',
    'VDA 239-100',
    'memory',
    { yieldMinMpa: 330, yieldMaxMpa: 430, tensileMinMpa: 590, tensileMaxMpa: 700 },
  ],
  [
    'CR440Y780T-DP',
    'VDA 239-100',
    'memory',
    { yieldMinMpa: 440, yieldMaxMpa: 550, tensileMinMpa: 780, tensileMaxMpa: 900 },
  ],
  [
    'CR1220Y1500T-MS',
    'VDA 239-100',
    'memory',
    { yieldMinMpa: 1220, yieldMaxMpa: 1520, tensileMinMpa: 1500, tensileMaxMpa: 1750 },
  ],
  // SAE J2340:1999 (X: tensile minimum 70 MPa above the yield minimum) and SAE J2745 (tensile first)
  ['340X', 'SAE J2340', 'memory', { yieldMinMpa: 340, tensileMinMpa: 410 }],
  ['DP 590T/340Y', 'SAE J2745', 'copy', { yieldMinMpa: 340, tensileMinMpa: 590 }],
  // JIS G 3135 and G 3113 (below 6 mm), mechanical properties
  ['SPFC590', 'JIS G 3135', 'copy', { yieldMinMpa: 355, tensileMinMpa: 590 }],
  ['SPFC590Y', 'JIS G 3135', 'copy', { yieldMinMpa: 265, tensileMinMpa: 590 }],
  ['SPFC980Y', 'JIS G 3135', 'copy', { yieldMinMpa: 490, tensileMinMpa: 980 }],
  ['SAPH440', 'JIS G 3113', 'copy', { yieldMinMpa: 305, tensileMinMpa: 440 }],
];

describe('strengths of the standards', () => {
  it.each(rows)('%s as in %s (%s)', (designation, standard, _from, strengths) => {
    const reading = readDesignation(`${standard} ${designation}`);
    if (!reading.known) throw new Error(reading.reason);
    expect(reading.readings.length).toBe(1);
    expect(reading.readings[0]?.standard).toContain(standard);
    expect(reading.readings[0]).toMatchObject(strengths);
  });

  it('22MnB5 stands at about 1300–1650 MPa hardened, 450–750 MPa before (ahssinsights.org, grades for press hardening)', () => {
    const hardened = readDesignation('22MnB5 hardened');
    const delivered = readDesignation('22MnB5 as delivered');
    expect(hardened.known && hardened.readings[0]).toMatchObject({
      tensileMinMpa: 1300,
      tensileMaxMpa: 1650,
    });
    expect(delivered.known && delivered.readings[0]).toMatchObject({
      tensileMinMpa: 450,
      tensileMaxMpa: 750,
    });
  });
});
