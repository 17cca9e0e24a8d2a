import { describe, expect, it } from 'vitest';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';

const tell = (text: string) => describeDesignation(text, { find: false });

describe('two grades in one text', () => {
  it.each([
    'HCT590X HCT780X',
    'HCT590X,HCT780X',
    'DC04/22MnB5',
    'DC04 22MnB5',
    'DC04 (22MnB5)',
    'DC04 / 22MnB5',
    'DC04 or 22MnB5',
    'HCT590X (DP800)',
    'dc04 hc260la hc340la',
  ])('%s names more than one', (text) => {
    expect(tell(text)).toMatchObject({ known: 'unknown', usable: false, class: null });
    expect(tell(text).reason).toContain('more than one grade');
  });

  it('is one where the second is its number, its trade name, its strength or its class', () => {
    expect(tell('HCT590X (DP600)').readings[0]?.designation).toBe('HCT590X'); // the trade says 600 for 590
    expect(tell('HCT780X 780 MPa')).toMatchObject({ known: 'known', class: 'advanced high-strength' });
    expect(tell('HC340LA 340 MPa')).toMatchObject({ known: 'known', class: 'high-strength' });
    expect(tell('boron 20MnB5')).toMatchObject({ known: 'known', class: 'press-hardened' });
    expect(tell('dual phase DP980')).toMatchObject({ known: 'known', class: 'ultra-high-strength' });
    expect(tell('boron 22MnB5')).toMatchObject({ known: 'known', class: 'press-hardened' });
    expect(tell('DC04 mild steel')).toMatchObject({ known: 'known', class: 'mild' });
  });

  // 1.0338 is DC04 (EN 10130), 1.0548 HC340LA (EN 10268).
  it.each([
    ['1.0338 HC340LA', 'high-strength'],
    ['DC04 (1.0548)', 'high-strength'],
    ['1.0338 / 1.5528', 'press-hardened'],
    ['mild 22MnB5', 'press-hardened'],
    ['DC04 boron steel', 'press-hardened'],
    ['DC04 600 MPa', 'ultra-high-strength'],
    ['DC04 1500 MPa', 'press-hardened'],
    ['UHSS 1500', 'press-hardened'],
    ['TRIP DP980', 'ultra-high-strength'],
    ['HSLA HCT780X', 'ultra-high-strength'],
    ['boron DP980', 'press-hardened'],
  ])('%s disagrees with itself, and counts as %s', (text, expected) => {
    expect(tell(text)).toMatchObject({ known: 'ambiguous', class: expected });
  });

  it('is no surer than the number beside it: 1.0396 is from memory', () => {
    expect(tell('HC220B').mark).toBe('seen');
    expect(tell('HC220B (1.0396)').mark).toBe('memory');
  });

  it('aluminium beside steel has no common class', () => {
    expect(tell('aluminium DC04')).toMatchObject({ known: 'ambiguous', class: null });
    expect(tell('6016-T4 steel')).toMatchObject({ class: null });
  });
});

describe('look-alikes', () => {
  it.each([
    ['HCT98OX', 'HCT980X'],
    ['DP98O', 'DP980'],
    ['CR1O00T-MB', 'CR1000T-MB'],
    ['l500P', '1500P'],
    ['MS15OO', 'MS1500'],
  ])('%s has to be typed again: %s', (text, meant) => {
    expect(tell(text)).toMatchObject({ known: 'unknown', usable: false, class: null, nearest: [meant] });
  });
});

// The trade's words for families; which strengths a family has is that of the grade table.
describe('words for a family', () => {
  it.each([
    ['HSLA', 'high-strength', 'ultra-high-strength'],
    ['dual phase', 'advanced high-strength', 'ultra-high-strength'],
    ['DP', 'advanced high-strength', 'ultra-high-strength'],
    ['Dual-phase steel', 'advanced high-strength', 'ultra-high-strength'],
    ['TRIP', 'advanced high-strength', 'ultra-high-strength'],
    ['complex phase', 'advanced high-strength', 'ultra-high-strength'],
    ['martensitic', 'ultra-high-strength', 'press-hardened'],
    ['bake hardening', 'high-strength', 'high-strength'],
    ['UHS', 'advanced high-strength', 'press-hardened'],
    ['VHS', 'advanced high-strength', 'press-hardened'],
    ['A.H.S.S.', 'advanced high-strength', 'press-hardened'],
    ['3rd gen', 'advanced high-strength', 'press-hardened'],
    ['3rd gen AHSS', 'advanced high-strength', 'press-hardened'],
  ])('%s covers %s to %s; the strongest counts', (text, weakest, strongest) => {
    expect(tell(text)).toMatchObject({ known: 'ambiguous', class: strongest, weakest_class: weakest });
  });

  it.each(['hot press formed', 'press quenched', 'press-quenched steel', 'hot press forming'])(
    '%s is press-hardened',
    (text) => {
      expect(tell(text)).toMatchObject({ class: 'press-hardened', hardened: true });
    },
  );
});

describe('several standards of one name', () => {
  it.each(['CR340LA', 'CR420LA', 'CR180IF', '6082-T6'])(
    '%s is one class and family by all of them',
    (text) => {
      expect(tell(text)).toMatchObject({ known: 'ambiguous', same_class: true });
    },
  );

  // BS 1449 has no row here and its ranks run the other way; the others are open in their class or family.
  it.each(['CR4', '600', 'UHSS', 'JSC1470Y', '590 MPa', 'DC04', 'DC04+Z999', 'EN 10149 DC04'])(
    '%s is not so',
    (text) => {
      expect(tell(text).same_class).toBe(false);
    },
  );
});
