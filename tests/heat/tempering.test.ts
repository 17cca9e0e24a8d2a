import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tensileOfHardness } from '../../src/heat/strength/hardness-to-tensile.ts';
import { solveHeldSheet } from '../../src/heat/sheet/held-sheet.ts';
import { temperedHardness } from '../../src/heat/strength/tempering.ts';
import { tensileLeft } from './tensile-left.ts';

/*
 * Strip and curve together, from another program (finite volumes in Python, no heated zone, hold and 240 s after):
 * 1.2 mm, emissivity 0.7, 8 W/m²K, 480 HV. Hardness at 10 and 20 mm.
 */
test.each([
  [600, 10, 463, 480],
  [600, 60, 396, 458],
  [600, 300, 355, 426],
  [800, 60, 334, 433],
])('beside a place at %d °C for %d s', (sourceCelsius, holdSeconds, atTen, atTwenty) => {
  const answer = solveHeldSheet({
    sourceCelsius,
    holdSeconds,
    times: 1,
    thicknessMm: 1.2,
    metal: 'steel',
    heatedZoneMm: 0,
    emissivity: 0.7,
  });
  if (!answer.ok) throw new Error(answer.reason);
  for (const [distance, expected] of [
    [10, atTen],
    [20, atTwenty],
  ] as const) {
    const at = answer.history.at(distance);
    if (!at.ok) throw new Error(at.reason);
    const left = temperedHardness(at.point);
    if (left.state !== 'tempered') throw new Error(left.state);
    // The margin of the strip makes it softer, by 7 HV at most; never harder than rounding.
    expect(left.hv).toBeLessThan(expected + 0.7);
    expect(left.hv).toBeGreaterThan(expected - 7);
  }
});

test('hotter or longer never leaves more', () => {
  const kelvin = fc.double({ min: 20, max: 700, noNaN: true });
  const time = fc.double({ min: 0.1, max: 3000, noNaN: true });
  fc.assert(
    fc.property(kelvin, time, fc.double({ min: 1, max: 1.02, noNaN: true }), (celsius, seconds, by) => {
      const left = (c: number, s: number): number => {
        const answer = tensileLeft({ seconds: [0, s], celsius: [c, c] });
        return answer.state === 'tempered' ? answer.percent : Number.NaN;
      };
      expect(left(celsius * by, seconds)).toBeLessThanOrEqual(left(celsius, seconds));
      expect(left(celsius, seconds * by)).toBeLessThanOrEqual(left(celsius, seconds));
    }),
  );
});

describe('no number where none can be had', () => {
  test.each([
    { seconds: [], celsius: [] },
    { seconds: [0], celsius: [20] },
    { seconds: [0, 1], celsius: [20] },
    { seconds: [0, 1], celsius: [20, Number.NaN] },
    { seconds: [0, Number.NaN], celsius: [20, 300] },
    { seconds: [1, 0], celsius: [20, 300] },
    { seconds: [0, 1], celsius: [20, 5000] },
  ])('%o', (history) => {
    expect(tensileLeft(history)).toMatchObject({ state: 'not computed' });
  });

  test('start hardness that is no hardened sheet', () => {
    const history = { seconds: [0, 10], celsius: [300, 300] };
    for (const startHv of [Number.NaN, 0, 150, 900]) {
      expect(tensileLeft(history, startHv)).toMatchObject({ state: 'not computed' });
    }
    expect(tensileLeft(history, 400)).toMatchObject({ state: 'tempered' });
    expect(temperedHardness(history, 299)).toMatchObject({ state: 'not computed' });
  });

  test('hardness outside the table', () => {
    for (const hv of [Number.NaN, 149, 521, -480]) expect(tensileOfHardness(hv)).toBeUndefined();
    expect(tensileOfHardness(150)).toBe(480);
    expect(tensileOfHardness(470)).toBe(1520);
  });
});
