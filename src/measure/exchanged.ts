import { misreadPoints } from './misread-point.ts';
import { largestAxisMm } from './place.ts';
import { deviationOf, fitRigid } from './rigid-fit.ts';
import type { PointPair } from './rigid-fit.ts';
import { noMotion } from './rigid-motion.ts';
import type { RigidMotion } from './rigid-motion.ts';

/** Two points, by index, of which each was read where the other belongs. */
export interface Exchange {
  readonly one: number;
  readonly other: number;
  /** Largest deviation of an axis at the two, mm: as written, and with their readings put back. Both in the datum that then fits. */
  readonly asWrittenMm: number;
  readonly putBackMm: number;
}

/**
 * Pairs of points whose readings stand in each other’s rows. Both lie where the other belongs, far from where they should be, and with
 * the readings put back the datum fits. No blow carries two points to each other’s place, so a deformation is never one.
 * `zero` are the indices of the points that the datum is fitted to.
 */
export function exchangedPoints(pairs: readonly PointPair[], zero: readonly number[]): readonly Exchange[] {
  const couples: (readonly [one: number, other: number])[] = [];
  for (const [one, slip] of misreadPoints(pairs, zero)) {
    if (slip.kind === 'swapped' && one < slip.other) couples.push([one, slip.other]);
  }
  if (couples.length === 0) return [];
  const put = putBack(pairs, couples);
  const motion = motionOf(put, zero);
  return couples.flatMap(([one, other]): readonly Exchange[] => {
    const asWrittenMm = worstMm(pairs, [one, other], motion);
    const putBackMm = worstMm(put, [one, other], motion);
    return putBackMm > asWrittenMm * clearlyShare ? [] : [{ one, other, asWrittenMm, putBackMm }];
  });
}

/** By this share at least the deviation must fall for the rows to have been exchanged. */
const clearlyShare = 1 / 8;

/** The readings with those of each couple put back. */
export function putBack<Pair extends PointPair>(
  pairs: readonly Pair[],
  couples: readonly (readonly [one: number, other: number])[],
): readonly Pair[] {
  const from = new Map(couples.flatMap(([one, other]) => [[one, other] as const, [other, one] as const]));
  return pairs.map((pair, index) => {
    const measured = pairs[from.get(index) ?? index]?.measured ?? pair.measured;
    return { ...pair, measured };
  });
}

function motionOf(pairs: readonly PointPair[], zero: readonly number[]): RigidMotion {
  const fit = fitRigid(zero.map((index) => pairs[index]).filter((pair) => pair !== undefined));
  return fit.ok ? fit.motion : noMotion;
}

function worstMm(pairs: readonly PointPair[], indices: readonly number[], motion: RigidMotion): number {
  const off = indices
    .map((index) => pairs[index])
    .filter((pair) => pair !== undefined)
    .map((pair) => largestAxisMm(deviationOf(motion, pair)));
  return Math.max(...off);
}
