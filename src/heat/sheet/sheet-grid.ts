import { cell } from '../cell.ts';

/**
 * Nodes along a sheet, from the edge of the heated zone (0) to the far end. A strip is counted for each metre of its
 * width; a disc for the whole ring.
 */
export interface SheetGrid {
  readonly positionsM: Float64Array;
  /** Plan area that each node stands for, m². */
  readonly areasM2: Float64Array;
  /** Length of the face towards the next node by the way to it; 0 at the far end. Times k·d it is W/K. */
  readonly facesByGap: Float64Array;
}

/**
 * Nodes close together at the source and wider apart with distance, the last exactly at the far end.
 *
 * An even 1 mm grid over a long sheet costs ten times the cells for the same error at the neighbour: the profile is
 * steep only near the source.
 *
 * @param radiusM of a heated disc, from whose edge the rings are counted. Absent: a strip.
 */
export function sheetGrid(lengthM: number, firstM: number, growth: number, radiusM?: number): SheetGrid {
  const wanted = Math.log(1 + (lengthM * (growth - 1)) / firstM) / Math.log(growth);
  const gaps = Math.max(fewestGaps, Math.ceil(wanted));
  const scale = lengthM / (growth ** gaps - 1);
  const positionsM = Float64Array.from({ length: gaps + 1 }, (_, i) => scale * (growth ** i - 1));
  const areasM2 = positionsM.map((here, i) => {
    const from = i === 0 ? here : (cell(positionsM, i - 1) + here) / 2;
    const to = i === gaps ? here : (here + cell(positionsM, i + 1)) / 2;
    return radiusM === undefined ? to - from : Math.PI * (to - from) * (2 * radiusM + to + from);
  });
  const facesByGap = positionsM.map((here, i) => {
    if (i === gaps) return 0;
    const next = cell(positionsM, i + 1);
    // Between two rings the steady profile is a logarithm; so the face is exact however near the centre it lies.
    return radiusM === undefined
      ? 1 / (next - here)
      : (2 * Math.PI) / Math.log((radiusM + next) / (radiusM + here));
  });
  return { positionsM, areasM2, facesByGap };
}

// So that a flange of a few millimetres still has a profile.
const fewestGaps = 16;
