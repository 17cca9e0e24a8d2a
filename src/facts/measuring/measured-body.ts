import type { PlanMeasurements } from '../../generated/plan-types.ts';
import { sidePairs } from '../../measure/left-right.ts';
import { bodyTolerance, planTolerance } from './body-tolerance.ts';
import type { BodyTolerance, PlanTolerance } from './body-tolerance.ts';
import { datumState } from './datum-state.ts';
import type { DatumState, Occasion } from './datum-state.ts';
import { measuredPoints } from './measured-points.ts';
import type { MeasuredPoint } from './measured-points.ts';
import { quantityOf } from '../quantity-of.ts';
import type { Survey } from '../survey.ts';

/** The measuring of a plan with everything reckoned once: what its fact sheets and the report are written from. */
export interface MeasuredBody {
  readonly points: readonly MeasuredPoint[];
  readonly tolerance: PlanTolerance;
  readonly toleranceOf: (point: MeasuredPoint) => BodyTolerance;
  /** Undefined where nothing was read then. */
  readonly before: DatumState | undefined;
  readonly after: DatumState | undefined;
  /** What zero points are held to among themselves, mm: the tightest of their tolerances, or what mere reading lets them disagree by. */
  readonly datumMm: number | undefined;
  /** At two standard deviations, mm; undefined when it is not stated, or as nothing, which no instrument has. */
  readonly uncertaintyMm: number | undefined;
  /** Of a point, the same one on the other side. */
  readonly otherSide: ReadonlyMap<MeasuredPoint, MeasuredPoint>;
}

export function measuredBody(survey: Survey, measurements: PlanMeasurements): MeasuredBody {
  const points = measuredPoints(measurements);
  const tolerance = planTolerance(survey, measurements);
  const toleranceOf = (point: MeasuredPoint): BodyTolerance =>
    bodyTolerance(tolerance, 'point', point.written.tolerance, point.at);
  const zero = points.filter(({ isZero }) => isZero).map((point) => toleranceOf(point).provenMm);
  const proven = zero.filter((mm) => mm !== undefined);
  const uncertaintyMm = uncertaintyOf(measurements);
  const datumMm =
    proven.length === 0 ? undefined : Math.max(Math.min(...proven), scatterOfFour * (uncertaintyMm ?? 0));
  const named = new Set(measurements.zero_points ?? []).size;
  const state = (occasion: Occasion): DatumState | undefined =>
    datumState(points, named, occasion, datumMm ?? 0);
  return {
    points,
    tolerance,
    toleranceOf,
    before: state('before'),
    after: state('after'),
    datumMm,
    uncertaintyMm,
    otherSide: otherSides(points),
  };
}

/**
 * Of four corners, what three say of the fourth scatters by twice one reading; three standard deviations of that are three times the
 * uncertainty, which is two of one reading. Below it they disagree by being read.
 */
const scatterOfFour = 3;

function uncertaintyOf({ uncertainty }: PlanMeasurements): number | undefined {
  const mm = quantityOf(uncertainty, 'length');
  return mm === 0 ? undefined : mm;
}

function otherSides(points: readonly MeasuredPoint[]): ReadonlyMap<MeasuredPoint, MeasuredPoint> {
  const pairs = sidePairs(
    points.map(({ written, nominal }) => ({
      name: written.name,
      nominal,
      counterpart: written.other_side,
    })),
  );
  return new Map(
    pairs.flatMap(({ one, other }) => {
      const [left, right] = [points[one], points[other]];
      if (left === undefined || right === undefined) return [];
      const both: [MeasuredPoint, MeasuredPoint][] = [
        [left, right],
        [right, left],
      ];
      return both;
    }),
  );
}
