import type * as Json from '../../../schemas/report.d.ts';
import type { FitShown, MeasuringShown, PointShown } from '../../facts/measuring/measuring-shown.ts';

/** The measuring of one plan of a JSON report, as far as the report tells it. */
export function measuringFromJson({ fits, points }: Json.Measurements): MeasuringShown {
  return { fits: fits.map(fitFromJson), points: points.map(pointFromJson) };
}

function fitFromJson(fit: Json.Fit): FitShown {
  return {
    occasion: fit.occasion,
    zeroPoints: fit.zero_points,
    residualMm: fit.residual,
    scatterMm: fit.scatter,
    degreesOfFreedom: fit.degrees_of_freedom,
    turnedDegrees: fit.turned,
  };
}

function pointFromJson({
  name,
  part,
  zero,
  tolerance,
  before,
  after,
  decision,
}: Json.MeasuredPoint): PointShown {
  return {
    ...{ name, part, zero, decision },
    toleranceMm: tolerance,
    before: before === undefined ? undefined : [before.x, before.y, before.z],
    after: after === undefined ? undefined : [after.x, after.y, after.z],
  };
}
