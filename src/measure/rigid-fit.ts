import { Matrix, SingularValueDecomposition } from 'ml-matrix';
import { distanceMm, dot, isPlace, lengthMm, middleOf, wayBetween } from './place.ts';
import type { Place } from './place.ts';
import { carried, turned } from './rigid-motion.ts';
import type { RigidMotion, Rotation } from './rigid-motion.ts';

/** One point: where the data sheet has it, and where it was read. */
export interface PointPair {
  readonly nominal: Place;
  readonly measured: Place;
}

export interface FittedMotion {
  readonly ok: true;
  /** Carries readings into the axes of the data sheet. */
  readonly motion: RigidMotion;
  /** What is left at each point, read minus nominal, in the order given. */
  readonly residuals: readonly Place[];
  /** Root of the mean square of their lengths, mm. */
  readonly rmsMm: number;
  /** Three readings a point, less the three turns and three shifts that the fit takes up. */
  readonly degreesOfFreedom: number;
  /** Scatter of one coordinate as the residuals show it, mm: root of the sum of squares over the degrees of freedom. */
  readonly scatterMm: number;
}

export type RigidFit =
  FittedMotion | { readonly ok: false; readonly why: 'fewer than three' | 'on one line' | 'no place' };

/**
 * The turn and shift that lay the readings on the nominal places with the least sum of squared distances, by singular value
 * decomposition (Arun, Huang and Blostein, IEEE PAMI 9 (1987) 698; the sign of the determinant after Umeyama, IEEE PAMI 13 (1991)
 * 376; from memory). `mirrored` asks for the best motion that exchanges left and right instead: no body moves so, and a set
 * that it fits better was read in axes of the other hand.
 */
export function fitRigid(pairs: readonly PointPair[], hand: 'true' | 'mirrored' = 'true'): RigidFit {
  if (pairs.length < 3) return { ok: false, why: 'fewer than three' };
  if (!pairs.every(({ nominal, measured }) => isPlace(nominal) && isPlace(measured)))
    return { ok: false, why: 'no place' };
  const nominalMiddle = middleOf(pairs.map(({ nominal }) => nominal));
  const measuredMiddle = middleOf(pairs.map(({ measured }) => measured));
  const rotation = bestRotation(
    pairs.map(({ nominal }) => wayBetween(nominalMiddle, nominal)),
    pairs.map(({ measured }) => wayBetween(measuredMiddle, measured)),
    hand === 'true' ? 1 : -1,
  );
  if (rotation === undefined) return { ok: false, why: 'on one line' };
  const motion: RigidMotion = {
    rotation,
    shift: wayBetween(turned(rotation, measuredMiddle), nominalMiddle),
  };
  const residuals = pairs.map(({ nominal, measured }) => wayBetween(nominal, carried(motion, measured)));
  const squares = residuals.reduce((sum, residual) => sum + dot(residual, residual), 0);
  const degreesOfFreedom = 3 * pairs.length - 6;
  return {
    ok: true,
    motion,
    residuals,
    rmsMm: Math.sqrt(squares / pairs.length),
    degreesOfFreedom,
    scatterMm: Math.sqrt(squares / degreesOfFreedom),
  };
}

/**
 * Below this ratio of the second singular value to the first the points lie on one line: the values go as squares of lengths, so
 * it is a hundredth of a millimetre of width on a metre.
 */
const leastRatio = 1e-10;

/** Undefined where the points leave a turn open, and where the decomposition gives none: no deviation may come from it. */
function bestRotation(
  nominal: readonly Place[],
  measured: readonly Place[],
  hand: 1 | -1,
): Rotation | undefined {
  if (spreadMm(nominal) < leastSpreadMm || spreadMm(measured) < leastSpreadMm) return undefined;
  const covariance = Matrix.zeros(3, 3);
  for (const [index, from] of measured.entries()) {
    const to = nominal[index] ?? from;
    for (const row of axes) {
      for (const column of axes) {
        covariance.set(row, column, covariance.get(row, column) + to[row] * from[column]);
      }
    }
  }
  const { leftSingularVectors, rightSingularVectors, diagonal } = new SingularValueDecomposition(
    withoutSpecks(covariance),
  );
  const [first = 0, second = 0] = diagonal;
  if (!(second > first * leastRatio)) return undefined;
  const left = rotationOf(leftSingularVectors);
  const right = rotationOf(rightSingularVectors);
  const last = determinant(left) * determinant(right) < 0 ? -hand : hand;
  const row = ([a, b, c]: Place): Place => turned(right, [a, b, c * last]);
  const rotation: Rotation = [row(left[0]), row(left[1]), row(left[2])];
  return isRotation(rotation) ? rotation : undefined;
}

/**
 * Entries that are nothing beside the largest, made nothing. Below the rounding of the sums they say nothing of the points, and the
 * decomposition divides by them: one of 1e-320 gives columns that are no unit vectors.
 */
function withoutSpecks(covariance: Matrix): Matrix {
  const largest = Math.max(...covariance.to1DArray().map(Math.abs));
  for (const row of axes) {
    for (const column of axes) {
      if (Math.abs(covariance.get(row, column)) < largest * speck) covariance.set(row, column, 0);
    }
  }
  return covariance;
}

/** The rounding of a double: no sum of products is known more finely. */
const speck = Number.EPSILON;

const axes = [0, 1, 2] as const;

/** All points nearer together than a thousandth of a millimetre are one point. */
const leastSpreadMm = 1e-3;

function spreadMm(ways: readonly Place[]): number {
  return Math.max(...ways.map(lengthMm));
}

function rotationOf(matrix: Matrix): Rotation {
  const row = (at: 0 | 1 | 2): Place => [matrix.get(at, 0), matrix.get(at, 1), matrix.get(at, 2)];
  return [row(0), row(1), row(2)];
}

/** Whether the rows are unit vectors and stand square on each other, to less than a micrometre on ten metres. */
function isRotation(rows: Rotation): boolean {
  return axes.every((one) =>
    axes.every((other) => Math.abs(dot(rows[one], rows[other]) - (one === other ? 1 : 0)) < 1e-7),
  );
}

function determinant([[a, b, c], [d, e, f], [g, h, i]]: Rotation): number {
  return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
}

/** The deviation of a reading once it is carried into the axes of the data sheet: read minus nominal, mm. */
export function deviationOf(motion: RigidMotion, { nominal, measured }: PointPair): Place {
  return wayBetween(nominal, carried(motion, measured));
}

/** Whether two points lie as far apart as the data sheet has them; what no motion can change, read minus nominal, mm. */
export function stretchMm(one: PointPair, other: PointPair): number {
  return distanceMm(one.measured, other.measured) - distanceMm(one.nominal, other.nominal);
}
