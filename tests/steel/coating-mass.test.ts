import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';

const tell = (text: string) => describeDesignation(text, { find: false });
const both = 'both sides together';
const each = 'each side';

describe('the coating behind a grade', () => {
  it.each([
    ['HX340LAD+Z100MB', 'zinc', 100, both],
    ['HX340LAD Z100', 'zinc', 100, both],
    ['HCT980X-Z100', 'zinc', 100, both],
    ['DC04Z100', 'zinc', 100, both],
    ['22MnB5+AS150', 'aluminium-silicon', 150, both],
    ['22MnB5+AS150 1.4 mm', 'aluminium-silicon', 150, both],
    ['22MnB5 AS150', 'aluminium-silicon', 150, both],
    ['DX54D+ZF100RB', 'zinc-iron', 100, both],
    ['CR330Y590T-DP-GI50/50-U', 'zinc', 50, each],
    ['CR1500T-MB-AS75/75', 'aluminium-silicon', 75, each],
    ['HCT980X+ZE75/75', 'zinc', 54, each], // 7.5 µm of zinc at 7.14 g/cm³
    ['JAC590R-45/45', 'zinc-iron', 45, each],
    ['JAC980YL-45/45', 'zinc-iron', 45, each],
    ['SGC440-F08', 'zinc-iron', 80, both],
    ['SGCC-Z27', 'zinc', 275, both],
    ['ASTM A653 CS G90', 'zinc', 275, both], // 0.90 oz/ft² at 305.15 g/m² each
    ['ASTM A653 CS Type B A40', 'zinc-iron', 122, both],
    ['ASTM A653 CS 60G60G', 'zinc', 60, each],
  ])('%s: %s, %d g/m² %s', (text, coating, grams, counted) => {
    expect(tell(text)).toMatchObject({ coating, coating_mass: { grams, counted } });
  });

  // JFS A 3011: JA is galvannealed.
  it.each(['JAC1180Y', 'JAC590YL', 'JAH590R', 'JAC590Y'])('%s is galvannealed', (text) => {
    expect(tell(text).coating).toBe('zinc-iron');
  });

  it.each(['DC04', '22MnB5+AS', 'HX340LAD+Z', 'CR1220Y1500T-MS-UC'])('%s has no mass', (text) => {
    expect(tell(text).coating_mass).toBeNull();
  });

  it.each(['DC04+Z999', 'DC04+ZE999/999', 'SGC440-Z99', '22MnB5+AS999', 'DC04Z340', 'CR210BH-GI999/999'])(
    '%s has a mass that no sheet is ordered with',
    (text) => {
      expect(tell(text)).toMatchObject({ known: 'ambiguous', coating_mass: null });
      expect(tell(text).reason).toContain('not ordered with');
    },
  );

  // EN 10139: C290 to C690 are the steps of cold-hardened strip.
  it('a Z before a step of cold hardening may be a C: the stronger counts', () => {
    for (const step of [340, 390, 440, 490, 590, 690]) {
      const hardened = tell(`DC01+C${step}`);
      expect(hardened.known).toBe('known');
      expect(tell(`DC01+Z${step}`)).toMatchObject({ known: 'ambiguous', class: hardened.class });
    }
  });

  it('never makes a steel weaker, however it is written', () => {
    const grade = fc.constantFrom('HCT980X', 'HCT780X', 'HX420LAD', '22MnB5', 'CR700Y980T-DP');
    const code = fc.constantFrom('Z', 'ZF', 'ZM', 'ZA', 'AZ', 'AS', 'ZE', 'GI', 'GA', 'EG');
    const mass = fc.integer({ min: 0, max: 999 });
    const join = fc.constantFrom('+', '-', ' ', ' +', '');
    fc.assert(
      fc.property(grade, join, code, mass, fc.boolean(), (name, glue, letters, grams, twice) => {
        const text = `${name}${glue}${letters}${twice ? `${grams}/${grams}` : grams}`;
        const { class: counts } = tell(text);
        if (counts !== null) expect([text, counts]).toEqual([text, tell(name).class]);
      }),
    );
  });
});
