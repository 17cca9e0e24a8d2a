import type { FactNames } from '../generated/fact-names.ts';
import type { PlanMeasurements, PlanMeasurementsPointsItem } from '../generated/plan-types.ts';
import type { Fact } from './fact.ts';
import { computed, computedOr, unknown } from './make-fact.ts';
import { damageKinds } from './part-damage-facts.ts';
import { signedLengthOf } from './quantity-of.ts';
import type { Survey } from './survey.ts';
import { anyYes } from './tri-state.ts';

type ZeroPointFact = Extract<FactNames['measurement'], `measurement.zero_point${string}`>;
type Place = readonly [x: number, y: number, z: number];

/** The points that the datum is fitted to: how many, on what, and how wide they stand. */
export function zeroPointFacts(
  survey: Survey,
  measurements: PlanMeasurements,
): Readonly<Record<ZeroPointFact, Fact>> {
  const at = '/measurements/zero_points';
  const names = new Set(measurements.zero_points ?? []);
  const points = pointsNamed(measurements, names);
  const base = widestBase(points);
  const notTold = 'The nominal places of the zero points are not stated.';
  return {
    'measurement.zero_points':
      measurements.zero_points === undefined
        ? unknown('No zero points are named.', at)
        : computed(names.size, at),
    'measurement.zero_point_in_damage': inDamage(survey, points, at),
    'measurement.zero_point_span': computedOr(base?.spanMm, at, notTold),
    'measurement.zero_point_width': computedOr(base?.widthMm, at, notTold),
  };
}

/** Each zero point, where the plan lists it; undefined where it does not. */
function pointsNamed(
  { points }: PlanMeasurements,
  names: ReadonlySet<string>,
): readonly (PlanMeasurementsPointsItem | undefined)[] {
  if (names.size === 0) return [];
  const byName = new Map<string, PlanMeasurementsPointsItem>();
  for (const point of points ?? []) {
    if (point.name !== undefined && names.has(point.name) && !byName.has(point.name)) {
      byName.set(point.name, point);
    }
  }
  return [...names].map((name) => byName.get(name));
}

function inDamage(
  survey: Survey,
  points: readonly (PlanMeasurementsPointsItem | undefined)[],
  at: string,
): Fact {
  const answer = anyYes(
    points.map((point) => {
      const part = point?.on === undefined ? undefined : survey.partById.get(point.on)?.part;
      if (part === undefined) return undefined;
      const kinds = damageKinds(part);
      if (kinds.length === 0 || kinds.includes('not yet seen')) return undefined;
      return kinds.some((kind) => kind !== 'none' && kind !== 'scratch' && kind !== 'surface rust');
    }),
  );
  return computedOr(
    answer,
    at,
    'On which parts the zero points lie, and whether those are sound, is not stated.',
  );
}

/** The longest distance between two of them, and the longest from the line through those two, mm. */
function widestBase(
  points: readonly (PlanMeasurementsPointsItem | undefined)[],
): { readonly spanMm: number; readonly widthMm: number } | undefined {
  const places = points.map(placeOf).filter((place) => place !== undefined);
  if (places.length < 3 || places.length < points.length) return undefined;
  let spanMm = 0;
  let ends: readonly [Place, Place] | undefined;
  for (const [index, one] of places.entries()) {
    for (const other of places.slice(index + 1)) {
      const distance = distanceMm(one, other);
      if (distance > spanMm) {
        spanMm = distance;
        ends = [one, other];
      }
    }
  }
  if (ends === undefined) return { spanMm: 0, widthMm: 0 };
  const [from, to] = ends;
  const widthMm = Math.max(...places.map((place) => twiceTheArea(from, to, place) / spanMm));
  return { spanMm, widthMm };
}

function placeOf(point: PlanMeasurementsPointsItem | undefined): Place | undefined {
  const [x, y, z] = (point?.nominal ?? []).map(signedLengthOf);
  return x === undefined || y === undefined || z === undefined ? undefined : [x, y, z];
}

function distanceMm(one: Place, other: Place): number {
  return Math.hypot(other[0] - one[0], other[1] - one[1], other[2] - one[2]);
}

function twiceTheArea(a: Place, b: Place, c: Place): number {
  const [ux, uy, uz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const [vx, vy, vz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
  return Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
}
