import { describe, expect, it } from 'vitest';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';

const tell = (text: string) => describeDesignation(text, { find: false });

// Scopes of the standards: EN 10130 has DC01 to DC07, EN 10149 hot-rolled MC and NC, EN 10268 HC, EN 10346 coated DX, HX and HCT.
describe('a standard beside a grade that is none of its own', () => {
  it.each([
    ['EN 10130 HX340LAD', 'EN 10130', 'EN 10346'],
    ['EN 10130 22MnB5', 'EN 10130', 'works name'],
    ['EN 10149 DC04', 'EN 10149', 'EN 10130'],
    ['JIS G 3135 DC04', 'JIS G 3135', 'EN 10130'],
    ['VDA 239-100 HC340LA', 'VDA 239-100', 'EN 10268'],
    ['HC340LA (EN 10346)', 'EN 10346', 'EN 10268'],
    ['SAE J2340 DC04', 'SAE J2340', 'EN 10130'],
  ])('%s: both are named', (text, named, own) => {
    const answer = tell(text);
    expect(answer.known).toBe('ambiguous');
    expect(answer.class).not.toBeNull();
    expect(answer.reason).toContain(named);
    expect(answer.reason).toContain(own);
  });

  it('counts the grade all the same', () => {
    expect(tell('EN 10130 22MnB5').class).toBe('press-hardened');
  });

  it('is no contradiction where it took over the grade, or lists none', () => {
    expect(tell('EN 10142 DX51D').known).toBe('known'); // superseded by EN 10346
    expect(tell('EN 10327 DX51D').known).toBe('known');
    expect(tell('EN 10336 HCT780X').known).toBe('known');
    expect(tell('EN 10131 DC04').known).toBe('known'); // tolerances of cold-rolled sheet
    expect(tell('HX340LAD EN 10346 EN 10143').known).toBe('known');
    expect(tell('EN 10152 DC04')).toMatchObject({ known: 'known', coating: 'zinc' }); // electrolytically coated
    expect(tell('EN 10139 DC04')).toMatchObject({ known: 'known', yield: null });
  });

  it('gives no yield of another standard: CS of A653 is not CS of A1008', () => {
    expect(tell('A1008 CS').yield).toMatchObject({ min: 140, max: 275 });
    for (const text of ['A653 CS', 'A463 CS', 'A1011 CS'])
      expect(tell(text)).toMatchObject({ known: 'known', class: 'mild', yield: null });
  });
});

// Order names of EN 10130, 10268 and 10346; JIS G 3141; SAE J2340; ASTM A653. From memory.
describe('honest names', () => {
  it.each([
    ['DC04-A-m', 'DC04'],
    ['DC04-B-m-O', 'DC04'],
    ['HC340LA-B', 'HC340LA'],
    ['HC220B-A', 'HC220B'],
    ['Steel EN 10346 - HX340LAD+Z100-M-B-O', 'HX340LAD'],
    ['HC340LA (EN 10268)', 'HC340LA'],
    ['DC04 EN 10130', 'DC04'],
    ['DC04 acc. to EN 10130', 'DC04'],
    ['EN 10268:2006+A1:2013 HC340LA', 'HC340LA'],
    ['DC04 (1.0338)', 'DC04'],
    ['1.0548 HC340LA', 'HC340LA'],
    ['DC04 (EN 10130, 1.0338)', 'DC04'],
    ['CR4 (VDA 239-100)', 'CR4'],
    ['SPCEN', 'SPCE'],
    ['SAE J2340 340XF', '340X'],
    ['ASTM A1008 HSLAS Gr 50 Cl 1', 'HSLAS Grade 50 [340] Class 1'],
    ['ASTM A1008 CS Type B', 'CS'],
    ['SAPH440-P', 'SAPH440'],
    ['DC01 C590', 'DC01+C590'],
    ['SGCC Z275', 'SGCC'],
    ['22MnB5 steel', '22MnB5'],
    ['22MnB5+AS150 t=1.4mm hardened', '22MnB5'],
  ])('%s is %s', (text, designation) => {
    const answer = tell(text);
    expect([answer.known, answer.reason]).toEqual(['known', null]);
    expect(answer.readings.map((one) => one.designation)).toEqual([designation]);
  });

  it.each([
    ['DC04+LC', 'known', 'mild', null],
    ['HSLA 50ksi', 'known', 'high-strength', null],
    ['ASTM A653 CS Type B G60', 'known', 'mild', 'zinc'],
    ['A653 HSLAS Grade 50', 'known', 'high-strength', null],
    ['SPC440', 'ambiguous', 'advanced high-strength', null],
    ['SCGA440-45', 'ambiguous', 'advanced high-strength', 'zinc-iron'],
    ['SCGA270D-45', 'ambiguous', 'mild', 'zinc-iron'],
    ['SGACC', 'ambiguous', 'mild', 'zinc-iron'],
  ])('%s is %s, %s', (text, known, expected, coating) => {
    expect(tell(text)).toMatchObject({ known, class: expected, coating });
  });

  // ASTM A1011 prints UHSS Grade 100 [690], A1008 HSLAS Grade 55 [380].
  it('has the yield that ASTM prints in brackets', () => {
    expect(tell('UHSS Grade 100').yield?.min).toBe(690);
    expect(tell('A653 HSLAS Grade 55').yield?.min).toBe(380);
    expect(tell('HSLAS Grade 50 [500]').reason).toContain('not the same strength');
  });
});
