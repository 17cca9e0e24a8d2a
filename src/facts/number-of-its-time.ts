import type { PlanVehicle } from '../generated/plan-types.ts';
import { readVin } from '../vehicle/identification-number.ts';

/** First model year of which a number of 17 characters is due: 49 CFR 565, from memory; elsewhere about the same time or later, common practice. */
const firstYearOfVin = 1981;

/** Fewest letters and digits that name one vehicle of a maker. Common practice, no source. */
const fewest = 4;

/**
 * Where the number of 17 characters came in model by model, the last year in which a vehicle may leave the works with a shorter one.
 * Common practice, from memory.
 */
const lastShortYear = 1990;
const slowMarkets: ReadonlySet<string> = new Set(['european-union', 'united-kingdom']);

/** Most letters and digits of a short number: with more it is a long one that was misread. Common practice, no source. */
const mostOfShort = 13;

/** The number of a vehicle that was built before there was a form for it, and the key that states it. */
export function numberOfItsTime(
  vehicle: PlanVehicle,
): { readonly text: string; readonly key: 'vin' | 'frame_number' } | undefined {
  const { vin, frame_number: frame, model_year: year } = vehicle;
  const text = vin ?? frame;
  if (year === undefined || text === undefined) return undefined;
  if (vin !== undefined && readVin(vin).ok) return undefined;
  const plain = text.replaceAll(/[^A-Za-z0-9]/gu, '');
  if (year >= firstYearOfVin && !(isOfChange(vehicle, year) && plain.length <= mostOfShort)) return undefined;
  const isPlausible = plain.length >= fewest && /^[A-Za-z0-9][A-Za-z0-9 ./*-]*$/u.test(text.trim());
  return isPlausible ? { text, key: vin === undefined ? 'frame_number' : 'vin' } : undefined;
}

/** Whoever writes it as a frame number means a short one; under `vin` it may be the tail of a long one. */
function isOfChange({ vin, market }: PlanVehicle, year: number): boolean {
  return vin === undefined && year <= lastShortYear && slowMarkets.has(market ?? '');
}
