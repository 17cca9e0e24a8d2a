import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkDigit } from '../../src/vehicle/check-digit.ts';

describe('checkDigit', () => {
  it.each(['', '0DMAC3D44R100012', '0DMAC3D44R10001250', 'ODMAC3D44R1000125', '0dmac3d44r1000125'])(
    'has none for "%s", which is not in form',
    (text) => {
      expect(checkDigit(text)).toBeUndefined();
    },
  );

  it('does not depend on what stands in the ninth place', () => {
    fc.assert(
      fc.property(fc.constantFrom(...'ABCXYZ0123456789'), (ninth) => {
        expect(checkDigit(`0DMAC3D4${ninth}R1000125`)).toEqual({ sum: 235, digit: '4' });
      }),
    );
  });

  it('catches any one digit of the serial read wrong', () => {
    // No weight there is a multiple of 11 and two digits differ by less than 11, so no slip can hide.
    const serial = fc.integer({ min: 0, max: 999_999 }).map((number) => String(number).padStart(6, '0'));
    fc.assert(
      fc.property(
        serial,
        fc.integer({ min: 0, max: 5 }),
        fc.integer({ min: 1, max: 9 }),
        (right, place, shift) => {
          const wrong = [...right]
            .map((digit, at) => (at === place ? String((Number(digit) + shift) % 10) : digit))
            .join('');
          const [one, other] = [right, wrong].map((digits) => checkDigit(`0DMAC3D40R1${digits}`)?.digit);
          expect(one).not.toBe(other);
        },
      ),
    );
  });
});
