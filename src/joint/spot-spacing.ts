import { margin } from './margin.ts';
import { sized, unsized } from './sized.ts';
import type { Sized } from './sized.ts';

interface SpacingRow {
  readonly sheetMm: number;
  readonly pitchMm: number;
  readonly overlapMm: number;
}

/**
 * Least pitch and least overlap of resistance spots in low-carbon sheet, classes A and B. From the manual of an industrial bench
 * spot welder (8201N, page 27), seen; its note F adds 30 % to the pitch of three sheets.
 */
const spacing: readonly SpacingRow[] = [
  { sheetMm: 0.5, pitchMm: 9.5, overlapMm: 11 },
  { sheetMm: 0.75, pitchMm: 12.5, overlapMm: 11 },
  { sheetMm: 1, pitchMm: 19.5, overlapMm: 12.5 },
  { sheetMm: 1.25, pitchMm: 22.5, overlapMm: 15 },
  { sheetMm: 1.5, pitchMm: 27, overlapMm: 16 },
  { sheetMm: 2, pitchMm: 35, overlapMm: 18 },
  { sheetMm: 2.5, pitchMm: 42, overlapMm: 19 },
  { sheetMm: 3.2, pitchMm: 50, overlapMm: 23 },
];

/** Three sheets shunt more: the same manual, note F. */
const threeSheetFactor = 1.3;

/**
 * The least distance between two spots, mm, at which the one that is there does not take the current of the new one. Between rows
 * of the table on the straight line; thinner sheet as the thinnest row, thicker than 3.2 mm refused.
 */
export function leastPitch(governingMm: number, sheets: number): Sized {
  const found = between(governingMm, ({ pitchMm }) => pitchMm);
  return found.ok && sheets > 2 ? sized(found.value * threeSheetFactor) : found;
}

/** The least width, mm, over which two sheets lie on each other for a row of spots; range as for the pitch. */
export function leastOverlap(governingMm: number): Sized {
  return between(governingMm, ({ overlapMm }) => overlapMm);
}

function between(sheetMm: number, column: (row: SpacingRow) => number): Sized {
  if (!(sheetMm > 0)) return unsized(`A sheet of ${sheetMm} mm is none.`);
  const above = spacing.findIndex((row) => margin(row.sheetMm, sheetMm) >= 0);
  const upper = spacing[above];
  if (upper === undefined)
    return unsized(`The table of spot spacing ends at 3.2 mm; the sheet has ${sheetMm} mm.`);
  const lower = spacing[above - 1];
  if (lower === undefined) return sized(column(upper));
  const share = (sheetMm - lower.sheetMm) / (upper.sheetMm - lower.sheetMm);
  return sized(column(lower) + share * (column(upper) - column(lower)));
}
