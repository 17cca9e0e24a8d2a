import { cell } from '../cell.ts';
import type { SheetAnswer } from './held-sheet.ts';
import type { TemperatureHistory } from '../point-history.ts';

/** How hot it is along the sheet; every row in °C, one value for each distance. */
export interface HeatCurve {
  /** From the edge of the heated zone, ascending, mm. */
  readonly distancesMm: readonly number[];
  /** The highest that each place ever reaches: not all at one time. */
  readonly peakCelsius: readonly number[];
  /** At one time, the end of the last heating; empty where no history is computed. */
  readonly endOfHoldCelsius: readonly number[];
}

type Solved = Extract<SheetAnswer, { readonly ok: true }>['history'];

/** Reads evenly spaced places off a solved heat, from the source to `reachMm`. `holdSeconds` is the whole time of heating. */
export function heatCurve(history: Solved, reachMm: number, holdSeconds: number, gaps = 80): HeatCurve {
  const distancesMm: number[] = [];
  const peakCelsius: number[] = [];
  const endOfHoldCelsius: number[] = [];
  for (let n = 0; n <= gaps; n += 1) {
    const distanceMm = (reachMm * n) / gaps;
    const place = history.at(distanceMm);
    if (!place.ok) continue;
    distancesMm.push(distanceMm);
    peakCelsius.push(place.point.peakCelsius);
    endOfHoldCelsius.push(celsiusAt(place.point, holdSeconds));
  }
  return { distancesMm, peakCelsius, endOfHoldCelsius };
}

/** A straight line between the two times beside it. */
function celsiusAt({ seconds, celsius }: TemperatureHistory, at: number): number {
  const found = seconds.findIndex((one) => one >= at);
  if (found <= 0) return cell(celsius, found === 0 ? 0 : celsius.length - 1);
  const from = cell(seconds, found - 1);
  const share = (at - from) / (cell(seconds, found) - from);
  return cell(celsius, found - 1) * (1 - share) + cell(celsius, found) * share;
}
