import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readVin } from '../../src/vehicle/identification-number.ts';

const vin = '0DMAC3D44R1000125';

function refusal(text: string): { fault: string; reason: string; near: string | undefined } {
  const reading = readVin(text);
  if (reading.ok) return { fault: 'none', reason: '', near: undefined };
  return { fault: reading.fault, reason: reading.reason, near: reading.near };
}

describe('readVin', () => {
  it('reads a number as it stands', () => {
    expect(readVin(vin)).toEqual({ ok: true, vin, tidied: false });
  });

  it.each([
    '0dmac3d44r1000125',
    ' 0DMAC3D44R1000125',
    '0DM AC3D4 4 R1000125',
    '0DM-AC3D4-4-R1-000125',
    '0DM\u00a0AC3D44R1000125',
    '0DM\u2011AC3D44R1000125',
  ])('tidies "%s" and says so', (text) => {
    expect(readVin(text)).toEqual({ ok: true, vin, tidied: true });
  });

  it.each([
    ['', /has 0 characters/u],
    [vin.slice(1), /has 16 characters; a vehicle identification number has 17/u],
    [`${vin}0`, /has 18 characters/u],
    ['9'.repeat(5000), /^This has 5000 characters/u],
  ])('refuses the length of "%.20s"', (text, reason) => {
    expect(refusal(text)).toMatchObject({
      fault: 'length',
      reason: expect.stringMatching(reason),
      near: undefined,
    });
  });

  it.each([
    ['ODMAC3D44R1000125', 'O in place 1', vin],
    ['0DMAC3D44RI000125', 'I in place 11', vin],
    ['0DMAC3D44R1Q00125', 'Q in place 12', vin],
    ['odmac3d44rlooo125', 'O in place 1, O in place 12, O in place 13, O in place 14', '0DMAC3D44RL000125'],
  ])('does not take a letter for a digit: %s', (text, places, near) => {
    expect(refusal(text)).toMatchObject({ fault: 'letters I, O, Q', near });
    expect(refusal(text).reason).toContain(places);
    expect(refusal(text).reason).toContain(`${near} may be meant`);
  });

  it.each([
    ['0DM\u0410C3D44R1000125', 'U+0410', vin], // Cyrillic
    ['0DM\u0391C3D44R1000125', 'U+0391', vin], // Greek
    ['0DM\uff21C3D44R1000125', 'U+FF21', vin], // full-width letter
    ['0DMAC3D44R100012\uff15', 'U+FF15', vin], // full-width digit
    ['0DMAC3D44R1\u041e00125', 'U+041E', vin], // Cyrillic O for zero
    ['0DMAC3D44R1000*25', '* in place 15', undefined],
    ['0DMAC3D44R1000\u{1f697}25', 'U+1F697', undefined],
  ])('refuses a look-alike by its code point: %s', (text, place, near) => {
    expect(refusal(text)).toMatchObject({ fault: 'character', near });
    expect(refusal(text).reason).toContain(place);
  });

  it.each([
    ['0DMAC3D44R10001\u017f5', 'U+017F'], // long s, whose capital is S
    ['0DMAC3D44R10001\u01315', 'U+0131'], // dotless i, whose capital is I
    ['0DMAC3D44R10001\u212a5', 'U+212A'], // Kelvin sign, whose small letter is k
  ])('does not raise a foreign letter to a Latin capital: %s', (text, place) => {
    expect(refusal(text).fault).toBe('character');
    expect(refusal(text).reason).toContain(place);
  });

  it('reads exactly what is built of the thirty-three characters, and gives it back', () => {
    const character = fc.constantFrom(...'ABCDEFGHJKLMNPRSTUVWXYZ0123456789');
    fc.assert(
      fc.property(fc.string({ unit: character, minLength: 17, maxLength: 17 }), (text) => {
        expect(readVin(text)).toEqual({ ok: true, vin: text, tidied: false });
        expect(readVin(text.toLowerCase())).toMatchObject({ ok: true, vin: text });
      }),
    );
  });

  it('reads nothing out of form, and suggests only what is in form', () => {
    const character = fc.constantFrom(...'ABCIOQX019*\u0410\u041e\uff21 -');
    fc.assert(
      fc.property(fc.string({ unit: character, minLength: 15, maxLength: 20 }), (text) => {
        const reading = readVin(text);
        if (reading.ok) expect(reading.vin).toMatch(/^[A-HJ-NPR-Z0-9]{17}$/u);
        else if (reading.near !== undefined) expect(readVin(reading.near).ok).toBe(true);
      }),
    );
  });
});
