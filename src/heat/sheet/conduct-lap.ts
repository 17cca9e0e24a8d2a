import { cell } from '../cell.ts';
import { stefanBoltzmann } from './conduct-sheet.ts';
import type { SheetField } from './conduct-sheet.ts';
import type { LapGrid, LayerGrid } from './lap-grid.ts';
import { eliminate, substitute } from './lap-blocks.ts';
import type { BlockRows } from './lap-blocks.ts';
import { rowKeeper } from './row-keeper.ts';
import type { SheetProperties } from '../metal/sheet-properties.ts';
import { marchTime, warmestOf } from './time-march.ts';
import type { MarchTimes } from './time-march.ts';

export interface LapTask extends MarchTimes {
  readonly grid: LapGrid;
  readonly heated: LapLayer;
  readonly other: LapLayer;
  /** W/(m²·K) between the two sheets wherever both lie on each other. */
  readonly contact: number;
  /** Heated zone behind the near end of the heated sheet, m² for each metre of width; see `SheetTask`. */
  readonly zoneM2: number;
  /** W/(m²·K) on each cooled face. */
  readonly convection: number;
  readonly emissivity: number;
  readonly sourceCelsius: number;
}

export interface LapLayer {
  readonly properties: SheetProperties;
  readonly thicknessM: number;
  /** Faces that lose heat where the sheet lies alone; one less in the lap. 0: none anywhere. */
  readonly cooledFaces: 0 | 1 | 2;
}

export interface LapField {
  readonly heated: SheetField;
  readonly other: SheetField;
}

/**
 * Heat along two sheets that lie on each other for a stretch, the near end of one held at a temperature and then
 * let go. Method and boundaries of `conductSheet`; the two temperatures of a place are solved together (blocks of
 * two by two in place of single numbers), so what leaves one sheet through the contact enters the other.
 */
export function conductLap(task: LapTask): LapField {
  const heated = layerState(task, task.heated, task.grid.heated, task.zoneM2);
  const other = layerState(task, task.other, task.grid.other, 0);
  const blocks = blockRows(task);
  const seconds: number[] = [0];
  const copy = rowKeeper(heated.now.length);
  const rows = { heated: [copy(heated.now)], other: [copy(other.now)] };
  marchTime(task, {
    advance: (dt, held, ahead) => {
      widenLive(task, blocks, heated.now, other.now);
      const { live } = blocks;
      predict(heated, live, ahead);
      predict(other, live, ahead);
      if (held) heated.now[0] = task.sourceCelsius;
      for (let round = 0; round < mostRounds; round++) {
        linearise(task, heated, live, dt);
        linearise(task, other, live, dt);
        eliminate(blocks, heated, other, held);
        if (substitute(blocks, heated.now, other.now) < settledKelvin) break;
      }
    },
    warmest: () => Math.max(warmestOf(heated.now), warmestOf(other.now)),
    keep: (clock) => {
      seconds.push(clock);
      rows.heated.push(copy(heated.now));
      rows.other.push(copy(other.now));
    },
  });
  return { heated: { seconds, celsius: rows.heated }, other: { seconds, celsius: rows.other } };
}

const mostRounds = 12;
const settledKelvin = 2e-3;

interface LayerState {
  readonly layer: LapLayer;
  readonly facesByGap: Float64Array;
  readonly areasM2: Float64Array;
  readonly airM2: Float64Array;
  readonly now: Float64Array;
  readonly before: Float64Array;
  readonly enthalpyBefore: Float64Array;
  /** W/K to the next node. */
  readonly toRight: Float64Array;
  /** W/K of what is stored and lost, and W of what both give back. */
  readonly taken: Float64Array;
  readonly given: Float64Array;
}

function layerState(task: LapTask, layer: LapLayer, grid: LayerGrid, zoneM2: number): LayerState {
  const areasM2 = grid.areasM2.map((area, i) => (i === 0 ? area + zoneM2 : area));
  const row = (): Float64Array => new Float64Array(areasM2.length);
  return {
    layer,
    facesByGap: grid.facesByGap,
    areasM2,
    airM2: areasM2.map((area, i) => Math.max(0, layer.cooledFaces * area - cell(task.grid.contactM2, i))),
    now: row().fill(task.ambientCelsius),
    before: row().fill(task.ambientCelsius),
    enthalpyBefore: row(),
    toRight: row(),
    taken: row(),
    given: row(),
  };
}

/** The first guess of a step follows the last step's change; it saves a round and does not move the answer. */
function predict({ now, before, enthalpyBefore, layer }: LayerState, live: number, ahead: number): void {
  for (let i = 0; i < live; i++) {
    const old = now[i] ?? Number.NaN;
    now[i] = old + ahead * (old - (before[i] ?? Number.NaN));
    before[i] = old;
    enthalpyBefore[i] = layer.properties.enthalpy(old);
  }
}

function linearise(task: LapTask, state: LayerState, live: number, dt: number): void {
  const { now, before, enthalpyBefore, areasM2, airM2, facesByGap, toRight, taken, given, layer } = state;
  const { density, conductivity, enthalpy, heatCapacity } = layer.properties;
  const { thicknessM } = layer;
  const { ambientCelsius, emissivity, convection } = task;
  const ambientKelvin = ambientCelsius + 273.15;
  for (let i = 0; i < live; i++) {
    const area = areasM2[i] ?? Number.NaN;
    if (area === 0) {
      // No metal: stays as it is, and passes nothing.
      taken[i] = 1;
      given[i] = before[i] ?? Number.NaN;
      toRight[i] = 0;
      continue;
    }
    const here = now[i] ?? Number.NaN;
    const old = before[i] ?? Number.NaN;
    const capacity =
      Math.abs(here - old) > 1e-4
        ? (enthalpy(here) - (enthalpyBefore[i] ?? Number.NaN)) / (here - old)
        : heatCapacity(here);
    const stored = (density * capacity * area * thicknessM) / dt;
    const kelvin = here + 273.15;
    const radiation =
      emissivity *
      stefanBoltzmann *
      (kelvin * kelvin + ambientKelvin * ambientKelvin) *
      (kelvin + ambientKelvin);
    const loss = (convection + radiation) * (airM2[i] ?? Number.NaN);
    taken[i] = stored + loss;
    given[i] = stored * old + loss * ambientCelsius;
    const byGap = facesByGap[i] ?? Number.NaN;
    toRight[i] =
      byGap === 0
        ? 0
        : 0.5 * (conductivity(here) + conductivity(now[i + 1] ?? Number.NaN)) * byGap * thicknessM;
  }
  toRight[live - 1] = 0;
}

function blockRows({ grid, contact, sourceCelsius }: LapTask): BlockRows {
  const across = grid.contactM2.map((area) => area * contact);
  const row = (): Float64Array => new Float64Array(across.length);
  return {
    sourceCelsius,
    live: Math.min(across.length, firstLive),
    across,
    leadHH: row(),
    leadHO: row(),
    leadOH: row(),
    leadOO: row(),
    freeH: row(),
    freeO: row(),
  };
}

const firstLive = 60;
const liveAhead = 24;

function widenLive(
  { ambientCelsius }: LapTask,
  blocks: BlockRows,
  heated: Float64Array,
  other: Float64Array,
): void {
  const warm = (row: Float64Array): boolean => cell(row, blocks.live - liveAhead) - ambientCelsius > 1e-6;
  while (blocks.live < heated.length && (warm(heated) || warm(other))) {
    blocks.live = Math.min(heated.length, blocks.live + liveAhead);
  }
}
