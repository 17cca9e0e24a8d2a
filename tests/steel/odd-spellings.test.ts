import { describe, expect, it } from 'vitest';
import { aluminiumKind } from '../../src/steel/aluminium-kind.ts';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';
import { settleMaterial } from '../../src/steel/settling/settle-material.ts';

const tell = (text: string): ReturnType<typeof describeDesignation> =>
  describeDesignation(text, { find: false });

describe('a grade as lists and body documents write it', () => {
  it.each([
    ['HC340LA.', 'HC340LA'],
    ['HC340LA;', 'HC340LA'],
    ['"HC340LA"', 'HC340LA'],
    ['1.2 mm HC340LA', 'HC340LA'],
    ['T=1.5 HC340LA', 'HC340LA'],
    ['Material: HC340LA', 'HC340LA'],
    ['PHS1500 1500 MPa', 'PHS1500'],
    ['t=1.2 HC340LA', 'HC340LA'],
    ['HC340LA t1.2', 'HC340LA'],
    ['HC340LA 1.2x1250', 'HC340LA'],
    ['HC340LA cold rolled', 'HC340LA'],
    ['WNr 1.5528', '1.5528'],
    ['Werkstoff 1.5528', '1.5528'],
    ['Mat.-No. 1.5528', '1.5528'],
    ['22MnB5 hot stamped', '22MnB5 hardened'],
    ['22MnB5 not hardened', '22MnB5 as delivered'],
    ['22MnB5 before hardening', '22MnB5 as delivered'],
    ['22MnB5+AS150 tailored tempering', '22MnB5+AS150 with soft zone'],
    ['DC06 with sound damping', 'DC06 laminated'],
  ])('%s is %s', (odd, plain) => {
    const { given: _odd, ...answer } = tell(odd);
    const { given: _plain, ...expected } = tell(plain);
    expect(answer).toEqual(expected);
    expect(answer.class).not.toBeNull();
  });

  it.each([
    ['22MnB5 AlSi 150', 'press-hardened', 'aluminium-silicon'],
    ['22MnB5 + AlSi', 'press-hardened', 'aluminium-silicon'],
    ['HSLA420 HDG', 'high-strength', 'zinc'],
    ['HC340LA galvannealed', 'high-strength', 'zinc-iron'],
    ['mild steel electro-galvanized', 'mild', 'zinc'],
    ['GA590DP', 'advanced high-strength', 'zinc-iron'],
    ['HDG HSLA340', 'high-strength', 'zinc'],
    ['TWB: HCT600X 1.2 + DC04 1.0', 'advanced high-strength', null],
  ])('%s', (text, expected, coating) => {
    expect(tell(text)).toMatchObject({ known: 'known', class: expected, coating });
  });

  it.each(['galvanised steel', 'coated', 'cold rolled', '1.2 mm', 't=1.2', 'HDG', 'AlSi'])(
    '%s names none',
    (text) => {
      expect(tell(text).class).toBeNull();
    },
  );

  it('a strength in gigapascals is no thickness', () => {
    expect(tell('1.5 gigapascal').tensile?.min).toBe(1500);
  });
});

// SAE J1392: seven levels in ksi, given as 240, 280, 310, 340, 410, 480, 550 MPa (guide to the standard, seen); letters from the same page.
describe('SAE J1392', () => {
  it.each([
    ['050XLK', 340, 'high-strength'],
    ['SAE J1392 050YF', 340, 'high-strength'],
    ['040A', 280, 'high-strength'],
    ['J1392 080XLF', 550, 'advanced high-strength'],
  ])('%s has a yield of %i MPa', (text, least, expected) => {
    expect(tell(text)).toMatchObject({ known: 'ambiguous', class: expected, yield: { min: least } });
  });

  it.each(['055X', '050Q', 'J1392 900X'])('%s is none', (text) => {
    expect(tell(text).class).toBeNull();
  });
});

// CS took the place of commercial quality, DS of drawing quality special killed (gauge chart of a steel seller, seen).
it.each(['CQ', 'DQ', 'DQSK', 'DDQ', 'EDDQ'])('%s is mild sheet', (text) => {
  expect(tell(text)).toMatchObject({ known: 'known', class: 'mild', tensile: null });
});

// EN 10292:2007 was superseded by EN 10346:2009 (foreword of BS EN 10346:2009, seen).
it('a hot-dip name of before 2009 is of EN 10292', () => {
  expect(tell('H340LAD+Z')).toMatchObject({ class: 'high-strength', standard: 'EN 10292', coating: 'zinc' });
  expect(tell('H320LA').standard).toContain('EN 10268:1998');
});

// EN 1706 has AlMg9, AlMg5(Si), AlCu4MgTi, AlZn10Si8Mg; AlMg5Si2Mn is cast for strut towers (from memory).
describe('aluminium by its symbol', () => {
  it.each(['AlMg5Si2Mn', 'AlMg9', 'AlCu4MgTi', 'AlZn10Si8Mg', 'AlSi10MnMg', 'AlSi7Mg0.3'])(
    '%s is cast',
    (grade) => {
      expect(aluminiumKind(settleMaterial({ grade }).readings)).toBe('casting');
      expect(tell(grade).standard).toBe('EN 1706');
    },
  );

  it.each([
    ['AlMg3', '5xxx'],
    ['AlMg4.5Mn0.7', '5xxx'],
    ['AlMg1SiCu', '6xxx'],
    ['AlSi1MgMn', '6xxx'],
    ['AlZn5.5MgCu', '7xxx'],
    ['AlCu4Mg1', 'other wrought'],
  ])('%s is wrought: %s', (grade, kind) => {
    expect(aluminiumKind(settleMaterial({ grade }).readings)).toBe(kind);
  });

  it('a bare number of a body alloy is asked for with its prefix', () => {
    expect(tell('5754').reason).toContain('EN AW-5754');
    expect(tell('2024-T3')).toMatchObject({ known: 'ambiguous', class: 'aluminium' });
  });
});

// ISO 18265: 48 HRC goes with 1572 MPa.
it('a range of hardness counts by its upper end', () => {
  expect(tell('48-52 HRC').class).toBe('press-hardened');
  expect(tell('200 to 300 HV')).toMatchObject({ class: 'ultra-high-strength', known: 'ambiguous' });
  expect(tell('85 HRB').reason).toContain('not converted');
});
