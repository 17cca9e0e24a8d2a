import { cell } from '../cell.ts';

/** Two sheets over one row of nodes, for a metre of width. Where a sheet has no metal its areas and faces are 0. */
export interface LapGrid {
  readonly positionsM: Float64Array;
  readonly heated: LayerGrid;
  readonly other: LayerGrid;
  /** Where both sheets lie on each other. */
  readonly contactM2: Float64Array;
}

export interface LayerGrid {
  readonly areasM2: Float64Array;
  /** 1 by the way to the next node; 0 where the sheet does not reach it. */
  readonly facesByGap: Float64Array;
}

export interface LapOutline {
  /** The heated sheet runs from 0 to here. */
  readonly heatedEndM: number;
  readonly otherFromM: number;
  readonly otherEndM: number;
}

/**
 * Nodes growing apart with distance from the heat, one exactly on every edge of a sheet; across the lap they stand
 * no wider than a millimetre or a fortieth of it, since heat changes sheets within a few millimetres of its edge.
 */
export function lapGrid(outline: LapOutline, firstM: number, growth: number): LapGrid {
  const { heatedEndM, otherFromM, otherEndM } = outline;
  const lapEnd = Math.min(heatedEndM, otherEndM);
  const marks = [...new Set([0, otherFromM, heatedEndM, otherEndM])].toSorted((a, b) => a - b);
  const places: number[] = [0];
  for (let n = 1; n < marks.length; n++) {
    const from = marks[n - 1] ?? Number.NaN;
    const to = marks[n] ?? Number.NaN;
    const inLap = from >= otherFromM && to <= lapEnd;
    const widest = inLap ? Math.max(1e-3, (to - from) / 40) : Infinity;
    places.push(...between(from, to, firstM, growth - 1, widest));
  }
  const positionsM = Float64Array.from(places);
  const has =
    (from: number, to: number): ((middle: number) => boolean) =>
    (middle) =>
      middle > from && middle < to;
  return {
    positionsM,
    heated: layer(positionsM, has(0, heatedEndM)),
    other: layer(positionsM, has(otherFromM, otherEndM)),
    contactM2: layer(positionsM, has(otherFromM, lapEnd)).areasM2,
  };
}

/** Places after `from` up to `to`, gaps of first + slope·x but no wider than `widest`, and at least four. */
function between(from: number, to: number, first: number, slope: number, widest: number): readonly number[] {
  const places: number[] = [];
  let here = from;
  while (here < to) {
    here += Math.min(widest, first + slope * here, (to - from) / 4);
    places.push(here);
  }
  const shrink = (to - from) / (here - from);
  return places.map((place, i) => (i === places.length - 1 ? to : from + shrink * (place - from)));
}

function layer(positionsM: Float64Array, has: (middleM: number) => boolean): LayerGrid {
  const gaps = positionsM.map((here, i) => {
    const next = cell(positionsM, i + 1);
    return i < positionsM.length - 1 && has((here + next) / 2) ? next - here : 0;
  });
  return {
    areasM2: gaps.map((gap, i) => (gap + (i === 0 ? 0 : cell(gaps, i - 1))) / 2),
    facesByGap: gaps.map((gap) => (gap === 0 ? 0 : 1 / gap)),
  };
}
