import { firstOutside } from '../heat/outside.ts';
import { sized, unsized } from './sized.ts';
import type { Sized } from './sized.ts';

/** Sheet that can be computed with at all, mm; what the standards are for is narrower and is for a rule to say. */
export const leastSheetMm = 0.3;
export const mostSheetMm = 6;

/**
 * The thickness that sets the size of a resistance spot, mm: of two sheets the thinner, of three the second thickest (AWS D8.1M,
 * definitions), which is the middle one. `thicknessesMm` is the stack in order from the outside.
 * Refuses one sheet, more than three (outside ISO 14373), and a sheet that is none.
 */
export function governingThickness(thicknessesMm: readonly number[]): Sized {
  const fault = firstOutside(
    thicknessesMm.map((mm) => ['sheet of the stack', mm, leastSheetMm, mostSheetMm, 'mm']),
  );
  if (fault !== undefined) return unsized(`A ${fault}.`);
  const [least, middle, most] = thicknessesMm.toSorted((a, b) => a - b);
  if (least === undefined || middle === undefined) return unsized('A joint has two sheets at least.');
  if (thicknessesMm.length > 3)
    return unsized('No standard says which of four sheets sets the size of a spot.');
  return sized(most === undefined ? least : middle);
}

/** Thickest by thinnest sheet of the stack; at least 1. ISO 14373 and ISO 18595 are for stacks of at most 3 (scope). */
export function thicknessRatio(thicknessesMm: readonly number[]): Sized {
  const fault = firstOutside(
    thicknessesMm.map((mm) => ['sheet of the stack', mm, leastSheetMm, mostSheetMm, 'mm']),
  );
  if (fault !== undefined) return unsized(`A ${fault}.`);
  if (thicknessesMm.length < 2) return unsized('A joint has two sheets at least.');
  return sized(Math.max(...thicknessesMm) / Math.min(...thicknessesMm));
}
