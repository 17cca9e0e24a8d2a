import type { HeldLap } from '../../heat/sheet/held-lap.ts';
import type { SheetAnswer } from '../../heat/sheet/held-sheet.ts';
import { mostSolves, nearestKept, stayClear, stayClearAtEnd } from '../../heat/sheet/stay-clear.ts';
import type { KeptLimit, Sought } from '../../heat/sheet/stay-clear.ts';
import type { Exposed, Neighbour } from './exposed-neighbour.ts';
import { keptLimit, limitOf } from './heat-limits.ts';
import { readLap } from './neighbour-lap.ts';
import { neighbourStrip } from './neighbour-strip.ts';
import type { NeighbourStrip } from './neighbour-strip.ts';
import { seamHeat } from './seam-heat.ts';
import { statedEndMm } from './free-end.ts';
import { strengthKind } from '../part/strength-kind.ts';
import type { OperationSurvey, Survey } from '../survey.ts';

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
      const held = neighbourStrip(survey.context, one, neighbour);
      if (!held.ok) return held;
      const byLap = lapClear(survey, one, neighbour, held, kept);
      if (byLap !== undefined) return byLap;
      const { solveStrip } = survey.context;
      const asked = JSON.stringify([limit, asksStrength ? [kind, leastPercent] : []]);
      if (held.endsAtNeighbour === true) {
        // Wherever each neighbour lies, the search is one and the same.
        const { freeEndMm: _end, ...open } = held.strip;
        return onceForEach(solveStrip(open), `${asked} at the end`, () =>
          stayClearAtEnd(solveStrip, open, kept),
        );
      }
      return onceForEach(solveStrip(held.strip), asked, () => stayClear(solveStrip, held.strip, kept));
    }
    case 'arc':
    case 'brazing':
      return seamClear(one, source, neighbour, limit.holdAboveCelsius);
    case 'resistance spot':
    case 'cutting or grinding':
      return { ok: false, reason: 'This heat is not computed.' };
  }
}

/** Neighbours of one heat with the same limit share the search; it goes when the run forgets the heat. */
const searched = new WeakMap<SheetAnswer, Map<string, Sought>>();

function onceForEach(heat: SheetAnswer, asked: string, search: () => Sought): Sought {
  const ofHeat = searched.get(heat) ?? new Map<string, Sought>();
  searched.set(heat, ofHeat);
  const before = ofHeat.get(asked);
  if (before !== undefined) return before;
  const found = search();
  ofHeat.set(asked, found);
  return found;
}

/** Farther than any body sheet carries a heat that harms, mm; where the search for the distance to a lap ends. */
const farthestLapMm = 500;

/**
 * The distance to a lap, the whole lap with its ends moving along; undefined where the plan states none that counts. At most ten
 * solves: the tolerance is 2 mm to the safe side at the far end of the search.
 */
function lapClear(
  { context }: Survey,
  one: OperationSurvey,
  neighbour: Neighbour,
  held: Extract<NeighbourStrip, { readonly ok: true }>,
  limit: KeptLimit,
): Sought | undefined {
  const { distanceMm } = neighbour;
  if (distanceMm === undefined) return undefined;
  const reading = readLap(neighbour, held, distanceMm, one.operation.free_end !== undefined);
  if (reading.kind !== 'lap') return undefined;
  const isKeptAt = (fromMm: number): boolean => {
    const solved = context.solveLap(movedTo(fromMm, reading.lap));
    const place = solved.ok ? solved.other.at(fromMm) : solved;
    return place.ok && limit.isKept(place.point);
  };
  let kept = isKeptAt(distanceMm) ? distanceMm : farthestLapMm;
  if (kept === farthestLapMm && !isKeptAt(farthestLapMm)) {
    return { ok: false, reason: `The limit is kept nowhere within ${String(farthestLapMm)} mm.` };
  }
  let broken = kept === distanceMm ? 0 : distanceMm;
  for (let solves = 2; solves < mostSolves && kept - broken > 1; solves += 1) {
    const middle = (kept + broken) / 2;
    if (isKeptAt(middle)) kept = middle;
    else broken = middle;
  }
  return { ok: true, value: kept, rounded: Math.ceil(kept) };
}

function movedTo(fromMm: number, lap: HeldLap): HeldLap {
  const by = fromMm - lap.other.fromMm;
  const ended = (end: number | undefined): { readonly freeEndMm?: number } =>
    end === undefined ? {} : { freeEndMm: end + by };
  return {
    ...lap,
    heated: { ...lap.heated, ...ended(lap.heated.freeEndMm) },
    other: { ...lap.other, fromMm, ...ended(lap.other.freeEndMm) },
  };
}

/** Farther than any seam's heat by the formula is of use, mm. */
const farthestSeamMm = 2000;

/** Beside one pass there is a peak and no history: only the limit of temperature is asked. */
function seamClear(
  one: OperationSurvey,
  source: Parameters<typeof seamHeat>[1],
  neighbour: Neighbour,
  celsius: number | undefined,
): ClearByLimit {
  if (celsius === undefined) {
    return { ok: false, noLimit: true, reason: 'The rule packs set no limit of temperature for it.' };
  }
  const first = seamHeat(one, source, 0, neighbour);
  if (!first.ok) return first;
  const reachMm = statedEndMm(one.operation) ?? farthestSeamMm;
  const isKept = (distanceMm: number): boolean => {
    const heat = seamHeat(one, source, distanceMm, neighbour);
    return heat.ok && heat.peakCelsius <= celsius;
  };
  return (
    nearestKept(isKept, reachMm) ?? {
      ok: false,
      reason: `The limit of ${neighbour.name} is kept nowhere within ${String(reachMm)} mm of the seam.`,
    }
  );
}
