import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkDatum } from '../../src/measure/datum.ts';
import { oneOffAsRead } from '../../src/measure/one-off-as-read.ts';
import type { Place } from '../../src/measure/place.ts';
import { fitRigid } from '../../src/measure/rigid-fit.ts';
import type { PointPair } from '../../src/measure/rigid-fit.ts';
import { carried } from '../../src/measure/rigid-motion.ts';
import type { RigidMotion } from '../../src/measure/rigid-motion.ts';
import { anyMotion, floor, pairsOf } from './any-body.ts';

/** One point of the floor gone by a way, the rest where it belongs. */
function gone(which: number, [dx, dy, dz]: Place, nominal: readonly Place[] = floor): readonly PointPair[] {
  return nominal.map((place, index) => ({
    nominal: place,
    measured: index === which ? [place[0] + dx, place[1] + dy, place[2] + dz] : place,
  }));
}

describe('a zero point that has moved', () => {
  test('in the plane of four it is found, by its whole way, and named', () => {
    for (const which of [0, 1, 2, 3]) {
      const check = checkDatum(gone(which, [0, 8, 0]), 3);
      expect(check?.errorMm).toBeCloseTo(8, 6);
      expect(check?.suspects).toEqual([which]);
    }
  });

  test('out of the plane of four it is found, and could be any of them', () => {
    // By hand: three corners carry the fourth; whichever is left out stands 8 mm over the plane of the others.
    const check = checkDatum(gone(2, [0, 0, 8]), 3);
    expect(check?.errorMm).toBeCloseTo(8, 3);
    expect(check?.suspects).toEqual([0, 1, 2, 3]);
  });

  test('with a fifth point off the plane it is named there too', () => {
    const five: readonly Place[] = [...floor, [900, 0, 600], [300, 100, 500]];
    expect(checkDatum(gone(2, [0, 0, 8], five), 3)?.suspects).toEqual([2]);
  });

  test('of three the distances tell, of both ends alike', () => {
    const three = floor.slice(0, 3);
    const check = checkDatum(gone(0, [5, 0, 0], three), 3);
    expect(check).toMatchObject({ by: 'distance', suspects: [0] });
    // The long side is 5 mm short; the diagonal by its share of it, 5 · 1800 / √(1800² + 1120²) = 4.2 mm.
    expect(check?.errorMm).toBeCloseTo(5, 6);
    // Gone so that the diagonal is 1 mm longer only, the side alone tells: of either end.
    expect(checkDatum(gone(0, [5, -10, 0], three), 3)?.suspects).toEqual([0, 1]);
    expect(checkDatum(gone(0, [5, -10, 0], three), 6)?.suspects).toEqual([]);
  });

  test('two that moved are no single one', () => {
    const pairs = gone(0, [0, 9, 0]).map((pair, index): PointPair =>
      index === 2 ? { ...pair, measured: [1800, 572, 0] } : pair,
    );
    const check = checkDatum(pairs, 3);
    expect(check?.errorMm).toBeGreaterThan(9);
    expect(check?.suspects).toEqual([]);
  });

  test('none moved: nothing, and the same from wherever it was read', () => {
    fc.assert(
      fc.property(anyMotion, fc.nat(3), fc.constantFrom(0, 5), (motion, which, off) => {
        const pairs = gone(which, [0, off, 0]);
        const moved = pairs.map((pair) => ({ ...pair, measured: carried(motion, pair.measured) }));
        expect(checkDatum(moved, 3)?.errorMm).toBeCloseTo(checkDatum(pairs, 3)?.errorMm ?? NaN, 6);
        expect(checkDatum(pairs, 3)?.suspects).toEqual(off === 0 ? [] : [which]);
      }),
    );
  });

  test('fewer than three tell nothing', () => {
    expect(checkDatum(gone(0, [5, 0, 0], floor.slice(0, 2)), 3)).toBeUndefined();
  });
});

describe('one of three as read', () => {
  const three = floor.slice(0, 3);
  const asked = { closeMm: 1, offMm: 3 };
  const motionOf = (pairs: readonly PointPair[]): RigidMotion => {
    const fit = fitRigid(pairs);
    if (!fit.ok) throw new Error(fit.why);
    return fit.motion;
  };

  test('lifted out of the plane, which a fit cannot see', () => {
    const pairs = gone(2, [0, 0, 40], three);
    expect(checkDatum(pairs, 3)?.errorMm).toBeLessThan(1);
    expect(oneOffAsRead(pairs, [], motionOf(pairs), asked)).toEqual({ index: 2, offMm: 40 });
  });

  test('a body that is turned about the line through the others, as its other points show', () => {
    const tilt = motionOf(
      gone(2, [0, 0, 40], three).map(({ nominal, measured }) => ({ nominal: measured, measured: nominal })),
    );
    const [zero, others] = [
      three,
      [
        [900, 0, 700],
        [2500, 300, 200],
      ] satisfies Place[],
    ].map((places) => pairsOf(places, (place) => carried(tilt, place)));
    if (zero === undefined || others === undefined) throw new Error('no pairs');
    expect(oneOffAsRead(zero, others, motionOf(zero), asked)).toBeUndefined();
    // The same three, and the others where the sheet has them: the point has moved.
    const still = pairsOf(
      [
        [900, 0, 700],
        [2500, 300, 200],
      ],
      (place) => place,
    );
    expect(oneOffAsRead(zero, still, motionOf(zero), asked)?.index).toBe(2);
  });

  test('at its limit, and of four, nothing', () => {
    expect(
      oneOffAsRead(
        gone(2, [0, 0, 3], three),
        [],
        motionOf(three.map((p) => ({ nominal: p, measured: p }))),
        asked,
      ),
    ).toBeUndefined();
    const four = gone(2, [0, 0, 40]);
    expect(oneOffAsRead(four, [], motionOf(four), asked)).toBeUndefined();
  });
});
