import { peakOf, secondsAboveIn } from './history-measures.ts';
import type { TemperatureHistory } from '../point-history.ts';
import { bakedHv, temperedHardness } from './tempering.ts';
import type { TemperedHardness } from './tempering.ts';

export type TemperedRange =
  | {
      readonly state: 'tempered';
      readonly leastHv: number;
      /** On the curve itself. */
      readonly likelyHv: number;
      readonly mostHv: number;
      readonly parameterHours: number;
    }
  | Exclude<TemperedHardness, { readonly state: 'tempered' }>;

/** Paint baking, 170 °C for 20 min: what the finished part has been through already. */
export const bakedParameter = 8.652;
/** 200 °C for 20 min, rounded up. */
export const harmlessParameter = 9.238;
/** Hotter or longer than anything measured (700 °C for a day). */
const mostParameter = 20.91;

/**
 * Hardness of press-hardened or martensitic sheet after a history of heat, as a range about the curve of
 * `temperedHardness`. On the 84 measured points that the curve was fitted to (0.25 and 0.31 % C, start hardness 490 HV)
 *
 * - steel came out up to 30 HV softer where it was tempered in earnest, and 5 HV between paint baking and 200 °C for 20
 *   min. `leastHv` lies that much below the curve, straight lines between. (The 25 and, for short holds, 13 HV quoted
 *   elsewhere take 480 HV for the start of the 0.31 % C steel, which was measured at 488 before tempering.)
 * - steel came out up to 48 HV harder. Below 10 s nothing was measured; spot welds of 1500 MPa steel stayed up to 71 HV
 *   above the curve, so `mostHv` then lies 15 % of the start hardness above it.
 *
 * Range of `temperedHardness`; and no longer or hotter than a parameter of 20.91.
 */
export function temperedRange(history: TemperatureHistory, startHv?: number): TemperedRange {
  const curve = temperedHardness(history, startHv);
  if (curve.state !== 'tempered') return curve;
  const { hv: likelyHv, parameterHours } = curve;
  if (parameterHours > mostParameter) {
    return {
      state: 'not computed',
      reason: `it is heated longer than anything measured, to ${Math.round(peakOf(history))} °C`,
    };
  }
  const start = startHv ?? bakedHv;
  const harder =
    secondsAboveIn({ seconds: history.seconds, celsius: history.celsius }, 250) < 10 ? 0.15 * start : 48;
  return {
    state: 'tempered',
    leastHv: likelyHv - softerBy(parameterHours),
    likelyHv,
    mostHv: Math.min(start, likelyHv + harder),
    parameterHours,
  };
}

function softerBy(parameter: number): number {
  if (parameter <= bakedParameter) return 0;
  if (parameter <= harmlessParameter) {
    return (5 * (parameter - bakedParameter)) / (harmlessParameter - bakedParameter);
  }
  return 5 + 25 * Math.min(1, (parameter - harmlessParameter) / (10.1 - harmlessParameter));
}
