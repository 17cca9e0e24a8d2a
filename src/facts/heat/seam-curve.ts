import { fieldPeakCelsius } from '../../heat/weld/rosenthal.ts';
import type { HeatCurve } from '../../heat/sheet/heat-curve.ts';
import { carbonSteel } from '../../heat/metal/carbon-steel.ts';
import { weldMetals } from '../../heat/weld/weld-metal.ts';
import { seamHeat } from './seam-heat.ts';
import type { SeamSource } from './seam-heat.ts';
import type { OperationSurvey } from '../survey.ts';

/** The peak beside the hottest seam of an operation, from the edge of the fused metal to `reachMm`. */
export function seamCurve(one: OperationSurvey, source: SeamSource, reachMm: number, gaps = 80): HeatCurve {
  const distancesMm: number[] = [];
  const peakCelsius: number[] = [];
  for (let n = 0; n <= gaps; n += 1) {
    // Denser towards the seam, where the curve is steep.
    const distanceMm = reachMm * (n / gaps) ** 2;
    const heat = seamHeat(one, source, distanceMm);
    if (!heat.ok) continue;
    distancesMm.push(distanceMm);
    peakCelsius.push(heat.peakCelsius);
  }
  return { distancesMm, peakCelsius, endOfHoldCelsius: [] };
}

/** One pass in steel sheet whose travel speed is known. */
export interface SteelPass {
  readonly joulePerMm: number;
  readonly thicknessMm: number;
  readonly speedMmPerSecond: number;
}

/**
 * The peak by the moving source of Rosenthal, beside that of Adams' fast one: a cross-check. `distanceMm` counts from
 * the edge of the fused metal, which lies where the moving source just melts; undefined where the formula says nothing.
 */
export function movingSourcePeak(pass: SteelPass, distanceMm: number): number | undefined {
  const { meltCelsius, joulePerMm3K } = weldMetals.steel;
  const source = {
    watts: pass.joulePerMm * pass.speedMmPerSecond,
    speedMmPerSecond: pass.speedMmPerSecond,
    // Hot steel: the worse it conducts, the less it spreads ahead of the source.
    conductivity: carbonSteel.conductivity(800),
    joulePerMm3K,
    thicknessMm: pass.thicknessMm,
    meltCelsius,
  };
  // Where the sheet is molten there is no answer; the first place that has one is the edge of the pool.
  let molten = 0.01;
  let solid = 50;
  if (!fieldPeakCelsius(source, solid).ok) return undefined;
  if (fieldPeakCelsius(source, molten).ok) solid = molten;
  while (solid - molten > 0.01) {
    const middle = (solid + molten) / 2;
    if (fieldPeakCelsius(source, middle).ok) solid = middle;
    else molten = middle;
  }
  const peak = fieldPeakCelsius(source, solid + distanceMm);
  return peak.ok ? peak.peakCelsius : undefined;
}
