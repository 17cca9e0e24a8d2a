import type { HeatCurve } from '../heat/sheet/heat-curve.ts';
import { heatCurve } from '../heat/sheet/heat-curve.ts';
import type { SheetHistory } from '../heat/sheet/sheet-answer.ts';
import type { HeatSolver, HeldHeat } from '../heat/sheet/stay-clear.ts';
import { endAt } from './heat/neighbour-strip.ts';

/**
 * What each place goes through when the sheet ends there: the answer where nobody says where it ends. One solve a place, so it is asked
 * sparingly.
 */
export function historyAtEnd(solve: HeatSolver, heat: HeldHeat): SheetHistory {
  return {
    at: (distanceMm) => {
      const end = endAt(distanceMm);
      const solved = solve({ ...heat, ...(end === undefined ? {} : { freeEndMm: end }) });
      return solved.ok ? solved.history.at(distanceMm) : solved;
    },
  };
}

/** Fewer places than for a sheet that is solved once, with straight lines between: they lie above a curve that falls ever slower. */
const places = 16;

export function curveAtEnd(history: SheetHistory, reachMm: number, holdSeconds: number): HeatCurve {
  return heatCurve(history, reachMm, holdSeconds, places);
}
