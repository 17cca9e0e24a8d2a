import { largestResidualMm } from '../../measure/datum.ts';
import { heldAgainst } from '../../measure/decision.ts';
import type { Decision, Margins } from '../../measure/decision.ts';
import { largestAxisMm } from '../../measure/place.ts';
import type { Place } from '../../measure/place.ts';
import { angleDegrees } from '../../measure/rigid-motion.ts';
import type { DatumState, Occasion } from './datum-state.ts';
import type { MeasuredBody } from './measured-body.ts';

/** What a report shows of the measuring. All lengths in mm. */
export interface MeasuringShown {
  readonly fits: readonly FitShown[];
  /** Those with a deviation; by the last measuring, the worst against its tolerance first. */
  readonly points: readonly PointShown[];
}

export interface FitShown {
  readonly occasion: Occasion;
  /** The zero points of the fit; none when readings are taken as they are written. */
  readonly zeroPoints: readonly string[];
  /** Largest deviation of an axis that is left at one of them. */
  readonly residualMm: number | undefined;
  /** Scatter of one coordinate by the residuals and their degrees of freedom. */
  readonly scatterMm: number | undefined;
  readonly degreesOfFreedom: number | undefined;
  /** How far the readings were turned to fit. */
  readonly turnedDegrees: number | undefined;
}

export interface PointShown {
  readonly name: string;
  readonly part: string | undefined;
  readonly zero: boolean;
  /** By the data sheet, where it can be read. */
  readonly nominal?: Place;
  readonly toleranceMm: number | undefined;
  readonly before: Place | undefined;
  readonly after: Place | undefined;
  /** What the reading after the repair proves; undefined without one or without an uncertainty. */
  readonly decision: Decision | undefined;
  /**
   * Whether the last reading is off: not proven to keep the tolerance, or beyond it where no uncertainty is stated. Left out where
   * there is no tolerance.
   */
  readonly off?: boolean;
}

export function measuringShown(body: MeasuredBody): MeasuringShown | undefined {
  const { before, after, uncertaintyMm } = body;
  const last = after ?? before;
  if (last === undefined) return undefined;
  const points = body.points.flatMap((point): readonly (PointShown & { readonly worse: number })[] => {
    const [then, now] = [before?.deviation(point), after?.deviation(point)];
    const lately = last.deviation(point);
    if (then === undefined && now === undefined) return [];
    const toleranceMm = body.toleranceOf(point).mm;
    const decision =
      now === undefined || toleranceMm === undefined
        ? undefined
        : heldAgainst(largestAxisMm(now), toleranceMm, uncertaintyMm).decision;
    const latest =
      lately === undefined || toleranceMm === undefined
        ? undefined
        : heldAgainst(largestAxisMm(lately), toleranceMm, uncertaintyMm);
    return [
      {
        name: point.called,
        part: point.written.on,
        zero: point.isZero,
        ...(point.nominal === undefined ? {} : { nominal: point.nominal }),
        toleranceMm,
        before: then,
        after: now,
        decision,
        ...(latest === undefined ? {} : { off: isOff(latest) }),
        worse: lately === undefined ? -Infinity : largestAxisMm(lately) - (toleranceMm ?? 0),
      },
    ];
  });
  if (points.length === 0) return undefined;
  points.sort((a, b) => (a.worse === b.worse ? 0 : b.worse - a.worse));
  return {
    fits: [before, after].filter((state) => state !== undefined).map(fitShown),
    points: points.map(({ worse: _worse, ...shown }) => shown),
  };
}

function isOff({ decision, overMm }: Margins): boolean {
  return decision === undefined ? overMm > 0 : decision !== 'conforms';
}

function fitShown({ occasion, fit, zero }: DatumState): FitShown {
  return {
    occasion,
    zeroPoints: fit === undefined ? [] : zero.map(({ called }) => called),
    residualMm: fit === undefined ? undefined : largestResidualMm(fit),
    scatterMm: fit?.scatterMm,
    degreesOfFreedom: fit?.degreesOfFreedom,
    turnedDegrees: fit === undefined ? undefined : angleDegrees(fit.motion.rotation),
  };
}
