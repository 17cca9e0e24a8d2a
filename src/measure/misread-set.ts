import { distanceMm, middleOf, wayBetween } from './place.ts';
import type { Place } from './place.ts';
import { fitRigid } from './rigid-fit.ts';
import type { PointPair } from './rigid-fit.ts';

/** What makes a whole set of readings another shape than the body can have. */
export type MisreadSet =
  /** Axes of the other hand; `how` where the places as read tell which. */
  | { readonly kind: 'mirrored'; readonly how: AxisSlip | undefined }
  /** Every reading times `factor` fits. */
  | { readonly kind: 'unit'; readonly factor: number };

export type AxisName = 'x' | 'y' | 'z';
export type AxisSlip =
  | { readonly kind: 'sign'; readonly axis: AxisName }
  | { readonly kind: 'exchanged'; readonly axes: readonly [AxisName, AxisName] };

/** Inch, centimetre, decimetre and metre against the millimetre, both ways. */
export const unitFactors = [25.4, 1 / 25.4, 10, 0.1, 100, 0.01, 1000, 0.001] as const;

/**
 * Recognises readings in another unit, and readings in axes of the other hand: one sign turned, or two axes exchanged. Two signs or
 * three axes round are a turn, which a fit takes out. Points in one plane show no hand. Undefined when neither explains
 * the readings far better than they stand.
 */
export function misreadSet(pairs: readonly PointPair[]): MisreadSet | undefined {
  return unitOf(pairs) ?? handOf(pairs);
}

function unitOf(pairs: readonly PointPair[]): MisreadSet | undefined {
  if (pairs.length < 3) return undefined;
  const ratio =
    spreadMm(pairs.map(({ measured }) => measured)) / spreadMm(pairs.map(({ nominal }) => nominal));
  const factor = unitFactors.find((one) => Math.abs(ratio * one - 1) < unitSlack);
  return factor === undefined ? undefined : { kind: 'unit', factor };
}

/** A crash changes the spread of all points by less than this share; the units lie far wider apart. */
const unitSlack = 0.05;

function spreadMm(places: readonly Place[]): number {
  const middle = middleOf(places);
  return Math.sqrt(places.reduce((sum, place) => sum + distanceMm(middle, place) ** 2, 0) / places.length);
}

function handOf(pairs: readonly PointPair[]): MisreadSet | undefined {
  if (pairs.length < 4) return undefined;
  const fit = fitRigid(pairs);
  if (!fit.ok || fit.rmsMm < leastMisfitMm) return undefined;
  const mirrored = fitRigid(pairs, 'mirrored');
  if (!mirrored.ok || fit.rmsMm < muchBetter * mirrored.rmsMm) return undefined;
  const [best] = slips
    .map((slip) => ({ slip, rmsMm: shiftedRmsMm(pairs, slip) }))
    .sort((a, b) => a.rmsMm - b.rmsMm);
  const tells = best !== undefined && best.rmsMm < fit.rmsMm / muchBetter;
  return { kind: 'mirrored', how: tells ? best.slip : undefined };
}

/**
 * Root mean square misfit from which on it is worth asking for the hand, mm. A blow that drives one low point through the plane of
 * the others looks mirrored too, and leaves less on the mean.
 */
const leastMisfitMm = 50;
/** How many times better the other hand must fit. */
const muchBetter = 3;

const slips: readonly AxisSlip[] = [
  { kind: 'sign', axis: 'y' },
  { kind: 'sign', axis: 'x' },
  { kind: 'sign', axis: 'z' },
  { kind: 'exchanged', axes: ['x', 'y'] },
  { kind: 'exchanged', axes: ['x', 'z'] },
  { kind: 'exchanged', axes: ['y', 'z'] },
];

/** A reading with the slip taken back. */
export function unslipped([x, y, z]: Place, slip: AxisSlip): Place {
  if (slip.kind === 'sign') {
    const sign = (axis: AxisName): 1 | -1 => (axis === slip.axis ? -1 : 1);
    return [sign('x') * x, sign('y') * y, sign('z') * z];
  }
  const [one, other] = slip.axes;
  const values = { x, y, z };
  const swapped = { ...values, [one]: values[other], [other]: values[one] };
  return [swapped.x, swapped.y, swapped.z];
}

/** Misfit in the axes as written, with nothing but a shift taken out, mm. */
function shiftedRmsMm(pairs: readonly PointPair[], slip: AxisSlip): number {
  const ways = pairs.map(({ nominal, measured }) => wayBetween(nominal, unslipped(measured, slip)));
  return spreadMm(ways);
}
