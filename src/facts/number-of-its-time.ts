import type { PlanVehicle } from '../generated/plan-types.ts';
import { readVin } from '../vehicle/identification-number.ts';

/** First model year of which a number of 17 characters is due: 49 CFR 565, from memory; elsewhere about the same time, common practice. */
const firstYearOfVin = 1981;

/** Fewest letters and digits that name one vehicle of a maker. Common practice, no source. */
const fewest = 4;

/** The number of a vehicle that was built before there was a form for it, and the key that states it. */
export function numberOfItsTime({
  vin,
  frame_number: frame,
  model_year: year,
}: PlanVehicle): { readonly text: string; readonly key: 'vin' | 'frame_number' } | undefined {
  const text = vin ?? frame;
  if (year === undefined || year >= firstYearOfVin || text === undefined) return undefined;
  if (vin !== undefined && readVin(vin).ok) return undefined;
  const isPlausible =
    text.replaceAll(/[^A-Za-z0-9]/gu, '').length >= fewest &&
    /^[A-Za-z0-9][A-Za-z0-9 ./*-]*$/u.test(text.trim());
  return isPlausible ? { text, key: vin === undefined ? 'frame_number' : 'vin' } : undefined;
}
