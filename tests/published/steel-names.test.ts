import { describe, expect, it } from 'vitest';
import { readDesignation } from '../../src/steel/reading/read-designation.ts';

/**
 * Names as EN 10027-1, EN 10346, VDA 239-100 and -500, JIS, JFS, SAE J2340 and J2745, GB/T 20564 and ASTM form them,
 * with family, minimum strengths (MPa) and coating that the name or its standard gives (partly from memory).
 */
const accepted: readonly (readonly [string, Readonly<Record<string, unknown>>])[] = [
  ['HCT980X+ZE75/75', { family: 'dual-phase', yieldMinMpa: 590, tensileMinMpa: 980, coating: 'zinc' }],
  [
    'CR330Y590T-DP-GI50/50-U',
    { family: 'dual-phase', yieldMinMpa: 330, tensileMinMpa: 590, coating: 'zinc' },
  ],
  [
    'HX340LAD+Z100MB',
    { family: 'high-strength low-alloy', yieldMinMpa: 340, tensileMinMpa: 410, coating: 'zinc' },
  ],
  ['DX54D+ZF100RB', { family: 'mild steel', tensileMinMpa: 260, coating: 'zinc-iron' }],
  ['EN 10130 - DC04', { family: 'mild steel', tensileMinMpa: 270 }],
  ['DC01+C390', { condition: 'cold hardened', yieldMinMpa: 310, tensileMinMpa: 390 }],
  ['HC220B', { family: 'bake-hardening', yieldMinMpa: 220, tensileMinMpa: 320 }],
  ['H320LA', { standard: 'EN 10268:1998', yieldMinMpa: 320 }],
  ['S700MC', { yieldMinMpa: 700, tensileMinMpa: 750 }],
  ['HDT580F', { family: 'ferrite-bainite', yieldMinMpa: 460, tensileMinMpa: 580 }],
  ['22MnB5+AS150', { family: 'press-hardening steel', tensileMinMpa: 1300, coating: 'aluminium-silicon' }],
  ['CR1500T-MB', { family: 'press-hardening steel', condition: 'hardened' }],
  ['SPFC590Y', { family: 'dual-phase', yieldMinMpa: 265, tensileMinMpa: 590 }],
  ['JAC590R-45/45', { tensileMinMpa: 590, coating: 'zinc-iron' }],
  ['SAPH440', { yieldMinMpa: 305, tensileMinMpa: 440 }],
  ['CR340/590DP', { family: 'dual-phase', yieldMinMpa: 340, tensileMinMpa: 590 }],
  ['590T/340Y DP', { family: 'dual-phase', yieldMinMpa: 340, tensileMinMpa: 590 }],
  ['DP 590T/340Y', { family: 'dual-phase', yieldMinMpa: 340, tensileMinMpa: 590 }],
  ['340X', { yieldMinMpa: 340, tensileMinMpa: 410 }],
  ['EN AW-6016-T4', { class: 'aluminium', yieldMinMpa: 80, tensileMinMpa: 170 }],
  ['VDA 239-100 CR4-EG29/29-E', { class: 'mild', coating: 'zinc' }],
  ['CR1500T-MS', { family: 'press-hardening steel' }],
  ['CR1220Y1500T-MS-UC', { family: 'martensitic', yieldMinMpa: 1220, tensileMinMpa: 1500, coating: 'none' }],
  ['DP1000', { family: 'dual-phase', tensileMinMpa: 980 }],
  ['980DP', { family: 'dual-phase', tensileMinMpa: 980 }],
  ['HC420/780DPD+Z', { family: 'dual-phase', yieldMinMpa: 420, tensileMinMpa: 780, coating: 'zinc' }],
  ['ZStE 260 BH', { family: 'bake-hardening', yieldMinMpa: 260, tensileMinMpa: 360 }],
  ['SPCC-SD', { class: 'mild' }],
  ['1.4310+C1000', { class: 'stainless', condition: 'cold hardened', tensileMinMpa: 1000 }],
  ['HX260LAD+ZA130MC_O', { yieldMinMpa: 260, coating: 'zinc-aluminium' }],
  ['A1008 HSLAS Grade 50 [340] Class 1', { yieldMinMpa: 340, tensileMinMpa: 450 }],
  ['boron steel', { class: 'press-hardened' }],
  ['HCT780XD+Z100', { standard: 'EN 10346:2015', tensileMinMpa: 780, coating: 'zinc' }],
  ['UHSS Grade 100 [690] Type 1', { yieldMinMpa: 690, tensileMinMpa: 760 }],
  ['SAE J2329 CR3EC', { class: 'mild', yieldMinMpa: 140, yieldMaxMpa: 205, tensileMinMpa: 270 }],
];

/** Names that have no row in the table and are read by the way their standard forms names, or as a strength; what they give. */
const beyondTheTable: readonly (readonly [string, Readonly<Record<string, unknown>>])[] = [
  ['60 kgf/mm2 class', { tensileMinMpa: 590 }],
  ['217 ksi', { tensileMinMpa: 1496 }],
  ['CR290Y490T-GI-E', { yieldMinMpa: 290, tensileMinMpa: 490, coating: 'zinc' }],
  ['JSC1470Y', { family: 'dual-phase', tensileMinMpa: 1470, class: 'ultra-high-strength' }],
  ['A5052P-O', { class: 'aluminium', family: 'aluminium 5xxx' }],
];

/** Swapped figures, a misprint, a name cut short: no class at all. */
const refused = ['CR980Y700T-DP', 'CR440Y480T-DP', 'HC340'];

/** A class word and a bare number have a class only by their strongest reading, and are never simply known. */
const ambiguous = ['CR4', 'UHSS', '1500', '217 ksi', 'CR290Y490T-GI-E', 'JSC1470Y'];

describe('names as the standards form them', () => {
  it.each(accepted)('%s', (name, expected) => {
    const reading = readDesignation(name);
    if (!reading.known) throw new Error(reading.reason);
    expect(reading.readings[0]).toMatchObject(expected);
  });

  it.each(beyondTheTable)('%s, beyond the table', (name, expected) => {
    const reading = readDesignation(name);
    if (!reading.known) throw new Error(reading.reason);
    expect(reading.readings[0]).toMatchObject(expected);
  });

  it.each(ambiguous)('%s is ambiguous', (name) => {
    const reading = readDesignation(name);
    expect(reading.known && reading.ambiguity).toMatch(/\.$/);
  });

  it('CR4 alone has several readings: its rank rises in VDA 239-100, SAE J2329 and IS 513-1 and falls in BS 1449', () => {
    const reading = readDesignation('CR4');
    expect(reading.known && reading.readings.length).toBeGreaterThan(1);
    expect(reading.known && reading.ambiguity).toContain('BS 1449');
  });

  it.each(refused)('%s gives no class', (name) => {
    const reading = readDesignation(name);
    expect(reading.known).toBe(false);
    expect(!reading.known && reading.reason).toMatch(/\.$/);
  });
});
