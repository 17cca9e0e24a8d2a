import { largestAxisMm } from './place.ts';
import { deviationOf, fitRigid, stretchMm } from './rigid-fit.ts';
import type { FittedMotion, PointPair } from './rigid-fit.ts';

/** What a datum says against itself: how far its points disagree, and which of them may have moved. */
export interface DatumCheck {
  /**
   * Of four and more, the largest distance (of one axis, mm) between a point and where the fit through all others puts it. Of
   * three, where leaving one out leaves no fit, the largest difference of a distance between two of them.
   */
  readonly errorMm: number;
  readonly by: 'leave one out' | 'distance';
  /** Which may be the one that moved, as indices: without it the others agree. Empty when no single one explains it. */
  readonly suspects: readonly number[];
}

/**
 * Leaves each point of a fitted datum out in turn. A point that has moved pulls the fit along and hides in the residuals of all;
 * against the fit through the others it shows by its whole way. Points in one plane tell of a way out of it that one has gone, and
 * not which. `toleranceMm` says from when on points count as agreeing.
 */
export function checkDatum(pairs: readonly PointPair[], toleranceMm: number): DatumCheck | undefined {
  if (pairs.length < 3) return undefined;
  const without = pairs.length === 3 ? [] : leaveOneOut(pairs);
  return without.length < pairs.length ? byDistances(pairs, toleranceMm) : byFits(without, toleranceMm);
}

interface LeftOut {
  readonly index: number;
  readonly errorMm: number;
  /** Largest residual, of one axis, of those that stay, mm. */
  readonly othersMm: number;
}

function leaveOneOut(pairs: readonly PointPair[]): readonly LeftOut[] {
  return pairs.flatMap((pair, index): readonly LeftOut[] => {
    const fit = fitRigid(pairs.filter((_one, other) => other !== index));
    if (!fit.ok) return [];
    const errorMm = largestAxisMm(deviationOf(fit.motion, pair));
    return [{ index, errorMm, othersMm: largestResidualMm(fit) }];
  });
}

function byFits(without: readonly LeftOut[], toleranceMm: number): DatumCheck {
  const best = Math.min(...without.map(({ othersMm }) => othersMm));
  const agreesMm = Math.min(toleranceMm, best + toleranceMm * clearlyShare);
  return {
    errorMm: Math.max(...without.map(({ errorMm }) => errorMm)),
    by: 'leave one out',
    suspects: without
      .filter(({ errorMm, othersMm }) => errorMm > toleranceMm && othersMm <= agreesMm)
      .map(({ index }) => index),
  };
}

/** By this share of the tolerance the others must agree worse without one point than without another for the other to be it. */
const clearlyShare = 1 / 3;

function byDistances(pairs: readonly PointPair[], toleranceMm: number): DatumCheck {
  const stretches = pairs.flatMap((one, index) =>
    pairs.slice(index + 1).map((other, after) => ({
      ends: [index, index + 1 + after],
      mm: Math.abs(stretchMm(one, other)),
    })),
  );
  const off = stretches.filter(({ mm }) => mm > toleranceMm);
  const suspects = pairs
    .map((_pair, index) => index)
    .filter((index) => off.every(({ ends }) => ends.includes(index)));
  return {
    errorMm: Math.max(...stretches.map(({ mm }) => mm)),
    by: 'distance',
    suspects: off.length === 0 ? [] : suspects,
  };
}

export function largestResidualMm({ residuals }: FittedMotion): number {
  return Math.max(...residuals.map(largestAxisMm));
}
