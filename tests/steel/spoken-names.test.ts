import { describe, expect, it } from 'vitest';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';
import { settleMaterial } from '../../src/steel/settling/settle-material.ts';

const tell = (text: string): ReturnType<typeof describeDesignation> =>
  describeDesignation(text, { find: false });

// 980 MPa is 142.1 ksi (NIST SP 811), and is spoken "140 ksi" (practice).
describe('a rounded strength', () => {
  it.each(['Rm 140 ksi', 'tensile 142 ksi', '100 kgf'])('%s counts as the class of 980 MPa', (text) => {
    expect(tell(text).class).toBe('ultra-high-strength');
  });

  it('says no more than it does in MPa, or where it has decimals', () => {
    expect(tell('Rm 965 MPa').class).toBe('advanced high-strength');
    expect(tell('Rm 139 ksi').class).toBe('advanced high-strength');
    expect(tell('Rm 140.0 ksi').class).toBe('advanced high-strength');
  });

  it('is no hardened steel for being rounded: 171 ksi is the class of 1180', () => {
    expect(tell('Rm 171 ksi').class).toBe('ultra-high-strength');
  });
});

// English writes 1,500, ISO 80000-1 writes 1 500, parts of Europe 1.500.
describe('thousands', () => {
  it.each(['1,500 MPa', '1 500 MPa', "1'500 MPa", '1.500 MPa', '1,500 N/mm2', 'Rm 1 500 MPa'])(
    '%s',
    (text) => {
      expect(tell(text)).toMatchObject({ class: 'press-hardened', tensile: { min: 1500 } });
    },
  );

  it('a decimal stays one', () => {
    expect(tell('1.500 GPa').tensile?.min).toBe(1500);
    expect(tell('0.980 MPa').known).toBe('unknown');
  });
});

describe('signs and words before a strength', () => {
  it.each(['Rm >= 980 MPa', 'Rm > 980 MPa', 'Rm ≥ 980 MPa', 'over 980 MPa', 'more than 980 MPa', '980+ MPa'])(
    '%s is a strength, no web page',
    (text) => {
      expect(tell(text)).toMatchObject({ known: 'ambiguous', usable: true, class: 'ultra-high-strength' });
    },
  );

  it.each(['Rm<b>980</b>', 'DC04</td>', 'DC04 <br>980', 'a >b'])('%s is a web page', (text) => {
    expect(tell(text).usable).toBe(false);
  });

  it('a symbol of ISO 6892-1 without a unit is in MPa, and a word alone may be in ksi', () => {
    expect(tell('Rm 980').tensile?.min).toBe(980);
    expect(tell('Rp0.2 340').yield?.min).toBe(340);
    expect(tell('yield 340').known).toBe('unknown');
  });
});

describe('yield and tensile strength side by side', () => {
  it.each([
    ['Re 340 Rm 590 MPa', 340, 590, 'advanced high-strength'],
    ['YS 340 MPa, TS 590 MPa', 340, 590, 'advanced high-strength'],
    ['Rp0.2 550 / Rm 980 MPa', 550, 980, 'ultra-high-strength'],
    ['340/590 MPa', 340, 590, 'advanced high-strength'],
    ['590/340', 340, 590, 'advanced high-strength'],
    ['Re 950 Rm 1300', 950, 1300, 'press-hardened'],
  ])('%s', (text, least, tensile, expected) => {
    expect(tell(text)).toMatchObject({
      known: 'ambiguous',
      class: expected,
      tensile: { min: tensile },
      yield: { min: least },
    });
  });

  it.each(['2020/2021', '45/45', '341/589'])('%s is none', (text) => {
    expect(tell(text).class).toBeNull();
  });

  it('in the wrong order is no answer', () => {
    expect(tell('Re 590 MPa Rm 340 MPa')).toMatchObject({ known: 'unknown', class: null });
    expect(tell('Re 590 MPa Rm 340 MPa').reason).toContain('not below');
  });
});

// One and the same as the short name: DP780, CP800 (which is 780), PHS1500.
describe('a family and its strength in words', () => {
  it.each([
    ['dual phase 780', 'advanced high-strength', 780],
    ['980 MPa dual-phase steel', 'ultra-high-strength', 980],
    ['complex phase 800', 'advanced high-strength', 780],
    ['boron 1500 MPa', 'press-hardened', undefined],
    ['1500 MPa (hot stamped)', 'press-hardened', undefined],
    ['hot formed 1900', 'press-hardened', undefined],
  ])('%s', (text, expected, tensile) => {
    const answer = tell(text);
    expect(answer).toMatchObject({ known: 'known', class: expected });
    expect(answer.tensile?.min).toBe(tensile);
  });

  it.each([
    ['AHSS 980', 'ultra-high-strength'],
    ['Gen3 980', 'ultra-high-strength'],
    ['UHSS 1500 MPa', 'press-hardened'],
    // Hardened boron steel is martensite too.
    ['martensitic 1500 MPa', 'press-hardened'],
  ])('%s leaves the family open and counts as %s', (text, expected) => {
    expect(tell(text)).toMatchObject({ known: 'ambiguous', class: expected });
    expect(tell(text).reason).toContain('go together');
  });

  it.each([
    ...['HSLA 1500', 'mild steel 1500 MPa', 'DC04 1500 MPa', 'dual phase 1500', 'boron 500 MPa'],
    ...['UHSS 440', 'AHSS 340'],
  ])('%s does not go together, and the strongest counts', (text) => {
    expect(tell(text)).toMatchObject({ known: 'ambiguous', class: 'press-hardened' });
  });
});

// BH sheet has a yield of 180 to 300 MPa (application guidelines of the steel industry, seen); JSC340H is near CR210BH (mill table, seen).
describe('a number that is a yield for some and a tensile strength for others', () => {
  it.each(['BH340', '340BH', 'IF340', 'GI 340BH'])('%s promises no yield', (text) => {
    const answer = tell(text);
    expect(answer).toMatchObject({ known: 'ambiguous', class: 'high-strength' });
    expect(answer.readings.map((one) => [one.yield?.min, one.tensile?.min])).toEqual([
      [undefined, 340],
      [340, undefined],
    ]);
    if (/^\w+$/.test(text)) expect(answer.number_means).toContain('for others');
  });

  it.each(['BH220', '210BH', '340LA', 'HSLA340', 'BH300'])('%s is a yield', (text) => {
    expect(tell(text)).toMatchObject({ known: 'known', class: 'high-strength', tensile: null });
  });
});

// The nominal class is that of the hardened part; 500 is the ductile partner of a tailored blank (VDA 239-500, from memory).
describe('a strength beside a press-hardened name', () => {
  it.each([
    ['CR500T-LA', 550, true],
    ['PHS600', 600, true],
    ['PHS1500', 1300, true],
    ['CR1500T-MB', 1650, true],
    ['PHS1500', 600, false],
    ['CR500T-LA', 1500, false],
    ['CR1900T-MB', 1300, false],
  ])('%s with %i MPa: fits is %s', (grade, tensileMpa, fits) => {
    const settled = settleMaterial({ grade, tensileMpa });
    expect([settled.class, settled.contradictions.length === 0]).toEqual(['press-hardened', fits]);
  });
});

// Minima of EN 10083-3 are those of quenched and tempered stock; pressed 20MnB5 has above 400 HV (from memory).
it('stock of boron steel has no hardness of a pressed part', () => {
  expect(tell('20MnB5').hardness).toBeNull();
  expect(tell('20MnB5').tensile_only_if).toContain('quenched and tempered');
});
