import { describe, expect, it } from 'vitest';
import { carbonEquivalents } from '../../src/steel/answer/carbon-equivalent.ts';
import { compositionOf } from '../../src/steel/answer/composition.ts';
import { describeDesignation } from '../../src/steel/answer/describe-designation.ts';
import { thicknessRange } from '../../src/steel/answer/thickness-range.ts';

// Formulas: CE of the International Institute of Welding and CET by EN 1011-2, Pcm by Ito and Bessyo (1968). Expected values
// were worked out by hand from the published compositions.
describe('carbon equivalents', () => {
  it.each([
    // 22MnB5, typical: 0.23 + 1.18/6 + 0.16/5; 0.23 + 1.18/10 + 0.16/20; 0.23 + 0.22/30 + 1.34/20 + 5 × 0.002
    ['22MnB5', 0.459, 0.356, 0.314],
    // DC04, EN 10130: C 0.08, Mn 0.40 at most: 0.08 + 0.0667; 0.08 + 0.04; 0.08 + 0.02
    ['DC04', 0.147, 0.12, 0.1],
    // S355MC, EN 10149-2: C 0.12, Si 0.50, Mn 1.50, V 0.20 at most: 0.12 + 0.25 + 0.04; 0.12 + 0.15; 0.12 + 0.0167 + 0.075 + 0.02
    ['S355MC', 0.41, 0.27, 0.232],
    // S700MC: C 0.12, Si 0.60, Mn 2.10, V 0.20, Mo 0.50, B 0.005: 0.12 + 0.35 + 0.14; 0.12 + 0.26; 0.12 + 0.02 + 0.105 + 0.0333 + 0.02 + 0.025
    ['S700MC', 0.61, 0.38, 0.323],
  ])('of %s: CE %d, CET %d, Pcm %d', (designation, ce, cet, pcm) => {
    const found = compositionOf(designation);
    if (found === undefined) throw new Error(`no composition of ${designation}`);
    const equivalents = carbonEquivalents(found.composition);
    expect(equivalents.ce).toBeCloseTo(ce, 2);
    expect(equivalents.cet).toBeCloseTo(cet, 2);
    expect(equivalents.pcm).toBeCloseTo(pcm, 2);
  });

  it('count every element at the weight of its formula', () => {
    const base = { c: 0.1 };
    const weights = [
      ['mn', 1 / 6, 1 / 10, 1 / 20],
      ['cr', 1 / 5, 1 / 20, 1 / 20],
      ['mo', 1 / 5, 1 / 10, 1 / 15],
      ['v', 1 / 5, 0, 1 / 10],
      ['ni', 1 / 15, 1 / 40, 1 / 60],
      ['cu', 1 / 15, 1 / 20, 1 / 20],
      ['si', 0, 0, 1 / 30],
      ['b', 0, 0, 5],
    ] as const;
    for (const [element, ce, cet, pcm] of weights) {
      const found = carbonEquivalents({ ...base, [element]: 1 });
      expect([element, found.ce, found.cet, found.pcm]).toEqual([
        element,
        expect.closeTo(0.1 + ce, 9),
        expect.closeTo(0.1 + cet, 9),
        expect.closeTo(0.1 + pcm, 9),
      ]);
    }
  });

  it('of a tailored blank are those of the sheet that hardens most, and unknown if one sheet is', () => {
    const of = (text: string) => describeDesignation(text, { find: false }).carbon_equivalents;
    expect(of('DC04 + 22MnB5')?.ce).toBeCloseTo(0.459, 2);
    expect(of('DC04 + S355MC')?.ce).toBeCloseTo(0.41, 2);
    expect(of('DC04 + HCT980X')).toBeNull();
    expect(of('HCT980X + DC04')).toBeNull();
  });

  it('say whether they rest on a typical composition or on limits', () => {
    expect(describeDesignation('22MnB5+AS150', { find: false }).carbon_equivalents?.kind).toBe('typical');
    expect(describeDesignation('S355MC', { find: false }).carbon_equivalents?.kind).toBe('limit');
    expect(describeDesignation('HCT980X', { find: false }).carbon_equivalents).toBeNull();
  });
});

// EN 10346:2015, scope as published: 0.20 to 3.0 mm, by agreement to 6.5 mm. The others from memory of the scopes.
describe('thickness for which a standard is written', () => {
  it.each([
    ['EN 10346:2015', 0.2, 6.5],
    ['EN 10130:2006', 0.35, 3],
    ['EN 10149-2:2013', 1.5, 20],
    ['JIS G 3135:2018', 0.6, 2.3],
  ])('%s: %d to %d mm', (standard, minMm, maxMm) => {
    expect(thicknessRange(standard)).toMatchObject({ minMm, maxMm });
  });

  it('is not known where one of several is not', () => {
    expect(thicknessRange('EN 10268:2006 / VDA 239-100:2016')).toBeUndefined();
    expect(thicknessRange('VDA 239-100:2016')).toBeUndefined();
  });
});
