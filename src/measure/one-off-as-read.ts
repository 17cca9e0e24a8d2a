import { largestAxisMm, wayBetween } from './place.ts';
import { deviationOf } from './rigid-fit.ts';
import type { PointPair } from './rigid-fit.ts';
import type { RigidMotion } from './rigid-motion.ts';

/** One of three zero points that alone is not where the data sheet has it. */
export interface OneOff {
  readonly index: number;
  /** Largest deviation of an axis as read, mm. */
  readonly offMm: number;
}

/**
 * Three points fit any plane: a fit takes the third of them, lifted out of it, for a body that is turned about the line through the
 * other two. Readings that stand in the axes of the data sheet already tell the two apart: two zero points lie where the sheet has
 * them, within `closeMm`, and the third is off by more than `offMm`. Where the other points come out right by the turn it was a
 * turn. Undefined when there is no such point, or more or fewer than three.
 */
export function oneOffAsRead(
  zero: readonly PointPair[],
  others: readonly PointPair[],
  fitted: RigidMotion,
  { closeMm, offMm }: { readonly closeMm: number; readonly offMm: number },
): OneOff | undefined {
  if (zero.length !== 3) return undefined;
  const off = zero
    .map((pair, index) => ({ index, offMm: asReadMm(pair) }))
    .filter((one) => one.offMm > closeMm);
  const [only] = off;
  if (off.length !== 1 || only === undefined || only.offMm <= offMm) return undefined;
  const asRead = medianOf(others.map(asReadMm));
  const turned = medianOf(others.map((pair) => largestAxisMm(deviationOf(fitted, pair))));
  return asRead !== undefined && turned !== undefined && turned < asRead / 2 ? undefined : only;
}

function asReadMm({ nominal, measured }: PointPair): number {
  return largestAxisMm(wayBetween(nominal, measured));
}

/** The middle one by size, of an even number the lower of the two; undefined of none. */
export function medianOf(values: readonly number[]): number | undefined {
  return [...values].sort((a, b) => a - b)[Math.floor((values.length - 1) / 2)];
}
