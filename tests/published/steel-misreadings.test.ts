import { describe, expect, it } from 'vitest';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';

// Twenty-four ways in which designations are misread. What is right comes from the standard named in each line (partly from
// memory); that it is misread is common practice of drawings, mill pages and part lists.
const tell = (text: string) => describeDesignation(text, { find: false });
const said = (text: string): string => {
  const { note, reason, warnings } = tell(text);
  return [note, reason, ...warnings].filter((one) => one !== null).join(' ');
};

describe('what the figures of a name stand for', () => {
  it.each([
    ['HC340LA', 'minimum yield, in MPa'], // EN 10268
    ['HX340LAD+Z100', 'minimum yield, in MPa'], // EN 10346
    ['S700MC', 'minimum yield, in MPa'], // EN 10149-2
    ['S350GD', 'minimum yield, in MPa'], // EN 10346
    ['ZStE 340', 'minimum yield, in MPa'], // SEW 093
    ['340X', 'minimum yield, in MPa'], // SAE J2340
    ['CR300LA', 'minimum yield along the rolling direction, in MPa'], // VDA 239-100
    ['A1008 HSLAS Grade 50 [340] Class 1', 'minimum yield, in ksi; in brackets in MPa'], // ASTM A1008
    ['HCT780X', 'minimum tensile strength, in MPa'], // EN 10338
    ['SPFC590Y', 'minimum tensile strength, in MPa'], // JIS G 3135
    ['JAC590R', 'minimum tensile strength, in MPa'], // JFS A 3011
    ['800DL', 'minimum tensile strength, in MPa'], // SAE J2340
    ['CR330Y590T-DP', 'minimum yield, then minimum tensile strength, in MPa'], // VDA 239-100
    ['CR340/590DP', 'minimum yield, then minimum tensile strength, in MPa'], // GB/T 20564.2
    ['DP 590T/340Y', 'minimum tensile strength, then minimum yield, in MPa'], // SAE J2745
    ['DP350/600', 'minimum yield, then minimum tensile strength, in MPa'], // application guidelines
    ['DX54D', 'rank of formability, not a strength'], // EN 10346
    ['CR1500T-MB', 'nominal tensile class after hardening, in MPa; not a minimum'], // VDA 239-500
    ['DC01+C390', 'tensile strength of the cold-hardened state, in MPa'], // EN 10139
  ])('%s: %s', (text, meaning) => {
    expect(tell(text).number_means).toBe(meaning);
  });
});

describe('how names are misread', () => {
  it('the order of yield and tensile: swapped figures are no grade, in either order', () => {
    expect(tell('CR980Y700T-DP')).toMatchObject({ known: 'unknown', class: null });
    expect(tell('CR700Y980T-DP').class).toBe('ultra-high-strength');
    expect(tell('590/340DP').known).toBe('unknown');
  });

  it('a misprinted figure: dual-phase with a tensile strength just above its yield', () => {
    expect(said('CR440Y480T-DP')).toContain('misprinted');
    expect(tell('CR440Y780T-DP').tensile?.min).toBe(780);
  });

  it('steps of the trade: DP600 is 590, DP800 is 780, DP1000 is 980', () => {
    expect(['DP600', 'DP800', 'DP1000'].map((text) => tell(text).tensile?.min)).toEqual([590, 780, 980]);
    expect(said('DP1000')).toContain('1000 is 980');
    expect(said('DP980')).not.toContain('1000 is 980');
  });

  it('the delivered strength of boron steel is not that of the part', () => {
    expect(tell('22MnB5')).toMatchObject({ class: 'press-hardened', tensile: { min: 1300, max: 1650 } });
    expect(said('22MnB5')).toContain('450–750 MPa');
    expect(tell('22MnB5 as delivered')).toMatchObject({
      class: 'press-hardened',
      hardened: true,
      tensile: { max: 750 },
    });
  });

  it('1500 of a press-hardened name is a class, of a martensitic one a minimum', () => {
    expect(tell('CR1500T-MB').tensile).toBeNull();
    expect(said('CR1500T-MB')).toContain('1300 MPa is the floor');
    expect(tell('CR1220Y1500T-MS').tensile?.min).toBe(1500);
  });

  it('MS is martensitic behind yield and tensile, multi-step hot forming behind a tensile number alone', () => {
    expect(tell('CR1220Y1500T-MS').family).toBe('martensitic');
    expect(tell('CR1500T-MS').family).toBe('press-hardening steel');
    expect(said('CR1500T-MS')).toContain('multi-step');
  });

  it('Y: SPFC590 is not SPFC590Y', () => {
    expect([tell('SPFC590').yield?.min, tell('SPFC590Y').yield?.min]).toEqual([355, 265]);
    expect(said('SPFC590')).toContain('SPFC590Y');
    expect(said('SPFC590Y')).toContain('interstitial-free');
    expect(tell('SPFC780')).toMatchObject({ known: 'ambiguous', tensile: { min: 780 } });
  });

  it('H is bake-hardening in Japanese names, T a temper in aluminium, T TRIP in EN', () => {
    expect(tell('JSC340H').family).toBe('bake-hardening');
    expect(said('JSC340H')).toContain('bake-hardening, not hardened');
    expect(tell('HCT690T').family).toBe('TRIP');
    expect(tell('6016-T4').class).toBe('aluminium');
  });

  it('HX340LAD equals CR300LA, and H320LA is now HC340LA', () => {
    expect(said('HX340LAD')).toContain('CR300LA');
    expect(said('H320LA')).toContain('HC340LA');
    expect(tell('CR340LA')).toMatchObject({ known: 'ambiguous' });
    expect(tell('GB/T 20564.4 CR340LA')).toMatchObject({ known: 'known', tensile: { max: 510 } });
  });

  it('CR4 is a soft grade in three scales and the plainest in BS 1449', () => {
    expect(tell('CR4')).toMatchObject({ known: 'ambiguous', class: 'mild' });
    expect(said('CR4')).toContain('BS 1449');
    expect(tell('VDA 239-100 CR4-EG29/29-E')).toMatchObject({ known: 'known', coating: 'zinc' });
    expect(tell('BS 1449 CR4').known).toBe('unknown');
  });

  it('a name cut short keeps its numbers and is not surely read', () => {
    expect(tell('CR290Y490T-GI-E')).toMatchObject({
      known: 'ambiguous',
      tensile: { min: 490 },
      coating: 'zinc',
    });
    expect(said('CR290Y490T-GI-E')).toContain('cut short');
  });

  it('HDT580F and HDT580X are two steels', () => {
    expect([tell('HDT580F').family, tell('HDT580X').family]).toEqual(['ferrite-bainite', 'dual-phase']);
    expect(said('HDT580F')).toContain('one letter');
  });

  it('aluminium without a temper has no sure strength, and T4 rises in the paint oven', () => {
    expect(said('EN AW-6016-T4')).toContain('75 to 95 MPa');
    expect(said('EN AW-6016')).toContain('without a temper');
    expect(said('EN AW-6016-T6')).not.toContain('75 to 95 MPa');
  });

  it('coating masses: EN both sides, VDA each side, ZE tenths of a micrometre', () => {
    expect(tell('DX54D+Z100').coating_mass).toEqual({ grams: 100, counted: 'both sides together' });
    expect(tell('CR3-GI50/50').coating_mass).toEqual({ grams: 50, counted: 'each side' });
    expect(said('DX54D+Z100')).toContain('GI50/50');
    expect(said('HCT980X+ZE75/75')).toContain('7.5 µm');
  });

  it('units: ksi, kgf/mm² and the old kilo', () => {
    expect(tell('217 ksi').equivalents).toMatchObject({ mpa: 1496, ksi: 217 });
    expect(tell('60K').tensile?.min).toBe(590);
    expect(said('60K')).toContain('not ksi');
    expect(tell('60 ksi').equivalents?.mpa).toBe(414);
    expect(tell('1.5 GPa').tensile?.min).toBe(1500);
    expect(tell('217,000 psi').tensile?.min).toBe(1496);
  });

  it('DX51D is neither 51 ksi nor dual-phase, and has no lower yield', () => {
    expect(tell('DX51D')).toMatchObject({ class: 'mild', family: 'mild steel' });
    expect(tell('DX51D').yield).toBeNull();
    expect(said('DX51D')).toContain('not dual-phase');
  });

  it('EN 10130 limits the yield from above', () => {
    expect(said('DC04')).toContain('from above');
    expect(tell('DC04').yield?.max).toBe(210);
    expect(said('DD11')).toContain('tensile strength from above');
  });

  it('DC01+C390 is hard strip, not mild sheet', () => {
    expect(tell('DC01+C390')).toMatchObject({ class: 'high-strength', condition: 'cold hardened' });
    expect(said('DC01+C390')).toContain('softening heat');
  });

  it('editions: the limits name theirs', () => {
    expect(said('DC06')).toContain('EN 10130:2006');
    expect(tell('DC06').yield?.max).toBe(170);
  });

  it('suffixes that are no part of the grade fall away; an M before a Japanese name is passed over with a warning', () => {
    expect(tell('SPCC-SD').class).toBe('mild');
    expect(tell('S355MC-PO').tensile?.min).toBe(430);
    expect(tell('MJSC590Y')).toMatchObject({ known: 'ambiguous', tensile: { min: 590 } });
    expect(said('MJSC590Y')).toContain('M before the name');
  });

  it('tailored blanks keep both sheets', () => {
    const blank = tell('SPFC980Y 1.6T + SPFC590DP 1.4T');
    expect(blank.blank?.length).toBe(2);
    expect(blank.class).toBe('ultra-high-strength');
  });

  it('names of national lists give number and phase, with doubt', () => {
    expect(tell('SGAFC590DP')).toMatchObject({
      known: 'ambiguous',
      family: 'dual-phase',
      tensile: { min: 590 },
    });
    expect(tell('SGARC440')).toMatchObject({ known: 'ambiguous', tensile: { min: 440 } });
    expect(said('SGAFC590DP')).toContain('national list');
  });
});
