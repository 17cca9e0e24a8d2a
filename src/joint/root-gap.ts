import { margin } from './margin.ts';

/** How the ends of a butt seam are backed. */
export type ButtForm = 'butt with insert' | 'open butt';

/**
 * How far a root gap lies outside what is usual, mm: 0 inside. With an insert 2 to 3 mm or 1.5 to 2 t, whichever reaches farther;
 * without one about the thickness. Common practice. Gap 0 or more, thickness above 0, both mm.
 */
export function rootGapOff(gapMm: number, sheetMm: number, form: ButtForm): number {
  const [least, most] =
    form === 'open butt'
      ? [0.5 * sheetMm, 1.5 * sheetMm]
      : [Math.min(2, 1.5 * sheetMm), Math.max(3, 2 * sheetMm)];
  return Math.max(margin(least, gapMm), margin(gapMm, most), 0);
}
