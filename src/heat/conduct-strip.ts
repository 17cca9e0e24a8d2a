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
  const keep = rowKeeper(state.now.length);
  const celsius: Float64Array[] = [keep(state.now)];
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
      celsius.push(keep(state.now));
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
  readonly toRight: Float64Array;
  readonly stored: Float64Array;
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
    gapsM: positionsM.map((here, i) => (positionsM[i + 1] ?? Number.NaN) - here),
    toRight: row(),
    stored: row(),
    ratio: row(),
    partial: row(),
  };
}

function warmest(row: Float64Array): number {
  let most = -Infinity;
  for (const one of row) if (one > most) most = one;
  return most;
}

const rowsInBlock = 64;

/** Copies rows into blocks of many: a buffer for each of 600 rows costs more time than all their numbers. */
function rowKeeper(length: number): (row: Float64Array) => Float64Array {
  let block = new Float64Array(0);
  let used = 0;
  return (row) => {
    if (used === block.length) {
      block = new Float64Array(length * rowsInBlock);
      used = 0;
    }
    const copy = block.subarray(used, used + length);
    copy.set(row);
    used += length;
    return copy;
  };
}

const mostRounds = 12;
const settledKelvin = 2e-3;

/**
 * One time step. The first guess follows the last step's change, `ahead` times over (0: start from the present
 * row); it saves a round and does not move the answer.
 */
function advance(task: StripTask, state: State, dt: number, held: boolean, ahead: number): void {
  const { now, before, enthalpyBefore } = state;
  for (let i = 0; i < now.length; i++) {
    const old = now[i] ?? Number.NaN;
    now[i] = old + ahead * (old - (before[i] ?? Number.NaN));
    before[i] = old;
    enthalpyBefore[i] = task.properties.enthalpy(old);
  }
  if (held) now[0] = task.sourceCelsius;
  for (let round = 0; round < mostRounds; round++) {
    if (picardRound(task, state, dt, held) < settledKelvin) return;
  }
}

/**
 * One linearised solve (Thomas algorithm); answers the largest change in K. In three walks along the strip, each so short that
 * the engine inlines all it calls: in one walk half the time goes into calls.
 */
function picardRound(task: StripTask, state: State, dt: number, held: boolean): number {
  conduct(task.properties, state);
  store(task, state, dt);
  eliminate(task, state, held);
  return substitute(state);
}

/** What a kelvin of difference to the right-hand neighbour drives through, W/(m²·K); 0 at the far end. */
function conduct({ conductivity }: SheetProperties, { now, gapsM, toRight }: State): void {
  const last = now.length - 1;
  let here = conductivity(now[0] ?? Number.NaN);
  for (let i = 0; i < last; i++) {
    const next = conductivity(now[i + 1] ?? Number.NaN);
    toRight[i] = (0.5 * (here + next)) / (gapsM[i] ?? Number.NaN);
    here = next;
  }
  toRight[last] = 0;
}

/** What each cell takes up in the step for a kelvin of rise, W/(m²·K). */
function store({ properties }: StripTask, state: State, dt: number): void {
  const { now, before, enthalpyBefore, widthsM, stored } = state;
  const { density, enthalpy, heatCapacity } = properties;
  for (let i = 0; i < now.length; i++) {
    const here = now[i] ?? Number.NaN;
    const old = before[i] ?? Number.NaN;
    const capacity =
      Math.abs(here - old) > 1e-4
        ? (enthalpy(here) - (enthalpyBefore[i] ?? Number.NaN)) / (here - old)
        : heatCapacity(here);
    stored[i] = (density * capacity * (widthsM[i] ?? Number.NaN)) / dt;
  }
}

function eliminate(task: StripTask, state: State, held: boolean): void {
  const { sourceCelsius, ambientCelsius, emissivity, convection, thicknessM } = task;
  const { now, before, widthsM, toRight, stored, ratio, partial } = state;
  const ambientKelvin = ambientCelsius + 273.15;
  let fromLeft = 0;
  let ratioLeft = 0;
  let partialLeft = 0;
  for (let i = 0; i < now.length; i++) {
    const right = toRight[i] ?? Number.NaN;
    if (i === 0 && held) {
      ratioLeft = 0;
      partialLeft = sourceCelsius;
    } else {
      const kelvin = (now[i] ?? Number.NaN) + 273.15;
      const radiation =
        emissivity *
        stefanBoltzmann *
        (kelvin * kelvin + ambientKelvin * ambientKelvin) *
        (kelvin + ambientKelvin);
      const loss = ((2 * (convection + radiation)) / thicknessM) * (widthsM[i] ?? Number.NaN);
      const taken = stored[i] ?? Number.NaN;
      const pivot = taken + loss + right + fromLeft * (1 - ratioLeft);
      ratioLeft = right / pivot;
      partialLeft =
        (taken * (before[i] ?? Number.NaN) + loss * ambientCelsius + fromLeft * partialLeft) / pivot;
    }
    ratio[i] = ratioLeft;
    partial[i] = partialLeft;
    fromLeft = right;
  }
}

function substitute({ now, ratio, partial }: State): number {
  let change = 0;
  let right = 0;
  for (let i = now.length - 1; i >= 0; i--) {
    right = (partial[i] ?? Number.NaN) + (ratio[i] ?? Number.NaN) * right;
    change = Math.max(change, Math.abs(right - (now[i] ?? Number.NaN)));
    now[i] = right;
  }
  return change;
}

/** W/(m²·K⁴), CODATA. */
const stefanBoltzmann = 5.670374e-8;
