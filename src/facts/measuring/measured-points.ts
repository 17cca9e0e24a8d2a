import type { PlanMeasurements, PlanMeasurementsPointsItem } from '../../generated/plan-types.ts';
import type { Place } from '../../measure/place.ts';
import { signedLengthOf } from '../quantity-of.ts';

/** A point as the plan lists it, its places read; a place of which one axis cannot be read is left out. */
export interface MeasuredPoint {
  readonly written: PlanMeasurementsPointsItem;
  readonly at: string;
  /** Its place in the list, from nothing. */
  readonly index: number;
  /** What a sentence calls it: its name, else its number in the list. */
  readonly called: string;
  readonly isZero: boolean;
  readonly nominal: Place | undefined;
  readonly before: Place | undefined;
  readonly after: Place | undefined;
}

/** The points of a plan in its order. Of two with one name the first is the zero point. */
export function measuredPoints({
  points,
  zero_points: zeroNames,
}: PlanMeasurements): readonly MeasuredPoint[] {
  const zero = new Set(zeroNames ?? []);
  return (points ?? []).map((written, index): MeasuredPoint => {
    const { name } = written;
    return {
      written,
      at: `/measurements/points/${String(index)}`,
      index,
      called: name ?? `number ${String(index + 1)} of the list`,
      // Taken out, so that a second one of that name is none.
      isZero: name !== undefined && zero.delete(name),
      nominal: placeOf(written.nominal),
      before: placeOf(written.before),
      after: placeOf(written.after),
    };
  });
}

function placeOf(written: readonly string[] | undefined): Place | undefined {
  const [x, y, z] = (written ?? []).map(signedLengthOf);
  return x === undefined || y === undefined || z === undefined ? undefined : [x, y, z];
}
