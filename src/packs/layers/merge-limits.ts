import { mayShareVehicle } from './pack-covers.ts';
import { refuse } from './choose-versions.ts';
import type { Refusal } from './choose-versions.ts';
import { placeKey } from '../pack.ts';
import type { Limit, Pack, TimeAbove, Tolerance } from '../pack.ts';

export type MergedLimits = { readonly ok: true; readonly limits: ReadonlyMap<string, Limit> } | Refusal;

/**
 * The limits of all layers, by what they are for; of each number the tightest counts, and what a layer leaves out stays as it
 * was. A layer that states a looser number than a layer under it is refused. Packs for vehicles that cannot be the
 * same one are no layers of each other: two makers may hold different glues to different heats.
 */
export function mergeLimits(packs: readonly Pack[]): MergedLimits {
  const limits = new Map<string, Limit>();
  for (const [index, pack] of packs.entries()) {
    const under = packs.slice(0, index).filter((other) => mayShareVehicle(pack, other));
    for (const limit of pack.limits) {
      const isOverruled = under.some((other) =>
        other.limits.some((before) => before.victim === limit.victim && isLooser(limit, before)),
      );
      if (isOverruled) {
        const sentence = `The pack ${pack.name} loosens the limit for \`${limit.victim}\`; a later pack may only tighten it.`;
        return refuse(sentence, pack.places?.[placeKey('limit', limit.victim)]);
      }
      const before = limits.get(limit.victim);
      limits.set(limit.victim, before === undefined ? limit : tightest(before, limit));
    }
  }
  return { ok: true, limits };
}

export type MergedTolerances =
  { readonly ok: true; readonly mm: ReadonlyMap<Tolerance['of'], number> } | Refusal;

/** The tolerances of all layers, mm, in the same way: the tightest counts, and a looser one than under it is refused. */
export function mergeTolerances(packs: readonly Pack[]): MergedTolerances {
  const merged = new Map<Tolerance['of'], number>();
  for (const [index, pack] of packs.entries()) {
    const under = packs.slice(0, index).filter((other) => mayShareVehicle(pack, other));
    for (const { of, atMostMm } of pack.tolerances ?? []) {
      const isOverruled = under.some(({ tolerances }) =>
        tolerances?.some((before) => before.of === of && before.atMostMm < atMostMm),
      );
      if (isOverruled) {
        const sentence = `The pack ${pack.name} loosens the tolerance of \`${of}\`; a later pack may only tighten it.`;
        return refuse(sentence, pack.places?.[placeKey('tolerance', of)]);
      }
      merged.set(of, Math.min(merged.get(of) ?? atMostMm, atMostMm));
    }
  }
  return { ok: true, mm: merged };
}

function isLooser(later: Limit, before: Limit): boolean {
  const above = (a: number | undefined, b: number | undefined): boolean =>
    a !== undefined && b !== undefined && a > b;
  return (
    above(later.holdAboveCelsius, before.holdAboveCelsius) ||
    above(later.stopAboveCelsius, before.stopAboveCelsius) ||
    above(later.timeAbove?.celsius, before.timeAbove?.celsius) ||
    above(later.timeAbove?.atMostSeconds, before.timeAbove?.atMostSeconds)
  );
}

function tightest(before: Limit, later: Limit): Limit {
  const hold = least(before.holdAboveCelsius, later.holdAboveCelsius);
  const stop = least(before.stopAboveCelsius, later.stopAboveCelsius);
  const time = leastTime(before.timeAbove, later.timeAbove);
  return {
    ...before,
    ...later,
    ...(hold === undefined ? {} : { holdAboveCelsius: hold }),
    ...(stop === undefined ? {} : { stopAboveCelsius: stop }),
    ...(time === undefined ? {} : { timeAbove: time }),
  };
}

function least(a: number | undefined, b: number | undefined): number | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  return Math.min(a, b);
}

function leastTime(a: TimeAbove | undefined, b: TimeAbove | undefined): TimeAbove | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  return {
    celsius: Math.min(a.celsius, b.celsius),
    atMostSeconds: Math.min(a.atMostSeconds, b.atMostSeconds),
  };
}
