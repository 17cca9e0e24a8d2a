import { highestTemperature, longestHold } from '../../heat/sheet/stay-clear.ts';
import type { HeldHeat, KeptLimit, Sought } from '../../heat/sheet/stay-clear.ts';
import type { PointHistory, TemperatureHistory } from '../../heat/point-history.ts';
import type { DerivationContext, HeatLimit } from '../context.ts';
import type { Neighbour } from './exposed-neighbour.ts';
import { strengthLeftOf } from '../part/strength-kind.ts';
import { exposureVerdict } from './exposure-verdict.ts';
import type { ExposureVerdict } from './exposure-verdict.ts';
import type { KeepOff } from './heat-limits.ts';

/** What a neighbour at one distance goes through; what cannot be computed is absent and has a sentence in `reasons`. */
export interface HeatExposure {
  readonly distanceMm: number;
  readonly peakCelsius?: number;
  readonly peakAtSeconds?: number;
  readonly secondsAboveLimit?: number;
  /** The safe end of what is left, %. */
  readonly tensileLeft?: number;
  /** The other end, %. */
  readonly tensileLeftAtMost?: number;
  readonly history?: TemperatureHistory;
  readonly verdict: ExposureVerdict;
  readonly reasons: readonly string[];
  /** Why no strength left is named. */
  readonly strengthReason?: string;
  /** Only where distances are asked for. The temperature is the one to state, without the instrument's allowance. */
  readonly longestHold?: Sought;
  readonly highestTemperature?: Sought;
}

/** `point` is undefined where the sheet does not reach so far. */
export function exposureAt(
  distanceMm: number,
  point: PointHistory | undefined,
  limit: HeatLimit,
  least: number | undefined,
  keepOff: KeepOff | undefined,
  neighbour: Neighbour,
): HeatExposure {
  const { holdAboveCelsius: hold, stopAboveCelsius: stop, timeAbove } = limit;
  const reasons: string[] = [];
  const above = point === undefined || hold === undefined ? undefined : point.secondsAbove(hold);
  if (point !== undefined && hold === undefined)
    reasons.push('The rule packs set no limit of temperature for it.');
  const strength = point === undefined ? undefined : strengthOf(neighbour, point);
  const percent = strength !== undefined && 'percent' in strength ? strength.percent : undefined;
  const margin = (celsius: number | undefined): number | undefined =>
    celsius === undefined ? Number.NEGATIVE_INFINITY : point && point.peakCelsius - celsius;
  const verdict = exposureVerdict({
    stays: true,
    distanceMm,
    keepOffMm: keepOff?.distanceMm,
    overLimit: margin(hold),
    overStopLimit: margin(stop),
    overTime:
      timeAbove === undefined
        ? Number.NEGATIVE_INFINITY
        : point && point.secondsAbove(timeAbove.celsius) - timeAbove.atMostSeconds,
    tensileLeft: percent,
    leastTensileLeft: least,
  });
  return {
    distanceMm,
    ...(point === undefined ? {} : { peakCelsius: point.peakCelsius, peakAtSeconds: point.peakAtSeconds }),
    ...(above === undefined || !Number.isFinite(above) ? {} : { secondsAboveLimit: above }),
    ...(strength !== undefined && 'percent' in strength
      ? { tensileLeft: strength.percent, tensileLeftAtMost: strength.mostPercent }
      : {}),
    ...(point === undefined ? {} : { history: point }),
    verdict,
    reasons,
    ...(strength !== undefined && 'reason' in strength ? { strengthReason: strength.reason } : {}),
  };
}

function strengthOf(
  neighbour: Neighbour,
  point: PointHistory,
): { readonly percent: number; readonly mostPercent: number } | { readonly reason: string } {
  const left = strengthLeftOf(neighbour, point);
  if (left === undefined) return { reason: 'No model tells what strength such a part keeps.' };
  return 'leastPercent' in left
    ? { percent: left.leastPercent, mostPercent: left.mostPercent }
    : { reason: sentence(left.reason) };
}

/** The longest hold and the highest temperature with which a place keeps its limit: up to twenty solves. */
export function searches(
  solveStrip: DerivationContext['solveStrip'],
  heat: HeldHeat,
  distanceMm: number,
  kept: KeptLimit,
  allowanceKelvin: number | undefined,
): Pick<HeatExposure, 'longestHold' | 'highestTemperature'> {
  return {
    longestHold: longestHold(solveStrip, heat, distanceMm, kept),
    highestTemperature: withoutAllowance(
      highestTemperature(solveStrip, heat, distanceMm, kept),
      heat,
      allowanceKelvin,
    ),
  };
}

/** The temperature that may be stated: what the instrument's allowance lifts to the one that was found. */
function withoutAllowance(sought: Sought, heat: HeldHeat, allowanceKelvin: number | undefined): Sought {
  if (!sought.ok) return sought;
  if (allowanceKelvin === undefined) {
    return {
      ok: false,
      reason: `The temperature is not measured or not stated: ${String(heat.sourceCelsius)} °C counts, the worst of the source.`,
    };
  }
  const value = sought.value - allowanceKelvin;
  return { ...sought, value, rounded: Math.floor(value) };
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${text.endsWith('.') ? '' : '.'}`;
}
