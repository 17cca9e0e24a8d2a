import { distanceMm } from './place.ts';
import type { Place } from './place.ts';

/** A point with its counterpart on the other side, as indices into the points given. */
export interface SidePair {
  readonly one: number;
  readonly other: number;
}

/** Where the data sheet has a point, its name, and the name of its counterpart where the plan says one. */
export interface SidedPoint {
  readonly name: string | undefined;
  readonly nominal: Place | undefined;
  readonly counterpart: string | undefined;
}

/**
 * Which points are left and right of one another: those that name each other, or of which one names the other; else those whose
 * nominal places differ in the sign of y alone, as data sheets with y from the middle plane have them. Each point takes part once.
 */
export function sidePairs(points: readonly SidedPoint[]): readonly SidePair[] {
  const pairs: SidePair[] = [];
  const taken = new Set<number>();
  const take = (one: number, other: number | undefined): void => {
    if (other === undefined || one === other || taken.has(one) || taken.has(other)) return;
    taken.add(one).add(other);
    pairs.push({ one: Math.min(one, other), other: Math.max(one, other) });
  };
  const byName = firstBy(points, ({ name }) => name);
  points.forEach(({ counterpart }, index) => {
    if (counterpart !== undefined) take(index, byName.get(counterpart));
  });
  const byPlace = firstBy(points, ({ nominal }) => (nominal === undefined ? undefined : placeKey(nominal)));
  points.forEach(({ nominal, counterpart }, index) => {
    if (nominal === undefined || counterpart !== undefined || Math.abs(nominal[1]) < leastHalfMm) return;
    take(index, byPlace.get(placeKey([nominal[0], -nominal[1], nominal[2]])));
  });
  return pairs.sort((a, b) => a.one - b.one);
}

/** A point this near to the middle plane is its own counterpart, mm. */
const leastHalfMm = 10;

/** Places of data sheets come in whole millimetres or tenths. */
function placeKey(place: Place): string {
  return place.map((value) => (Math.round(value * 10) + 0).toFixed(0)).join(' ');
}

function firstBy<T>(items: readonly T[], key: (item: T) => string | undefined): ReadonlyMap<string, number> {
  const first = new Map<string, number>();
  items.forEach((item, index) => {
    const own = key(item);
    if (own !== undefined && !first.has(own)) first.set(own, index);
  });
  return first;
}

/**
 * What is left of two deviations when the one is mirrored onto the other: nothing when both sides lie alike off the sheet, twice the
 * way when one has gone forward and the other back. Mirrored at the plane across y; `one` minus `other`, mm.
 */
export function asymmetry(one: Place, other: Place): Place {
  return [one[0] - other[0], one[1] + other[1], one[2] - other[2]];
}

/** The four corners that two pairs of sides span. */
export interface CrossedCorners {
  readonly one: Place;
  readonly other: Place;
  readonly farOne: Place;
  readonly farOther: Place;
}

/** The two diagonals across: from the one side to the far other, less from the other side to the far one, mm. No datum enters. */
export function diagonalDifferenceMm({ one, other, farOne, farOther }: CrossedCorners): number {
  return distanceMm(one, farOther) - distanceMm(other, farOne);
}
