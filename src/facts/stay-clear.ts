import { nearestKept, stayClear } from '../heat/stay-clear.ts';
import type { Sought } from '../heat/stay-clear.ts';
import type { Exposed } from './exposed-neighbour.ts';
import { keptLimit, limitOf } from './heat-limits.ts';
import { neighbourStrip, seamHeat } from './neighbour-heat.ts';
import { quantityOf } from './quantity-of.ts';
import { strengthKind } from './strength-kind.ts';
import type { OperationSurvey, Survey } from './survey.ts';

/** `noLimit` where the packs set none, so that no distance is asked of it. */
export type ClearByLimit = Sought | { readonly ok: false; readonly noLimit: true; readonly reason: string };

/**
 * From which distance on, whole mm upwards, a neighbour keeps the limits that the packs set for it; with `leastPercent` also the
 * strength that it must keep.
 */
export function clearByLimit(
  survey: Survey,
  one: OperationSurvey,
  { source, neighbour }: Exposed,
  leastPercent?: number,
): ClearByLimit {
  const limit = limitOf(survey.context.limits, neighbour);
  if (limit === undefined) return { ok: false, reason: 'What the neighbour is, is not known.' };
  const kind = strengthKind(neighbour);
  const asksStrength = source.kind === 'heat' && kind !== undefined && leastPercent !== undefined;
  const kept = keptLimit(limit, asksStrength ? { kind, leastPercent } : undefined);
  if (kept === undefined) return { ok: false, noLimit: true, reason: 'The rule packs set no limit for it.' };
  if (neighbour.path === 'through air') return { ok: false, reason: 'Heat through air is not computed.' };
  switch (source.kind) {
    case 'heat': {
      const held = neighbourStrip(one, neighbour);
      return held.ok ? stayClear(survey.context.solveStrip, held.strip, kept) : held;
    }
    case 'arc':
    case 'brazing':
      return seamClear(one, source, neighbour.name, limit.holdAboveCelsius);
    case 'resistance spot':
    case 'cutting or grinding':
      return { ok: false, reason: 'This heat is not computed.' };
  }
}

/** Farther than any seam's heat by the formula is of use, mm. */
const farthestSeamMm = 2000;

/** Beside one pass there is a peak and no history: only the limit of temperature is asked. */
function seamClear(
  one: OperationSurvey,
  source: Parameters<typeof seamHeat>[1],
  name: string,
  celsius: number | undefined,
): ClearByLimit {
  if (celsius === undefined) {
    return { ok: false, noLimit: true, reason: 'The rule packs set no limit of temperature for it.' };
  }
  const first = seamHeat(one, source, 0);
  if (!first.ok) return first;
  const reachMm = quantityOf(one.operation.free_end, 'length') ?? farthestSeamMm;
  const isKept = (distanceMm: number): boolean => {
    const heat = seamHeat(one, source, distanceMm);
    return heat.ok && heat.peakCelsius <= celsius;
  };
  return (
    nearestKept(isKept, reachMm) ?? {
      ok: false,
      reason: `The limit of ${name} is kept nowhere within ${String(reachMm)} mm of the seam.`,
    }
  );
}
