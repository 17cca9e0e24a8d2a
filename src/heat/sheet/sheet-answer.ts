import { cell } from '../cell.ts';
import type { SheetField } from './conduct-sheet.ts';
import { pointHistory } from '../point-history.ts';
import type { PointHistory } from '../point-history.ts';

export interface SheetHistory {
  /** At a distance from the edge of the heated zone along the sheet; 0 is the source itself. */
  at(distanceMm: number): PointAnswer;
}

export type PointAnswer =
  { readonly ok: true; readonly point: PointHistory } | { readonly ok: false; readonly reason: string };

export interface SolvedSheet {
  readonly field: SheetField;
  readonly positionsM: Float64Array;
  readonly sourceCelsius: number;
  readonly ambientCelsius: number;
  /** Where the metal begins and ends, mm from the edge of the heated zone. Absent: at the zone, and nowhere. */
  readonly fromMm?: number;
  readonly endMm?: number;
  /** What the rise is multiplied by besides the margin; 1 when absent. */
  readonly riseFactor?: number;
  /** How many heatings the field stands for as one hold; 1 when absent. */
  readonly heatings?: number;
}

/** What is added to every computed rise, for what the steps in time and space cost; see `solveHeldSheet`. */
const margin = 1.015;

/** Reads the history of any place off a solved sheet, with the margin and never above the source. */
export function historyAlong(solved: SolvedSheet): SheetHistory {
  const { field, positionsM, sourceCelsius, ambientCelsius, riseFactor = 1, heatings } = solved;
  const withMargin = (celsius: number): number =>
    Math.min(sourceCelsius, ambientCelsius + riseFactor * margin * (celsius - ambientCelsius));
  const ceilingCelsius = withMargin(Math.max(...(field.celsius.at(-1) ?? [Number.NaN])));
  const lastM = cell(positionsM, positionsM.length - 1);
  return {
    at: (distanceMm) => {
      const off = outOfReach(distanceMm, solved);
      if (off !== undefined) return { ok: false, reason: off };
      // Past the modelled length its last place answers for all: it is nearer, so it errs high.
      const celsius = rowAt(field, positionsM, Math.min(distanceMm / 1000, lastM)).map(withMargin);
      return { ok: true, point: pointHistory({ seconds: field.seconds, celsius }, ceilingCelsius, heatings) };
    },
  };
}

function outOfReach(distanceMm: number, { fromMm = 0, endMm }: SolvedSheet): string | undefined {
  const most = endMm ?? 20000;
  if (distanceMm >= fromMm && distanceMm <= most) return undefined;
  if (distanceMm > most && endMm !== undefined) {
    return `distance ${distanceMm} mm lies beyond the free end of the sheet at ${endMm} mm`;
  }
  return `distance ${distanceMm} mm is outside what can be computed: ${fromMm} to ${most} mm`;
}

/** A straight line between two nodes lies above the sagging profile between them: errs high. */
function rowAt(field: SheetField, positionsM: Float64Array, distanceM: number): number[] {
  const found = positionsM.findIndex((position) => position >= distanceM);
  const right = found === -1 ? positionsM.length - 1 : Math.max(1, found);
  const from = cell(positionsM, right - 1);
  const share = Math.min(1, (distanceM - from) / (cell(positionsM, right) - from));
  return field.celsius.map((row) => cell(row, right - 1) * (1 - share) + cell(row, right) * share);
}

/**
 * At every node and time the higher of two solutions. Both march through the same times; where one is cold and has
 * ended, the other alone counts.
 */
export function higherOf(one: SheetField, other: SheetField): SheetField {
  const [long, short] = one.seconds.length >= other.seconds.length ? [one, other] : [other, one];
  return {
    seconds: long.seconds,
    celsius: long.celsius.map((row, n) => {
      const beside = short.celsius[n];
      return beside ? row.map((celsius, i) => Math.max(celsius, cell(beside, i))) : row;
    }),
  };
}
