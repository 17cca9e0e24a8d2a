import type { HeldSheet, SheetAnswer } from './held-sheet.ts';
import type { PointHistory } from '../point-history.ts';
import { sheetRanges, sourceRangeCelsius } from './sheet-range.ts';

/** The heat whose limits are sought, and what solves it. */
export type HeldHeat = HeldSheet;
export type HeatSolver = (heat: HeldHeat) => SheetAnswer;

/** What a neighbour stands. */
export interface KeptLimit {
  /** A source that is no warmer keeps the limit by itself; where the search for the highest temperature begins. */
  readonly celsius: number;
  /** Must hold of every history that is nowhere warmer and nowhere longer warm than one of which it holds. */
  readonly isKept: (point: PointHistory) => boolean;
}

export type Sought =
  | {
      readonly ok: true;
      /** On the safe side of the limit by no more than the tolerance. */
      readonly value: number;
      /** The same in whole steps for display, rounded to the safe side. */
      readonly rounded: number;
      /** The end of the range that is computed was reached and the limit still kept: more may be allowed, less is not. */
      readonly atEnd?: true;
    }
  | { readonly ok: false; readonly reason: string };

/** Tolerance of `stayClear` before rounding, mm. */
export const distanceToleranceMm = 0.1;
/** Most solves that `longestHold` and `highestTemperature` take. */
export const mostSolves = 10;
/** A search stops when its ends lie this near; with `mostSolves` it may end at 4 % of a hold, or at 5 K, instead. */
const holdToleranceShare = 0.01;
const temperatureToleranceKelvin = 1;

/** Beyond it the engine models no metal and answers with its last place, mm. */
const farthestMm = 2000;
/** What the engine takes for one hold, and for all heatings together, s. */
const shortestHoldSeconds = sheetRanges.holdSeconds.least;
const longestHeatingSeconds = sheetRanges.heatingSeconds.most;

/**
 * The least distance, mm from the edge of the heated zone, from which on a limit is kept: one solve, then bisection.
 *
 * Bisection is right because the farther place is at no time the warmer one: at the step-on and after the release the profile falls
 * from the source to the end, and neither end lets heat in (maximum principle). Tolerance 0.1 mm to the safe side; `rounded` is
 * whole millimetres, upwards. 0 when the source itself keeps the limit.
 */
export function stayClear(solve: HeatSolver, heat: HeldHeat, limit: KeptLimit): Sought {
  const answer = solve(heat);
  if (!answer.ok) return answer;
  const reachMm = Math.min(heat.freeEndMm ?? farthestMm, farthestMm);
  const found = nearestKept((distanceMm) => {
    const place = answer.history.at(distanceMm);
    return place.ok && limit.isKept(place.point);
  }, reachMm);
  if (found !== undefined) return found;
  const end = answer.history.at(reachMm);
  const reaches = end.ok ? `, which reaches ${String(Math.round(end.point.peakCelsius))} °C there` : '';
  return {
    ok: false,
    reason:
      heat.freeEndMm === undefined
        ? `The limit is kept nowhere within ${String(reachMm)} mm.`
        : `The limit is kept nowhere up to the free end of the sheet at ${String(reachMm)} mm${reaches}.`,
  };
}

/** Farther than any body sheet carries a heat that harms, mm; where the search for a place at the end of its sheet stops. */
const farthestEndMm = 500;

/**
 * The least distance, in whole mm upwards, from which on a limit is kept by a place that lies at the free end of its sheet, wherever that
 * is: the worst of every sheet of which nobody says where it ends. Mostly three to six solves, ten at most; right as for `stayClear`, since a longer
 * sheet is at its end no warmer than a shorter one at its own. The next place to try is where a straight line through the
 * logarithms of two rises meets the limit; where that does not close in, the middle.
 */
export function stayClearAtEnd(solve: HeatSolver, heat: HeldHeat, limit: KeptLimit): Sought {
  const ambient = heat.ambientCelsius ?? 20;
  const wanted = Math.log(Math.max(1, limit.celsius - ambient));
  let failed: string | undefined;
  const tryAt = (endMm: number): { readonly kept: boolean; readonly logRise: number } => {
    const answer = solve({ ...heat, freeEndMm: endMm });
    if (!answer.ok) failed ??= answer.reason;
    const place = answer.ok ? answer.history.at(endMm) : answer;
    if (!place.ok) return { kept: false, logRise: Number.NaN };
    const rise = Math.max(1, place.point.peakCelsius - ambient);
    return { kept: limit.isKept(place.point), logRise: Math.log(rise) };
  };
  let broken = 0;
  let kept: number | undefined;
  let brokenLog = Math.log(Math.max(1, heat.sourceCelsius - ambient));
  let keptLog = Number.NaN;
  let next = firstEndMm;
  for (let solves = 0; solves < mostSolves && (kept === undefined || kept - broken > 1); solves += 1) {
    const here = tryAt(next);
    if (failed !== undefined) return { ok: false, reason: failed };
    if (here.kept) [kept, keptLog] = [next, here.logRise];
    else [broken, brokenLog] = [next, here.logRise];
    if (kept === undefined) {
      if (broken >= farthestEndMm) break;
      next = Math.min(farthestEndMm, broken * 2);
      continue;
    }
    const line = broken + ((kept - broken) * (brokenLog - wanted)) / (brokenLog - keptLog);
    const middle = (kept + broken) / 2;
    // Every third try halves, lest a limit that is not of temperature alone keep the line to one side.
    const aim = solves % 3 === 2 || !Number.isFinite(line) ? middle : here.kept ? line - 0.5 : line + 0.5;
    next = Math.min(kept - 1, Math.max(broken + 1, Math.round(aim)));
  }
  return kept === undefined
    ? {
        ok: false,
        reason: `The limit is kept nowhere within ${String(farthestEndMm)} mm, the sheet ending there.`,
      }
    : { ok: true, value: kept, rounded: kept };
}

/** Where the search begins, mm: as far as most limits are kept from most heats. */
const firstEndMm = 60;

/** The least distance from which on something is kept, for anything that falls with distance; undefined when nowhere up to `reachMm`. */
export function nearestKept(
  isKeptAt: (distanceMm: number) => boolean,
  reachMm: number,
): Extract<Sought, { readonly ok: true }> | undefined {
  if (isKeptAt(0)) return { ok: true, value: 0, rounded: 0 };
  if (!isKeptAt(reachMm)) return undefined;
  let broken = 0;
  let kept = reachMm;
  while (kept - broken > distanceToleranceMm) {
    const middle = (kept + broken) / 2;
    if (isKeptAt(middle)) kept = middle;
    else broken = middle;
  }
  // The tolerance must not cost a whole millimetre where a whole one lies between the two ends.
  const below = Math.floor(kept);
  const rounded = below > broken && isKeptAt(below) ? below : Math.ceil(kept);
  return rounded > reachMm ? undefined : { ok: true, value: kept, rounded };
}

/**
 * The longest hold of each heating, s, with which a place keeps a limit: bracketed bisection on the engine, at most 10
 * solves, tolerance 4 % to the safe side (mostly 2). `rounded` is downwards to whole seconds, to tenths below 10 s. `atEnd` where
 * an hour in all, the longest that is computed, still keeps it.
 */
export function longestHold(solve: HeatSolver, heat: HeldHeat, distanceMm: number, limit: KeptLimit): Sought {
  const sought = largestKept({
    known: heat.holdSeconds,
    least: shortestHoldSeconds,
    most: longestHeatingSeconds / heat.times,
    middle: (a, b) => Math.sqrt(a * b),
    isNear: (a, b) => b / a - 1 <= holdToleranceShare,
    isKept: (holdSeconds) => isKeptBy(solve, { ...heat, holdSeconds }, distanceMm, limit),
  });
  if (sought === undefined) {
    return { ok: false, reason: 'No hold is short enough for this distance at this temperature.' };
  }
  if (typeof sought === 'string') return { ok: false, reason: sought };
  const { value } = sought;
  return { ...sought, rounded: value < 10 ? Math.floor(value * 10) / 10 : Math.floor(value) };
}

/**
 * The highest temperature of the source, °C, with which a place keeps a limit at this hold: as `longestHold`, tolerance
 * 5 K, `rounded` downwards to whole degrees. It is the temperature that counts, the allowance of an instrument in it.
 */
export function highestTemperature(
  solve: HeatSolver,
  heat: HeldHeat,
  distanceMm: number,
  limit: KeptLimit,
): Sought {
  const source = sourceRangeCelsius(heat.metal);
  const sought = largestKept({
    known: heat.sourceCelsius,
    least: Math.max(limit.celsius, source.least),
    most: source.most,
    middle: (a, b) => (a + b) / 2,
    isNear: (a, b) => b - a <= temperatureToleranceKelvin,
    isKept: (sourceCelsius) => isKeptBy(solve, { ...heat, sourceCelsius }, distanceMm, limit),
  });
  if (sought === undefined) {
    return { ok: false, reason: 'No temperature is low enough for this distance at this hold.' };
  }
  if (typeof sought === 'string') return { ok: false, reason: sought };
  return { ...sought, rounded: Math.floor(sought.value) };
}

/** The engine's reason where it has no answer. */
function isKeptBy(solve: HeatSolver, heat: HeldHeat, distanceMm: number, limit: KeptLimit): boolean | string {
  const answer = solve(heat);
  if (!answer.ok) return answer.reason;
  const place = answer.history.at(distanceMm);
  return place.ok ? limit.isKept(place.point) : place.reason;
}

interface Search {
  /** The value that was asked about; mostly solved already, and a nearer end than those of the range. */
  readonly known: number;
  readonly least: number;
  readonly most: number;
  readonly middle: (a: number, b: number) => number;
  readonly isNear: (kept: number, broken: number) => boolean;
  readonly isKept: (value: number) => boolean | string;
}

type Largest = { readonly ok: true; readonly value: number; readonly atEnd?: true };

/** The largest value that keeps the limit; undefined when the least does not, a reason when one cannot be computed. */
function largestKept({ known, least, most, middle, isNear, isKept }: Search): Largest | string | undefined {
  const atKnown = isKept(known);
  if (typeof atKnown === 'string') return atKnown;
  const atOtherEnd = isKept(atKnown ? most : least);
  if (typeof atOtherEnd === 'string') return atOtherEnd;
  if (atKnown && atOtherEnd) return { ok: true, value: most, atEnd: true };
  if (!atKnown && !atOtherEnd) return undefined;
  let kept = atKnown ? known : least;
  let broken = atKnown ? most : known;
  for (let solves = 2; solves < mostSolves && !isNear(kept, broken); solves += 1) {
    const value = middle(kept, broken);
    const here = isKept(value);
    if (typeof here === 'string') return here;
    if (here) kept = value;
    else broken = value;
  }
  return { ok: true, value: kept };
}
