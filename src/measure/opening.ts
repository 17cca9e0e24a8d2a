import { cross, dot, lengthMm, middleOf, wayBetween } from './place.ts';
import { deviationOf, fitRigid, stretchMm } from './rigid-fit.ts';
import type { PointPair } from './rigid-fit.ts';
import { angleDegrees, carried } from './rigid-motion.ts';
import type { RigidMotion } from './rigid-motion.ts';

/** Four corners, in their order round the opening. */
export type Corners = readonly [PointPair, PointPair, PointPair, PointPair];

/** What became of an opening: its shape apart from where it stands. */
export interface OpeningShape {
  /** First to third and second to fourth corner, read minus nominal, mm. */
  readonly diagonalsMm: readonly [number, number];
  /** Largest change of a distance between two corners, or of the gap between its diagonals (a twist, which hardly changes a distance), mm. */
  readonly deformationMm: number;
  /** How far the whole is turned in the axes of the datum, degrees. */
  readonly turnedDegrees: number;
  /** How far the turn and shift of the whole carry the corner that they carry farthest, mm. */
  readonly carriedMm: number;
}

/**
 * Parts the deformation of an opening from the motion of the whole: distances between corners, which no motion changes, against
 * the best turn and shift of the corners onto their nominal places. `datum` carries readings into the axes of the data sheet.
 * Undefined when the corners lie on one line.
 */
export function openingShape(corners: Corners, datum: RigidMotion): OpeningShape | undefined {
  const inDatum = corners.map(({ nominal, measured }): PointPair => ({
    nominal,
    measured: carried(datum, measured),
  }));
  // The other way round than a datum: where did the nominal opening go?
  const fit = fitRigid(inDatum.map(({ nominal, measured }) => ({ nominal: measured, measured: nominal })));
  if (!fit.ok) return undefined;
  const ways = inDatum.map(({ nominal }) =>
    lengthMm(deviationOf(fit.motion, { nominal, measured: nominal })),
  );
  const [a, b, c, d] = corners;
  return {
    diagonalsMm: [stretchMm(a, c), stretchMm(b, d)],
    deformationMm: Math.max(
      ...[
        stretchMm(a, b),
        stretchMm(b, c),
        stretchMm(c, d),
        stretchMm(d, a),
        stretchMm(a, c),
        stretchMm(b, d),
      ].map(Math.abs),
      Math.abs(gapMm(corners, 'measured') - gapMm(corners, 'nominal')),
    ),
    turnedDegrees: angleDegrees(fit.motion.rotation),
    carriedMm: Math.max(...ways),
  };
}

/**
 * How far the two diagonals pass each other, mm: nothing in a plane, and half of what one corner stands over the plane of the others.
 * Measured between their middles, along what is at right angles to both.
 */
function gapMm([a, b, c, d]: Corners, which: 'nominal' | 'measured'): number {
  const across = cross(wayBetween(a[which], c[which]), wayBetween(b[which], d[which]));
  const length = lengthMm(across);
  const gap = wayBetween(middleOf([b[which], d[which]]), middleOf([a[which], c[which]]));
  return length === 0 ? 0 : dot(across, gap) / length;
}
