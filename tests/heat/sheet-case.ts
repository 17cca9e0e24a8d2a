import { conductSheet } from '../../src/heat/sheet/conduct-sheet.ts';
import type { SheetField, SheetTask } from '../../src/heat/sheet/conduct-sheet.ts';
import { cell } from '../../src/heat/cell.ts';
import type { SheetProperties } from '../../src/heat/metal/sheet-properties.ts';
import { sheetGrid } from '../../src/heat/sheet/sheet-grid.ts';
import type { SheetGrid } from '../../src/heat/sheet/sheet-grid.ts';

export const constantSteel: SheetProperties = {
  density: 7850,
  conductivity: () => 45,
  heatCapacity: () => 600,
  enthalpy: (celsius) => 600 * celsius,
};

/** A strip 1.2 mm thick, root at 600 °C for 60 s, 25 W/(m²·K) on both faces, on the grid and steps that the tool uses. */
export function stripTask(changed: Partial<SheetTask> = {}, lengthM = 0.4): SheetTask {
  return {
    grid: sheetGrid(lengthM, 5e-4, 1.06),
    properties: constantSteel,
    thicknessM: 1.2e-3,
    zoneM2: 0,
    cooledFaces: 2,
    convection: 25,
    emissivity: 0,
    ambientCelsius: 20,
    sourceCelsius: 600,
    holdSeconds: 60,
    endRiseKelvin: 1,
    coolSeconds: 1e6,
    steps: { firstSeconds: 0.02, growth: 1.018 },
    ...changed,
  };
}

export interface SolvedSheet {
  readonly grid: SheetGrid;
  readonly field: SheetField;
  at(millimetres: number, seconds: number): number;
  peak(millimetres: number): number;
}

export function solved(task: SheetTask): SolvedSheet {
  const field = conductSheet(task);
  const { positionsM } = task.grid;
  const place = (row: Float64Array, millimetres: number): number =>
    between(positionsM, row, millimetres / 1000);
  return {
    grid: task.grid,
    field,
    at: (millimetres, seconds) => {
      const over = field.celsius.map((row) => place(row, millimetres));
      return between(field.seconds, over, seconds);
    },
    peak: (millimetres) => Math.max(...field.celsius.map((row) => place(row, millimetres))),
  };
}

export function between(
  xs: Float64Array | readonly number[],
  ys: Float64Array | readonly number[],
  x: number,
): number {
  const right = Math.max(
    1,
    xs.findIndex((one) => one >= x),
  );
  const share = (x - cell(xs, right - 1)) / (cell(xs, right) - cell(xs, right - 1));
  return cell(ys, right - 1) + share * (cell(ys, right) - cell(ys, right - 1));
}
