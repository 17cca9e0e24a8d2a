import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exchangedPoints, putBack } from '../../src/measure/exchanged.ts';
import { distanceMm, movedBy, stretched } from '../../src/measure/place.ts';
import type { Place } from '../../src/measure/place.ts';
import { carried } from '../../src/measure/rigid-motion.ts';
import { anyMotion, floor, pairsOf } from './any-body.ts';

const body: readonly Place[] = [
  ...floor,
  [1412, -702, 611],
  [1410, 702, 611],
  [-900, -430, 180],
  [-820, 470, 640],
  // Two points as near each other as a data sheet has them.
  [-860, 430, 600],
];
const zero = [0, 1, 2, 3];

/** Smooth as sheet bends: near points move alike, and nothing passes through itself. */
const anyBlow = fc
  .record({
    at: fc.constantFrom(...body),
    way: fc.tuple(...[0, 1, 2].map(() => fc.integer({ min: -10, max: 10 }))),
    mm: fc.integer({ min: 30, max: 400 }),
    reach: fc.double({ min: 1.5, max: 6, noNaN: true }),
  })
  .map(({ at, way: [x = 0, y = 0, z = 0], mm, reach }) => (place: Place): Place => {
    const share = Math.exp(-((distanceMm(at, place) / (mm * reach)) ** 2));
    return movedBy(place, stretched([x, y, z], (mm * share) / Math.max(1, Math.hypot(x, y, z))));
  });

describe('a body that is bent', () => {
  test('is never taken for exchanged rows, however hard the blow and from wherever it was read', () => {
    fc.assert(
      fc.property(anyBlow, anyBlow, anyMotion, (one, other, motion) => {
        const read = pairsOf(body, (place) => carried(motion, one(other(place))));
        expect(exchangedPoints(read, zero)).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });

  test('is bent by some of those blows, so that the property says something', () => {
    const off = fc
      .sample(anyBlow, { numRuns: 200, seed: 5 })
      .map((blow) => Math.max(...body.map((place) => distanceMm(place, blow(place)))));
    expect(off.filter((mm) => mm > 100).length).toBeGreaterThan(50);
  });
});

describe('two rows exchanged', () => {
  test('are found, whichever two and from wherever the body was read, and their readings come back', () => {
    const last = body.length - 1;
    fc.assert(
      fc.property(anyMotion, fc.nat(last), fc.nat(last), (motion, first, second) => {
        fc.pre(first < second);
        const right = pairsOf(body, (place) => carried(motion, place));
        const wrong = putBack(right, [[first, second]]);
        const found = exchangedPoints(wrong, zero);
        expect(found.map(({ one, other }) => [one, other])).toEqual([[first, second]]);
        expect(putBack(wrong, [[first, second]])).toEqual(right);
        expect(found[0]?.putBackMm).toBeLessThan(1e-6);
      }),
      { numRuns: 200 },
    );
  });

  test('of a body that is bent elsewhere too', () => {
    const hit = pairsOf(body, (place) => (place[0] < -850 ? movedBy(place, [60, 20, -15]) : place));
    const found = exchangedPoints(putBack(hit, [[0, 2]]), zero);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ one: 0, other: 2 });
    // Corners of a floor of 1800 by 1120.
    expect(found[0]?.asWrittenMm).toBeCloseTo(1800, 6);
  });

  test('twice, so that the zero points fit all the same', () => {
    const right = pairsOf(body, (place) => place);
    const wrong = putBack(right, [
      [0, 1],
      [2, 3],
    ]);
    expect(exchangedPoints(wrong, zero).map(({ one, other }) => [one, other])).toEqual([
      [0, 1],
      [2, 3],
    ]);
  });
});
