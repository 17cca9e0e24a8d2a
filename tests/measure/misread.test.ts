import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { misreadPoints } from '../../src/measure/misread-point.ts';
import { misreadSet } from '../../src/measure/misread-set.ts';
import type { Place } from '../../src/measure/place.ts';
import type { PointPair } from '../../src/measure/rigid-fit.ts';
import { carried } from '../../src/measure/rigid-motion.ts';
import { anyMotion, floor, noiseOf, pairsOf, repeatable } from './any-body.ts';

/** Zero points on the floor, then a ring, a rail and a tower. */
const body: readonly Place[] = [
  ...floor,
  [1412, -702, 611],
  [1410, 702, 611],
  [-900, -430, 180],
  [-820, 470, 640],
];
const zero = [0, 1, 2, 3];
const noise = noiseOf(repeatable(3), 0.4);
const shaky = ([x, y, z]: Place): Place => [x + noise(), y + noise(), z + noise()];

describe('a whole set', () => {
  test('as it should be, from wherever it was read, and after a hard blow at one end', () => {
    fc.assert(
      fc.property(anyMotion, (motion) => {
        expect(misreadSet(pairsOf(body, (place) => carried(motion, shaky(place))))).toBeUndefined();
      }),
    );
    const hit = pairsOf(body, (place) =>
      place[0] < 0 ? [place[0] + 120, place[1] + 60, place[2] - 40] : shaky(place),
    );
    expect(misreadSet(hit)).toBeUndefined();
  });

  test('a low point that a blow drives through the plane of the zero points', () => {
    const low: readonly Place[] = [...floor, [-700, 430, 40]];
    const driven = pairsOf(low, ([x, y, z]) => [x, y, z === 40 ? -45 : z]);
    expect(misreadSet(driven)).toBeUndefined();
  });

  test('one sign turned, two axes exchanged', () => {
    expect(misreadSet(pairsOf(body, ([x, y, z]) => [x, -y, z]))).toEqual({
      kind: 'mirrored',
      how: { kind: 'sign', axis: 'y' },
    });
    expect(misreadSet(pairsOf(body, ([x, y, z]) => [-x, y, z]))).toEqual({
      kind: 'mirrored',
      how: { kind: 'sign', axis: 'x' },
    });
    expect(misreadSet(pairsOf(body, ([x, y, z]) => [y + 40, x, z]))).toEqual({
      kind: 'mirrored',
      how: { kind: 'exchanged', axes: ['x', 'y'] },
    });
  });

  test('of the other hand, and turned besides: mirrored, and nobody can say at what', () => {
    const motion = {
      rotation: [
        [0.6, -0.8, 0],
        [0.8, 0.6, 0],
        [0, 0, 1],
      ],
      shift: [50, 900, -20],
    } as const;
    expect(misreadSet(pairsOf(body, ([x, y, z]) => carried(motion, [x, -y, z])))).toEqual({
      kind: 'mirrored',
      how: undefined,
    });
  });

  test('two signs, or all axes one on, are a turn and no slip', () => {
    expect(misreadSet(pairsOf(body, ([x, y, z]) => [-x, -y, z]))).toBeUndefined();
    expect(misreadSet(pairsOf(body, ([x, y, z]) => [z, x, y]))).toBeUndefined();
  });

  test('points in one plane show no hand', () => {
    expect(misreadSet(pairsOf([...floor, [300, 200, 0]], ([x, y, z]) => [x, -y, z]))).toBeUndefined();
  });

  test.each([25.4, 1 / 25.4, 10, 0.1, 1000, 0.001])('readings to be taken times %s', (factor) => {
    expect(misreadSet(pairsOf(body, (place) => carriedBy(1 / factor, shaky(place))))).toEqual({
      kind: 'unit',
      factor,
    });
  });

  test('a thousand times the same point is no set at all', () => {
    const same = Array.from({ length: 1000 }, (): PointPair => ({ nominal: [1, 2, 3], measured: [1, 2, 3] }));
    expect(misreadSet(same)).toBeUndefined();
    expect(misreadPoints(same, [0, 1, 2]).size).toBe(0);
  });
});

function carriedBy(factor: number, [x, y, z]: Place): Place {
  return [x * factor, y * factor, z * factor];
}

describe('single points', () => {
  const slip = (which: number, read: (place: Place) => Place): ReadonlyMap<number, unknown> =>
    misreadPoints(
      body.map((nominal, index) => ({ nominal, measured: index === which ? read(nominal) : shaky(nominal) })),
      zero,
    );

  test.each([0, 4, 6])('point %i: sign, axes, unit, digit', (which) => {
    const only = (found: ReadonlyMap<number, unknown>): unknown => {
      expect([...found.keys()]).toEqual([which]);
      return found.get(which);
    };
    expect(only(slip(which, ([x, y, z]) => [x, -y, z]))).toEqual({ kind: 'sign', axis: 'y' });
    expect(only(slip(which, ([x, y, z]) => [y, x, z]))).toEqual({ kind: 'exchanged', axes: ['x', 'y'] });
    expect(only(slip(which, (place) => carriedBy(1 / 25.4, place)))).toEqual({ kind: 'unit', factor: 25.4 });
    // A point with y alone has no other digit to lose.
    if (which !== 0)
      expect(only(slip(which, ([x, y, z]) => [x, y / 10, z]))).toEqual({
        kind: 'digit',
        axis: 'y',
        factor: 10,
      });
  });

  test('two taken for each other, of the body and of the zero points', () => {
    const exchange = (one: number, other: number): ReadonlyMap<number, unknown> =>
      misreadPoints(
        body.map((nominal, index) => ({
          nominal,
          measured: (index === one ? body[other] : index === other ? body[one] : nominal) ?? nominal,
        })),
        zero,
      );
    expect([...exchange(4, 7)]).toEqual(
      expect.arrayContaining([
        [4, { kind: 'swapped', other: 7 }],
        [7, { kind: 'swapped', other: 4 }],
      ]),
    );
    expect([...exchange(0, 1).keys()].sort()).toEqual([0, 1]);
  });

  test('a blow is no slip: near its place, and off by what a blow does', () => {
    for (const way of [
      [0, 14, 0],
      [60, -25, 8],
      [0, 0, 130],
    ] satisfies Place[]) {
      expect(slip(6, ([x, y, z]) => [x + way[0], y + way[1], z + way[2]]).size).toBe(0);
    }
  });
});

describe('a point beside the origin of the data sheet', () => {
  test('that was read far off is no slip of the unit: a thousandth of anything lies there', () => {
    // Nominal of the first is the origin.
    const pairs = pairsOf(body, (place) => place);
    const [first, ...rest] = pairs;
    if (first === undefined) throw new Error('a body has points');
    const read: readonly PointPair[] = [{ ...first, nominal: [0, 0, 0], measured: [900, 500, 4] }, ...rest];
    expect(misreadPoints(read, [1, 2, 3]).get(0)?.kind).not.toBe('unit');
  });

  test('and one that belongs a metre away is', () => {
    const pairs = pairsOf(body, (place) => place);
    const read = pairs.map((pair, index): PointPair =>
      index === 4 ? { ...pair, measured: [1412 / 25.4, -702 / 25.4, 611 / 25.4] } : pair,
    );
    expect(misreadPoints(read, zero).get(4)).toEqual({ kind: 'unit', factor: 25.4 });
  });
});
