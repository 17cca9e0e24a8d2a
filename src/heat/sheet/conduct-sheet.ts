import { cell } from '../cell.ts';
import { rowKeeper } from './row-keeper.ts';
import type { SheetGrid } from './sheet-grid.ts';
import type { SheetProperties } from '../metal/sheet-properties.ts';
import { marchTime, warmestOf } from './time-march.ts';
import type { MarchTimes } from './time-march.ts';
import { boil, boilingCelsius, boilOff, wetRow } from './wet-cloth.ts';
import type { WetCloth, WetRow } from './wet-cloth.ts';

export interface SheetTask extends MarchTimes {
  readonly grid: SheetGrid;
  readonly properties: SheetProperties;
  readonly thicknessM: number;
  /**
   * Plan area of the heated zone that, once let go, cools along with the near end and goes on feeding the sheet: for
   * each metre of width of a strip, of the whole disc. One lump, without a difference of temperature inside it: errs
   * high. 0 as in the published strip cases.
   */
  readonly zoneM2: number;
  readonly cooledFaces: 1 | 2;
  /** W/(m²·K) on each cooled face. */
  readonly convection: number;
  readonly emissivity: number;
  readonly sourceCelsius: number;
  readonly cloth?: WetCloth;
}

/** The whole sheet at every time step: `celsius[n]` is the row of nodes at `seconds[n]`. */
export interface SheetField {
  readonly seconds: readonly number[];
  readonly celsius: readonly Float64Array[];
}

/**
 * Heat along a strip of sheet, or outwards from a disc, whose near end is held at a temperature and then let go.
 *
 * One-dimensional finite volumes (Biot number about 3e-4: no difference through the thickness), backward Euler,
 * tridiagonal solve, Picard rounds on conductivity, radiation and the enthalpy difference of the step. Backward
 * Euler is kept although it is only first order: it cannot overshoot at the step-on or at the release, and a hotter
 * or longer source cannot come out colder. Crank-Nicolson rings at both steps. Once let go, the near end passes no
 * heat (symmetry of the heated zone); the far end passes none ever.
 */
export function conductSheet(task: SheetTask): SheetField {
  const state = stateOf(task);
  const seconds: number[] = [0];
  const copy = rowKeeper(state.now.length);
  const celsius: Float64Array[] = [copy(state.now)];
  marchTime(task, {
    advance: (dt, held, ahead) => {
      advance(task, state, dt, held, ahead);
    },
    warmest: () => warmestOf(state.now),
    keep: (clock) => {
      seconds.push(clock);
      celsius.push(copy(state.now));
    },
  });
  return { seconds, celsius };
}

interface State {
  readonly now: Float64Array;
  readonly before: Float64Array;
  readonly enthalpyBefore: Float64Array;
  readonly areasM2: Float64Array;
  /** Area that loses heat to the air, both faces counted. */
  readonly airM2: Float64Array;
  readonly toRight: Float64Array;
  readonly stored: Float64Array;
  readonly ratio: Float64Array;
  readonly partial: Float64Array;
  /** Cells that heat has reached; those beyond it are at ambient temperature to a millionth and are left alone. */
  live: number;
  readonly wet: WetRow | undefined;
}

function stateOf(task: SheetTask): State {
  const { positionsM } = task.grid;
  const row = (): Float64Array => new Float64Array(positionsM.length);
  const areasM2 = task.grid.areasM2.map((area, i) => (i === 0 ? area + task.zoneM2 : area));
  const wet = task.cloth && wetRow(task.cloth, positionsM);
  return {
    now: row().fill(task.ambientCelsius),
    before: row().fill(task.ambientCelsius),
    enthalpyBefore: row(),
    areasM2,
    airM2: areasM2.map((area, i) => task.cooledFaces * area - (wet ? cell(wet.coveredM2, i) : 0)),
    toRight: row(),
    stored: row(),
    ratio: row(),
    partial: row(),
    live: Math.min(positionsM.length, firstLive),
    wet,
  };
}

const mostRounds = 12;
const settledKelvin = 2e-3;

/**
 * One time step. The first guess follows the last step's change, `ahead` times over (0: start from the present
 * row); it saves a round and does not move the answer.
 */
function advance(task: SheetTask, state: State, dt: number, held: boolean, ahead: number): void {
  const { now, before, enthalpyBefore, wet } = state;
  widenLive(task, state);
  for (let i = 0; i < state.live; i++) {
    const old = now[i] ?? Number.NaN;
    now[i] = old + ahead * (old - (before[i] ?? Number.NaN));
    before[i] = old;
    enthalpyBefore[i] = task.properties.enthalpy(old);
  }
  if (held) now[0] = task.sourceCelsius;
  for (let round = 0; round < mostRounds; round++) {
    if (picardRound(task, state, dt, held) < settledKelvin) break;
  }
  if (wet) boilOff(wet, now, dt);
}

const firstLive = 40;
const liveAhead = 16;

/** A step carries heat a few cells far. Ends that are left alone pass nothing on, so no heat is lost there. */
function widenLive({ ambientCelsius }: SheetTask, state: State): void {
  const { now } = state;
  while (state.live < now.length && cell(now, state.live - liveAhead) - ambientCelsius > 1e-6) {
    state.live = Math.min(now.length, state.live + liveAhead);
  }
}

/**
 * One linearised solve (Thomas algorithm); answers the largest change in K. In three walks along the sheet, each so short that
 * the engine inlines all it calls: in one walk half the time goes into calls.
 */
function picardRound(task: SheetTask, state: State, dt: number, held: boolean): number {
  conduct(task, state);
  store(task, state, dt);
  if (state.wet) boil(state.wet, state.now, dt);
  eliminate(task, state, held);
  return substitute(state);
}

/** What a kelvin of difference to the right-hand neighbour drives through, W/K by metre of thickness; 0 at the far end. */
function conduct({ properties, grid }: SheetTask, { now, toRight, live }: State): void {
  const { conductivity } = properties;
  const { facesByGap } = grid;
  const last = live - 1;
  let here = conductivity(now[0] ?? Number.NaN);
  for (let i = 0; i < last; i++) {
    const next = conductivity(now[i + 1] ?? Number.NaN);
    toRight[i] = 0.5 * (here + next) * (facesByGap[i] ?? Number.NaN);
    here = next;
  }
  toRight[last] = 0;
}

/** What each cell takes up in the step for a kelvin of rise, W/K by metre of thickness. */
function store({ properties }: SheetTask, state: State, dt: number): void {
  const { now, before, enthalpyBefore, areasM2, stored, live } = state;
  const { density, enthalpy, heatCapacity } = properties;
  for (let i = 0; i < live; i++) {
    const here = now[i] ?? Number.NaN;
    const old = before[i] ?? Number.NaN;
    const capacity =
      Math.abs(here - old) > 1e-4
        ? (enthalpy(here) - (enthalpyBefore[i] ?? Number.NaN)) / (here - old)
        : heatCapacity(here);
    stored[i] = (density * capacity * (areasM2[i] ?? Number.NaN)) / dt;
  }
}

function eliminate(task: SheetTask, state: State, held: boolean): void {
  const { sourceCelsius, ambientCelsius, emissivity, convection, thicknessM } = task;
  const { now, before, airM2, toRight, stored, ratio, partial, live, wet } = state;
  const ambientKelvin = ambientCelsius + 273.15;
  let fromLeft = 0;
  let ratioLeft = 0;
  let partialLeft = 0;
  for (let i = 0; i < live; i++) {
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
      const loss = ((convection + radiation) / thicknessM) * (airM2[i] ?? Number.NaN);
      const taken = stored[i] ?? Number.NaN;
      let pivot = taken + loss + right + fromLeft * (1 - ratioLeft);
      let given = taken * (before[i] ?? Number.NaN) + loss * ambientCelsius + fromLeft * partialLeft;
      if (wet) {
        const boiling = cell(wet.boiling, i) / thicknessM;
        pivot += boiling;
        given += boiling * boilingCelsius;
      }
      ratioLeft = right / pivot;
      partialLeft = given / pivot;
    }
    ratio[i] = ratioLeft;
    partial[i] = partialLeft;
    fromLeft = right;
  }
}

function substitute({ now, ratio, partial, live }: State): number {
  let change = 0;
  let right = 0;
  for (let i = live - 1; i >= 0; i--) {
    right = (partial[i] ?? Number.NaN) + (ratio[i] ?? Number.NaN) * right;
    change = Math.max(change, Math.abs(right - (now[i] ?? Number.NaN)));
    now[i] = right;
  }
  return change;
}

/** W/(m²·K⁴), CODATA. */
export const stefanBoltzmann = 5.670374e-8;
