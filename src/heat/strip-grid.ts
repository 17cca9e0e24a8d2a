import { cell } from './cell.ts';

/** Nodes along a strip, from the edge of the heated zone (0) to the far end. */
export interface StripGrid {
  readonly positionsM: Float64Array;
  /** Length of strip that each node stands for. */
  readonly widthsM: Float64Array;
}

/**
 * Nodes close together at the source and wider apart with distance, the last exactly at the far end.
 *
 * An even 1 mm grid over a long strip costs ten times the cells for the same error at the neighbour: the profile is
 * steep only near the source.
 */
export function stripGrid(lengthM: number, firstM: number, growth: number): StripGrid {
  const wanted = Math.log(1 + (lengthM * (growth - 1)) / firstM) / Math.log(growth);
  const gaps = Math.max(fewestGaps, Math.ceil(wanted));
  const scale = lengthM / (growth ** gaps - 1);
  const positionsM = Float64Array.from({ length: gaps + 1 }, (_, i) => scale * (growth ** i - 1));
  const widthsM = positionsM.map((here, i) => {
    const before = i === 0 ? here : cell(positionsM, i - 1);
    const after = i === gaps ? here : cell(positionsM, i + 1);
    return (after - before) / 2;
  });
  return { positionsM, widthsM };
}

// So that a flange of a few millimetres still has a profile.
const fewestGaps = 16;
