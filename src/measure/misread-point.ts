import { distanceMm, lengthMm, stretched } from './place.ts';
import type { Place } from './place.ts';
import { medianOf } from './one-off-as-read.ts';
import { deviationOf, fitRigid } from './rigid-fit.ts';
import type { PointPair } from './rigid-fit.ts';
import { unitFactors, unslipped } from './misread-set.ts';
import type { AxisName, AxisSlip } from './misread-set.ts';
import { carried, noMotion } from './rigid-motion.ts';
import type { RigidMotion } from './rigid-motion.ts';

/** What one reading, or two, most likely are instead. */
export type MisreadPoint =
  | AxisSlip
  | { readonly kind: 'unit'; readonly factor: number }
  /** One axis is ten times too large or too small. */
  | { readonly kind: 'digit'; readonly axis: AxisName; readonly factor: number }
  /** It is where another point belongs, and that one is here; `other` is an index. */
  | { readonly kind: 'swapped'; readonly other: number };

/**
 * Names the slip of each reading that is far off where its data has it and lands there when one common slip is taken back: a turned
 * sign, two axes exchanged, another unit, a lost digit, two points taken for each other. By index; what only a blow could have
 * done is not in it. `zero` are the indices of the points that the datum is fitted to.
 */
export function misreadPoints(
  pairs: readonly PointPair[],
  zero: readonly number[],
): ReadonlyMap<number, MisreadPoint> {
  const found = new Map<number, MisreadPoint>();
  if (isClean(pairs, zero)) return found;
  const motion = likeliestMotion(pairs, zero);
  const far = pairs
    .map((pair, index) => ({ pair, index, offMm: lengthMm(deviationOf(motion, pair)) }))
    .filter(({ offMm }) => offMm > leastOffMm)
    .sort((a, b) => b.offMm - a.offMm)
    .slice(0, mostFar);
  // First, since left and right taken for each other look like two signs turned.
  for (const [at, one] of far.entries()) {
    if (found.has(one.index)) continue;
    const other = far
      .slice(at + 1)
      .find(
        (two) =>
          !found.has(two.index) &&
          lands(motion, one.pair, two.pair.measured, one.offMm) &&
          lands(motion, two.pair, one.pair.measured, two.offMm),
      );
    if (other === undefined) continue;
    found.set(one.index, { kind: 'swapped', other: other.index });
    found.set(other.index, { kind: 'swapped', other: one.index });
  }
  for (const { pair, index, offMm } of far) {
    if (found.has(index)) continue;
    const slip = slips.find(
      ({ back, shrunkMm }) =>
        lands(motion, pair, back(pair.measured), offMm) &&
        (shrunkMm === undefined || shrunkMm(back(pair.measured)) > leastOffMm),
    );
    if (slip !== undefined) found.set(index, slip.slip);
  }
  return found;
}

/** A reading nearer than this may be bent; a slip of the pen is farther off, mm. */
const leastOffMm = 20;
/** With the slip taken back it lies this near, mm, and this share of the way nearer. */
const landsWithinMm = 10;
const landsWithinShare = 1 / 8;
/** More readings than this are not slips of single points. */
const mostFar = 200;

function lands(motion: RigidMotion, { nominal }: PointPair, measured: Place, offMm: number): boolean {
  const leftMm = distanceMm(nominal, carried(motion, measured));
  return leftMm <= Math.min(landsWithinMm, offMm * landsWithinShare);
}

/** The datum fits and nothing is far off: the common case, for which a single fit is enough. */
function isClean(pairs: readonly PointPair[], zero: readonly number[]): boolean {
  const fit = fitRigid(pairsAt(pairs, zero));
  return fit.ok && pairs.every((pair) => lengthMm(deviationOf(fit.motion, pair)) <= leastOffMm);
}

function pairsAt(pairs: readonly PointPair[], indices: readonly number[]): readonly PointPair[] {
  return indices.map((index) => pairs[index]).filter((pair) => pair !== undefined);
}

/**
 * The motion that most readings agree on: as written, or the fit on the zero points, on all but one of them, with two of
 * them exchanged, or on all. The one that brings most points home, of several the one with the least median deviation, so that
 * a slip at a zero point does not carry all else off, nor many slips elsewhere.
 */
function likeliestMotion(pairs: readonly PointPair[], zero: readonly number[]): RigidMotion {
  const sets = [
    pairsAt(pairs, zero),
    ...zero.map((left) =>
      pairsAt(
        pairs,
        zero.filter((index) => index !== left),
      ),
    ),
    ...(zero.length > mostExchanged ? [] : exchanged(pairsAt(pairs, zero))),
    pairs,
  ];
  let best = noMotion;
  let [mostHome, leastMm] = agreement(pairs, best);
  for (const set of sets) {
    const fit = fitRigid(set);
    if (!fit.ok) continue;
    const [home, mm] = agreement(pairs, fit.motion);
    // Clearly less, so that the axes as written stay where both do.
    if (home < mostHome || (home === mostHome && mm >= leastMm - 1)) continue;
    [best, mostHome, leastMm] = [fit.motion, home, mm];
  }
  return best;
}

/** How many points a motion brings where they belong, and the median of what is left, mm. */
function agreement(
  pairs: readonly PointPair[],
  motion: RigidMotion,
): readonly [home: number, medianMm: number] {
  const off = pairs.map((pair) => lengthMm(deviationOf(motion, pair)));
  return [off.filter((mm) => mm <= leastOffMm).length, medianOf(off) ?? 0];
}

/** Of more zero points than this the fit on all but one is good enough to find two that are exchanged. */
const mostExchanged = 8;

function exchanged(pairs: readonly PointPair[]): readonly (readonly PointPair[])[] {
  return pairs.flatMap((one, index) =>
    pairs.slice(index + 1).map((other) =>
      pairs.map((pair) => {
        if (pair === one) return { nominal: one.nominal, measured: other.measured };
        return pair === other ? { nominal: other.nominal, measured: one.measured } : pair;
      }),
    ),
  );
}

interface Slip {
  readonly slip: Exclude<MisreadPoint, { readonly kind: 'swapped' }>;
  readonly back: (place: Place) => Place;
  /**
   * Of a slip by a factor, how large what it was taken from is, mm. Divided by a thousand everything lies beside the origin; that
   * makes no slip of a reading whose point belongs there.
   */
  readonly shrunkMm?: (place: Place) => number;
}

const axisNames = ['x', 'y', 'z'] as const;

/** The commonest first. */
const slips: readonly Slip[] = [
  ...axisNames.map((axis) => axisSlip({ kind: 'sign', axis })),
  axisSlip({ kind: 'exchanged', axes: ['x', 'y'] }),
  axisSlip({ kind: 'exchanged', axes: ['x', 'z'] }),
  axisSlip({ kind: 'exchanged', axes: ['y', 'z'] }),
  ...unitFactors.map((factor): Slip => ({
    slip: { kind: 'unit', factor },
    back: (place) => stretched(place, factor),
    shrunkMm: lengthMm,
  })),
  ...axisNames.flatMap((axis) =>
    [10, 0.1].map((factor): Slip => ({
      slip: { kind: 'digit', axis, factor },
      back: (place) => withDigit(place, axis, factor),
      shrunkMm: (place) => Math.abs(place[axisNames.indexOf(axis)] ?? 0),
    })),
  ),
];

/** A reading as it would stand without the slip. Of points read in each other’s rows that takes the other reading, and it stays. */
export function takenBack(place: Place, slip: MisreadPoint): Place {
  if (slip.kind === 'swapped') return place;
  if (slip.kind === 'unit') return stretched(place, slip.factor);
  if (slip.kind === 'digit') return withDigit(place, slip.axis, slip.factor);
  return unslipped(place, slip);
}

function withDigit([x, y, z]: Place, axis: AxisName, factor: number): Place {
  return [axis === 'x' ? x * factor : x, axis === 'y' ? y * factor : y, axis === 'z' ? z * factor : z];
}

function axisSlip(slip: AxisSlip): Slip {
  return { slip, back: (place) => unslipped(place, slip) };
}
