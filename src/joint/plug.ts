import { margin } from './margin.ts';
import { sized, unsized } from './sized.ts';
import type { Sized } from './sized.ts';

/** Hole of a plug weld by the thickness of the sheet that has it, mm. Common practice; 7.5 mm for 0.8 to 1.0 mm was seen. */
const holes: readonly { readonly upToMm: number; readonly leastMm: number; readonly mostMm: number }[] = [
  { upToMm: 0.8, leastMm: 5, mostMm: 6 },
  { upToMm: 1, leastMm: 6, mostMm: 8 },
  { upToMm: 1.6, leastMm: 8, mostMm: 8 },
  { upToMm: 2.5, leastMm: 8, mostMm: 10 },
  { upToMm: 6, leastMm: 10, mostMm: 10 },
];

/** Drills come in half millimetres; a hole is no other for that, mm. Common practice. */
const drillStepMm = 0.5;

/**
 * How far a hole lies outside what its sheet asks, mm: below 0 too small by that much, above 0 too large, else 0. Half a
 * millimetre off is the next drill.
 */
export function holeOff(holeMm: number, holedSheetMm: number): Sized {
  if (!(holeMm > 0)) return unsized(`A hole of ${holeMm} mm is none.`);
  const row = holedSheetMm > 0 ? holes.find(({ upToMm }) => margin(holedSheetMm, upToMm) <= 0) : undefined;
  if (row === undefined) return unsized(`No hole is given for a sheet of ${holedSheetMm} mm.`);
  if (margin(holeMm, row.leastMm - drillStepMm) < 0) return sized(holeMm - row.leastMm);
  return sized(margin(holeMm, row.mostMm + drillStepMm) > 0 ? holeMm - row.mostMm : 0);
}

/**
 * The diameter that a plug is credited with, mm: 0.5 t + 5 of the thinner sheet, never hole or bead. EN 1993-1-3, fusion spots,
 * from memory.
 */
export function plugFusedMm(thinnerMm: number): number {
  return 0.5 * thinnerMm + 5;
}
