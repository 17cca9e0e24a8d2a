import { describe, expect, test } from 'vitest';
import type { Place } from '../../src/measure/place.ts';
import { leverAt, pointBase } from '../../src/measure/point-base.ts';
import { deviationOf, fitRigid } from '../../src/measure/rigid-fit.ts';
import { noiseOf, pairsOf, repeatable } from './any-body.ts';

describe('how far the scatter of the datum is thrown', () => {
  const half = 500;
  const square: readonly Place[] = [
    [-half, -half, 0],
    [half, -half, 0],
    [half, half, 0],
    [-half, half, 0],
  ];
  const lever = leverAt(square);

  // By hand: of a square of half side a, Σx² = Σy² = 4 a²; the shift scatters by 1/√4, the turn about y by 1/(2 a).
  test('a square: half in its middle, and along its axis by the reach', () => {
    expect(lever?.([0, 0, 0])).toBeCloseTo(0.5, 12);
    for (const reach of [500, 1000, 2000]) {
      expect(lever?.([reach, 0, 0])).toBeCloseTo(Math.hypot(0.5, reach / (2 * half)), 12);
    }
  });

  test('what a thousand fits scatter by', () => {
    const [sigma, runs] = [0.4, 4000];
    const noise = noiseOf(repeatable(5), sigma);
    const far: Place = [1800, 0, 0];
    let sum = 0;
    for (let run = 0; run < runs; run += 1) {
      const fit = fitRigid(pairsOf(square, ([x, y, z]) => [x + noise(), y + noise(), z + noise()]));
      if (!fit.ok) throw new Error(fit.why);
      sum += deviationOf(fit.motion, { nominal: far, measured: far })[2] ** 2;
    }
    const found = Math.sqrt(sum / runs) / sigma;
    // The standard deviation of a standard deviation is 1/√(2 n) of it.
    expect(Math.abs(found / (lever?.(far) ?? 0) - 1)).toBeLessThan(4 / Math.sqrt(2 * runs));
  });

  test('points at one end throw far, points on a line without end', () => {
    const rear = square.map(([x, y, z]): Place => [x / 2 + 4000, y, z]);
    expect(leverAt(rear)?.([0, 0, 0])).toBeGreaterThan(8);
    expect(
      leverAt([
        [0, 0, 0],
        [1, 1, 1],
        [2, 2, 2],
      ]),
    ).toBeUndefined();
    expect(leverAt(square.slice(0, 2))).toBeUndefined();
    expect(
      leverAt([
        [5, 5, 5],
        [5, 5, 5],
        [5, 5, 5],
      ]),
    ).toBeUndefined();
  });
});

test('two points have no base', () => {
  expect(
    pointBase([
      [0, 0, 0],
      [1, 0, 0],
    ]),
  ).toBeUndefined();
  expect(
    pointBase([
      [1, 1, 1],
      [1, 1, 1],
      [1, 1, 1],
    ]),
  ).toEqual({ spanMm: 0, widthMm: 0 });
});
