import type { FitShown, MeasuringShown, PointShown } from '../../facts/measuring/measuring-shown.ts';

type Way = NonNullable<PointShown['after']>;

/** The measuring as schemas/report.schema.json has it. */
export function measuringAsJson({ fits, points }: MeasuringShown): object {
  return { fits: fits.map(fitAsJson), points: points.map(pointAsJson) };
}

function fitAsJson(fit: FitShown): object {
  return {
    occasion: fit.occasion,
    zero_points: fit.zeroPoints,
    ...(fit.residualMm === undefined ? {} : { residual: short(fit.residualMm) }),
    ...(fit.scatterMm === undefined ? {} : { scatter: short(fit.scatterMm) }),
    ...(fit.degreesOfFreedom === undefined ? {} : { degrees_of_freedom: fit.degreesOfFreedom }),
    ...(fit.turnedDegrees === undefined ? {} : { turned: short(fit.turnedDegrees) }),
  };
}

function pointAsJson({ name, part, zero, toleranceMm, before, after, decision }: PointShown): object {
  return {
    name,
    ...(part === undefined ? {} : { part }),
    zero,
    ...(toleranceMm === undefined ? {} : { tolerance: toleranceMm }),
    ...(before === undefined ? {} : { before: wayAsJson(before) }),
    ...(after === undefined ? {} : { after: wayAsJson(after) }),
    ...(decision === undefined ? {} : { decision }),
  };
}

function wayAsJson(way: Way): object {
  const [x, y, z] = [short(way[0]), short(way[1]), short(way[2])];
  // Of the numbers beside it, so that a report that is read back and written again says the same.
  return { x, y, z, length: short(Math.hypot(x, y, z)) };
}

/** A tenth of a micrometre: beyond it stand only the last digits of the reckoning, which machines may round otherwise. */
function short(value: number): number {
  return Number(value.toFixed(4)) + 0;
}
