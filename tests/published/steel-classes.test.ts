import { describe, expect, it } from 'vitest';
import { readDesignation } from '../../src/steel/reading/read-designation.ts';
import { classOfTensile } from '../../src/steel/strength-class.ts';

// Common practice, no source: no standard says where the classes begin, and bodies disagree. The bounds are steps of the
// tensile series 340, 590, 980 that EN, JIS and SAE grades share.
describe('class by minimum tensile strength', () => {
  it.each([
    [270, 'mild'],
    [339, 'mild'],
    [340, 'high-strength'],
    [589, 'high-strength'],
    [590, 'advanced high-strength'],
    [979, 'advanced high-strength'],
    [980, 'ultra-high-strength'],
    [1500, 'ultra-high-strength'],
  ] as const)('%d MPa: %s', (mpa, expected) => {
    expect(classOfTensile(mpa)).toBe(expected);
  });
});

// That multiphase and martensitic steels are advanced or more whatever their number follows the application guidelines
// of the steel industry (advanced: all martensitic and multiphase steels from 440 MPa). The rest is common practice.
describe('class by family', () => {
  it.each([
    ['DC04', 'mild', 'mild'],
    ['HC180B', 'bake-hardening, though its 290 MPa lies in the mild band', 'high-strength'],
    ['HC340LA', 'high-strength low-alloy', 'high-strength'],
    // Low-alloy by its minimum tensile strength (grades.md 7: bands from 340 and 590 MPa), or from 550 MPa yield (the same table's
    // older body-design convention: more than high-strength above 550 MPa yield, from memory there).
    ['S500MC', 'low-alloy, 550 to 700 MPa (EN 10149-2)', 'high-strength'],
    ['HC500LA', 'low-alloy, 550 to 710 MPa (EN 10268, from memory)', 'high-strength'],
    ['SPFC540', 'low-alloy at 540 MPa (JIS G 3135)', 'high-strength'],
    ['S550MC', 'low-alloy at 600 MPa', 'advanced high-strength'],
    ['S600MC', 'low-alloy at 650 MPa', 'advanced high-strength'],
    ['S650MC', 'low-alloy at 700 MPa', 'advanced high-strength'],
    ['S700MC', 'low-alloy at 750 MPa', 'advanced high-strength'],
    ['QStE690TM', 'low-alloy, only the yield of 690 MPa is in the table', 'advanced high-strength'],
    ['HR550LA', 'low-alloy, only the yield of 550 MPa is in the table', 'advanced high-strength'],
    ['HR500LA', 'low-alloy, only the yield of 500 MPa is in the table', 'high-strength'],
    ['SPFC590', 'low-alloy at 590 MPa', 'advanced high-strength'],
    ['JSC590R', 'recovery or precipitation hardened at 590 MPa', 'advanced high-strength'],
    // The definitions of the steel industry count ferrite-bainite among the multiphase steels, advanced from 440 MPa [seen].
    ['HDT580F', 'ferrite-bainite at 580 MPa', 'advanced high-strength'],
    ['HDT450F', 'ferrite-bainite at 450 MPa', 'advanced high-strength'],
    ['HCT450X', 'dual-phase at 450 MPa', 'advanced high-strength'],
    ['CR330Y590T-DH', 'dual-phase of high ductility', 'advanced high-strength'],
    ['TRIP 590T/380Y', 'TRIP', 'advanced high-strength'],
    ['HCT600C', 'complex-phase', 'advanced high-strength'],
    ['CR500/780MS', 'martensitic at 780 MPa', 'ultra-high-strength'],
    ['800M', 'martensitic at 800 MPa', 'ultra-high-strength'],
    ['S960MC', 'low-alloy at 980 MPa', 'ultra-high-strength'],
    ['HCT980X', 'dual-phase at 980 MPa', 'ultra-high-strength'],
    ['SPFC980Y', 'dual-phase at 980 MPa', 'ultra-high-strength'],
    ['DC01+C690', 'strip cold-rolled to 690 MPa', 'advanced high-strength'],
    ['830R', 'recovery-annealed, yield 830 MPa', 'advanced high-strength'],
    ['22MnB5', 'boron steel, state unknown', 'press-hardened'],
    ['22MnB5 as delivered', 'boron steel, 450 MPa before hardening', 'press-hardened'],
    ['CR1500T-MB', 'press-hardened without a minimum in the name', 'press-hardened'],
    ['CR1500T-MS', 'multi-step hot forming, not martensitic cold forming', 'press-hardened'],
    ['HC340/460HS', 'press-hardened of low strength', 'press-hardened'],
    ['1.4310+C1500', 'stainless whatever its strength', 'stainless'],
    ['EN AW-7075-T6', 'aluminium', 'aluminium'],
    ['AZ91D', 'magnesium', 'magnesium'],
    ['CFRP', 'composite', 'composite'],
  ] as const)('%s (%s): %s', (designation, _why, expected) => {
    const reading = readDesignation(designation);
    if (!reading.known) throw new Error(reading.reason);
    for (const material of reading.readings) expect(material.class).toBe(expected);
  });
});
