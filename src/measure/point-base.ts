import { Matrix, SingularValueDecomposition } from 'ml-matrix';
import { cross, distanceMm, dot, lengthMm, middleOf, wayBetween } from './place.ts';
import type { Place } from './place.ts';

/** How wide some points stand, mm. */
export interface PointBase {
  /** Longest distance between two of them. */
  readonly spanMm: number;
  /** Longest distance of one from the line through those two. */
  readonly widthMm: number;
}

/** The base that three or more points give; nothing of fewer, since two always lie on a line. */
export function pointBase(places: readonly Place[]): PointBase | undefined {
  if (places.length < 3) return undefined;
  let spanMm = 0;
  let ends: readonly [Place, Place] | undefined;
  for (const [index, one] of places.entries()) {
    for (const other of places.slice(index + 1)) {
      const distance = distanceMm(one, other);
      if (distance > spanMm) {
        spanMm = distance;
        ends = [one, other];
      }
    }
  }
  if (ends === undefined) return { spanMm: 0, widthMm: 0 };
  const [from, to] = ends;
  const line = wayBetween(from, to);
  const widthMm = Math.max(...places.map((place) => lengthMm(cross(line, wayBetween(from, place))) / spanMm));
  return { spanMm, widthMm };
}

/**
 * How far the scatter of the points that a datum is fitted to is thrown at a place: the standard deviation that it gives one
 * coordinate there, over that of one coordinate of one point. 0.5 in the middle of four; it grows with the distance from
 * them over their own reach. First order: of n points q about their middle the shift scatters by 1/√n, the turn by
 * the inverse of Σ(|q|²·1 − q·qᵀ). Along the principal axis with the largest value; undefined on one line.
 */
export function leverAt(base: readonly Place[]): ((place: Place) => number) | undefined {
  if (base.length < 3) return undefined;
  const middle = middleOf(base);
  const centred = base.map((place) => wayBetween(middle, place));
  const { diagonal, rightSingularVectors } = new SingularValueDecomposition(
    new Matrix(centred.map((way) => [...way])),
  );
  const [a = 0, b = 0, c = 0] = diagonal.map((value) => value * value);
  const turns: Place = [b + c, a + c, a + b];
  if (!(turns[0] > turns[2] * leastRatio)) return undefined;
  const axis = (column: 0 | 1 | 2): Place => [
    rightSingularVectors.get(0, column),
    rightSingularVectors.get(1, column),
    rightSingularVectors.get(2, column),
  ];
  const principal: readonly [Place, Place, Place] = [axis(0), axis(1), axis(2)];
  return (place) => {
    const way = wayBetween(middle, place);
    const [x, y, z] = principal.map((one) => dot(one, way) ** 2);
    if (x === undefined || y === undefined || z === undefined) return Infinity;
    const worst = Math.max(
      z / turns[1] + y / turns[2],
      z / turns[0] + x / turns[2],
      y / turns[0] + x / turns[1],
    );
    return Math.sqrt(1 / base.length + worst);
  };
}

/** As in the fit: below it the points have no width to speak of. */
const leastRatio = 1e-10;
