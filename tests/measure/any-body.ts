import fc from 'fast-check';
import type { Place } from '../../src/measure/place.ts';
import type { PointPair } from '../../src/measure/rigid-fit.ts';
import type { RigidMotion } from '../../src/measure/rigid-motion.ts';

// Places, motions and noise at random, of the size of a vehicle.

const coordinate = fc.double({ min: -3000, max: 3000, noNaN: true });

export const anyPlace: fc.Arbitrary<Place> = fc.tuple(coordinate, coordinate, coordinate);

/** A turn by the quaternion of Shoemake (uniform on all turns), and a shift of some metres. */
export const anyMotion: fc.Arbitrary<RigidMotion> = fc
  .tuple(
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
    anyPlace,
  )
  .map(([u, v, w, shift]) => {
    const [a, b] = [Math.sqrt(1 - u), Math.sqrt(u)];
    const [alpha, beta] = [2 * Math.PI * v, 2 * Math.PI * w];
    return {
      rotation: quaternionRotation(
        b * Math.cos(beta),
        a * Math.sin(alpha),
        a * Math.cos(alpha),
        b * Math.sin(beta),
      ),
      shift,
    };
  });

export function quaternionRotation(w: number, x: number, y: number, z: number): RigidMotion['rotation'] {
  return [
    [1 - 2 * (y * y + z * z), 2 * (x * y - z * w), 2 * (x * z + y * w)],
    [2 * (x * y + z * w), 1 - 2 * (x * x + z * z), 2 * (y * z - x * w)],
    [2 * (x * z - y * w), 2 * (y * z + x * w), 1 - 2 * (x * x + y * y)],
  ];
}

/** Four corners of a floor and more, so that every set spans space. */
export const floor: readonly Place[] = [
  [0, -560, 0],
  [1800, -560, 0],
  [1800, 560, 0],
  [0, 560, 0],
];

export const anyBody: fc.Arbitrary<readonly Place[]> = fc
  .array(anyPlace, { minLength: 1, maxLength: 20 })
  .map((more) => [...floor, ...more]);

export function pairsOf(nominal: readonly Place[], read: (place: Place) => Place): readonly PointPair[] {
  return nominal.map((place) => ({ nominal: place, measured: read(place) }));
}

/** The same numbers in every run (mulberry32), uniform from 0 to 1. */
export function repeatable(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Normal noise of the given standard deviation, by Box and Muller. */
export function noiseOf(random: () => number, sigma: number): () => number {
  return () => sigma * Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
