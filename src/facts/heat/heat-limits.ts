import type { KeptLimit, Sought } from '../../heat/sheet/stay-clear.ts';
import { strengthLeft } from '../../heat/strength/strength-left.ts';
import type { StrengthKind } from '../../heat/strength/strength-answer.ts';
import type { HeatLimit } from '../context.ts';
import type { Neighbour } from './exposed-neighbour.ts';
import { quantityOf } from '../quantity-of.ts';

/** What rules ask beside the limits of temperature; the rule packs hold the numbers. */
export interface HeatBounds {
  /** Least tensile strength that hardened steel must keep, % of the start. */
  readonly leastTensileLeft?: number;
  /** A rule that stops work nearer than a distance, whatever the temperature. */
  readonly keepOff: (victim: string, from: string) => KeepOff | undefined;
}

export interface KeepOff {
  readonly distanceMm: number;
  readonly rule: string;
}

/** How far a neighbour must be, whole mm upwards, or why no distance can be named. */
export type ClearDistance =
  | { readonly ok: true; readonly distanceMm: number; readonly rule?: string }
  | { readonly ok: false; readonly reason: string };

/**
 * A neighbour's limit as the search for a distance asks it: up to the temperature above which it is asked about, no longer
 * than the time, and with the strength that hardened steel must keep. Undefined where the packs set nothing.
 *
 * @param strength only for steel that there is a model for: what it must keep at least, %.
 */
export function keptLimit(
  { holdAboveCelsius, stopAboveCelsius, timeAbove }: HeatLimit,
  strength?: { readonly kind: StrengthKind; readonly leastPercent: number },
): KeptLimit | undefined {
  const most = Math.min(holdAboveCelsius ?? Infinity, stopAboveCelsius ?? Infinity);
  const celsius = Math.min(most, timeAbove?.celsius ?? Infinity);
  if (!Number.isFinite(celsius)) return undefined;
  return {
    celsius,
    isKept: (point) => {
      if (!(point.peakCelsius <= most)) return false;
      if (timeAbove !== undefined && !(point.secondsAbove(timeAbove.celsius) <= timeAbove.atMostSeconds))
        return false;
      if (strength === undefined) return true;
      const left = strengthLeft(strength.kind, point);
      return 'leastPercent' in left && left.leastPercent >= strength.leastPercent;
    },
  };
}

/** The farther of what the limit and what a rule of distance asks; `sought` is undefined where no limit is set. */
export function clearDistance(
  sought: Sought | undefined,
  keepOff: KeepOff | undefined,
  noLimit: string,
): ClearDistance {
  if (sought?.ok === false) return sought;
  const byLimit = sought?.rounded ?? 0;
  if (keepOff !== undefined && keepOff.distanceMm >= byLimit) {
    return { ok: true, distanceMm: Math.ceil(keepOff.distanceMm), rule: keepOff.rule };
  }
  return sought === undefined ? { ok: false, reason: noLimit } : { ok: true, distanceMm: byLimit };
}

/** What the packs, and the page that the plan cites for it, let a neighbour stand; undefined when it is not known what it is. */
export function limitOf(
  limits: ReadonlyMap<string, HeatLimit>,
  { victim, near }: Neighbour,
): HeatLimit | undefined {
  if (victim === undefined) return undefined;
  const ownCelsius = quantityOf(near?.limit, 'temperature');
  const limit = limits.get(victim) ?? {};
  if (ownCelsius === undefined) return limit;
  // A page's own figure can only make the pack's limit stricter; what it may loosen is for a provision.
  return {
    ...limit,
    holdAboveCelsius: Math.min(ownCelsius, limit.holdAboveCelsius ?? ownCelsius),
    stopAboveCelsius: Math.min(ownCelsius, limit.stopAboveCelsius ?? ownCelsius),
  };
}
