import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classOfTensile, steelRank, strengthClasses, strongest } from '../../src/steel/strength-class.ts';

describe('the ladder of steel classes', () => {
  it('ranks the five steel classes from mild to press-hardened and no other material', () => {
    expect(strengthClasses.map(steelRank)).toEqual([
      0,
      1,
      2,
      3,
      4,
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  it.each([
    [['mild', 'press-hardened', 'high-strength'], 'press-hardened'],
    [['advanced high-strength', 'ultra-high-strength'], 'ultra-high-strength'],
    [['aluminium', 'aluminium'], 'aluminium'],
    [['aluminium', 'mild'], undefined],
    [['stainless', 'composite'], undefined],
    [[], undefined],
  ] as const)('takes the strongest of %j: %s', (classes, expected) => {
    expect(strongest(classes)).toBe(expected);
  });

  it('never picks a class that is weaker than one of the steels given', () => {
    const steels = strengthClasses.filter((one) => steelRank(one) !== undefined);
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...steels), { minLength: 1 }), (classes) => {
        const top = strongest(classes);
        expect(top).toBeDefined();
        if (top === undefined) return;
        expect(classes).toContain(top);
        for (const one of classes) expect(steelRank(top)).toBeGreaterThanOrEqual(steelRank(one) ?? Infinity);
      }),
    );
  });
});

describe('the class of a tensile strength', () => {
  it('never falls as the strength rises', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 3000, noNaN: true }),
        fc.double({ min: 0, max: 500, noNaN: true }),
        (mpa, more) => {
          expect(steelRank(classOfTensile(mpa + more))).toBeGreaterThanOrEqual(
            steelRank(classOfTensile(mpa)) ?? Infinity,
          );
        },
      ),
    );
  });

  it.each([0, -1, Number.NaN])('refuses %s MPa', (mpa) => {
    expect(() => classOfTensile(mpa)).toThrow(RangeError);
  });
});
