import { cell } from './cell.ts';
import type { SheetProperties } from './sheet-properties.ts';
import type { StripGrid } from './strip-grid.ts';

export interface StripTask {
  readonly grid: StripGrid;
  readonly properties: SheetProperties;
  readonly thicknessM: number;
  /**
   * Length of heated zone beyond the near end that, once let go, cools along with it and goes on feeding the strip.
   * One lump, without a difference of temperature inside it: errs high. 0 as in the published strip cases.
   */
  readonly zoneM: number;
  /** W/(m²·K) on each of the two faces. */
  readonly convection: number;
  readonly emissivity: number;
  readonly ambientCelsius: number;
  readonly sourceCelsius: number;
  readonly holdSeconds: number;
  /** Cool-down ends when no place is warmer than ambient by more than this, or after `coolSeconds`. */
  readonly endRiseKelvin: number;
  readonly coolSeconds: number;
  readonly steps: TimeSteps;
}

export interface TimeSteps {
  readonly firstSeconds: number;
  readonly growth: number;
}

/** The whole strip at every time step: `celsius[n]` is the row of nodes at `seconds[n]`. */
export interface StripField {
  readonly seconds: readonly number[];
  readonly celsius: readonly Float64Array[];
}

/**
 * Heat along a strip of sheet whose near end is held at a temperature and then let go.
 *
 * One-dimensional finite volumes (Biot number about 3e-4: no difference through the thickness), backward Euler,
 * tridiagonal solve, Picard rounds on conductivity, radiation and the enthalpy difference of the step. Backward
 * Euler is kept although it is only first order: it cannot overshoot at the step-on or at the release, and a hotter
 * or longer source cannot come out colder. Crank-Nicolson rings at both steps. Once let go, the near end passes no
 * heat (symmetry of the heated zone); the far end passes none ever.
 *
 * Steps start small at the step-on and again at the release, and grow with the time since, as the changes slow.
 */
export function conductStrip(task: StripTask): StripField {
  const state = stateOf(task);
  const seconds: number[] = [0];
  const celsius: Float64Array[] = [state.now.slice()];
  let clock = 0;
  const march = (until: number, held: boolean): void => {
    let step = task.steps.firstSeconds;
    let trend = 0;
    while (clock < until && (held || warmest(state.now) - task.ambientCelsius > task.endRiseKelvin)) {
      // The last two steps share what is left, so that none is too tiny to be worth its cost.
      const left = until - clock;
      const dt = left <= step ? left : Math.min(step, left / 2);
      advance(task, state, dt, held, trend * dt);
      trend = 1 / dt;
      clock = dt === left ? until : clock + dt;
      seconds.push(clock);
      celsius.push(state.now.slice());
      step *= task.steps.growth;
    }
  };
  march(task.holdSeconds, true);
  march(task.holdSeconds + task.coolSeconds, false);
  return { seconds, celsius };
}

interface State {
  readonly now: Float64Array;
  readonly before: Float64Array;
  readonly enthalpyBefore: Float64Array;
  readonly widthsM: Float64Array;
  readonly gapsM: Float64Array;
  readonly ratio: Float64Array;
  readonly partial: Float64Array;
}

function stateOf(task: StripTask): State {
  const { positionsM, widthsM } = task.grid;
  const row = (): Float64Array => new Float64Array(positionsM.length);
  return {
    now: row().fill(task.ambientCelsius),
    before: row(),
    enthalpyBefore: row(),
    widthsM: widthsM.map((width, i) => (i === 0 ? width + task.zoneM : width)),
    gapsM: positionsM.map((here, i) => cell(positionsM, i + 1) - here),
    ratio: row(),
    partial: row(),
  };
}

const warmest = (row: Float64Array): number =>
  row.reduce((most, one) => (one > most ? one : most), -Infinity);

const mostRounds = 12;
const settledKelvin = 2e-3;

/**
 * One time step. The first guess follows the last step's change, `ahead` times over (0: start from the present
 * row); it saves a round and does not move the answer.
 */
function advance(task: StripTask, state: State, dt: number, held: boolean, ahead: number): void {
  const { now, before, enthalpyBefore } = state;
  for (let i = 0; i < now.length; i++) {
    const old = cell(now, i);
    now[i] = old + ahead * (old - cell(before, i));
    before[i] = old;
    enthalpyBefore[i] = task.properties.enthalpy(old);
  }
  if (held) now[0] = task.sourceCelsius;
  for (let round = 0; round < mostRounds; round++) {
    if (picardRound(task, state, dt, held) < settledKelvin) return;
  }
}

/** One linearised solve (Thomas algorithm); answers the largest change in K. */
function picardRound(task: StripTask, state: State, dt: number, held: boolean): number {
  const { properties, ambientCelsius, emissivity, convection, thicknessM } = task;
  const { now, before, enthalpyBefore, widthsM, gapsM, ratio, partial } = state;
  const last = now.length - 1;
  const ambientKelvin = ambientCelsius + 273.15;
  let here = cell(now, 0);
  let conductivityHere = properties.conductivity(here);
  let fromLeft = 0;
  for (let i = 0; i <= last; i++) {
    const next = i < last ? cell(now, i + 1) : here;
    const conductivityNext = i < last ? properties.conductivity(next) : 0;
    const toRight = i < last ? (0.5 * (conductivityHere + conductivityNext)) / cell(gapsM, i) : 0;
    if (i === 0 && held) {
      ratio[0] = 0;
      partial[0] = task.sourceCelsius;
    } else {
      const old = cell(before, i);
      const kelvin = here + 273.15;
      const radiation =
        emissivity *
        stefanBoltzmann *
        (kelvin * kelvin + ambientKelvin * ambientKelvin) *
        (kelvin + ambientKelvin);
      const loss = ((2 * (convection + radiation)) / thicknessM) * cell(widthsM, i);
      const capacity =
        Math.abs(here - old) > 1e-4
          ? (properties.enthalpy(here) - cell(enthalpyBefore, i)) / (here - old)
          : properties.heatCapacity(here);
      const stored = (properties.density * capacity * cell(widthsM, i)) / dt;
      const ratioLeft = i > 0 ? cell(ratio, i - 1) : 0;
      const partialLeft = i > 0 ? cell(partial, i - 1) : 0;
      const pivot = stored + loss + toRight + fromLeft * (1 - ratioLeft);
      ratio[i] = toRight / pivot;
      partial[i] = (stored * old + loss * ambientCelsius + fromLeft * partialLeft) / pivot;
    }
    fromLeft = toRight;
    here = next;
    conductivityHere = conductivityNext;
  }
  let change = 0;
  let right = 0;
  for (let i = last; i >= 0; i--) {
    right = cell(partial, i) + cell(ratio, i) * right;
    change = Math.max(change, Math.abs(right - cell(now, i)));
    now[i] = right;
  }
  return change;
}

/** W/(m²·K⁴), CODATA. */
const stefanBoltzmann = 5.670374e-8;
