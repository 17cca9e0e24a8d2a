import { cell } from '../../../src/heat/cell.ts';
import { conductSheet } from '../../../src/heat/sheet/conduct-sheet.ts';
import { sheetGrid } from '../../../src/heat/sheet/sheet-grid.ts';
import { constantSteel, solved, stripTask } from '../../heat/sheet-case.ts';
import type { SolvedSheet } from '../../heat/sheet-case.ts';
import { number } from './computers.ts';
import type { Given } from './computers.ts';

const kept = new Map<string, SolvedSheet>();

/** 45 W/(m·K), 600 J/(kg·K), 7850 kg/m³, 25 W/(m²·K) on both faces, 600 °C into 20 °C; steps and cells finer than the tool's. */
export function fineSheet(given: Given): number {
  const thicknessM = number(given, 'thicknessMm') / 1000;
  const holdSeconds = number(given, 'holdSeconds');
  const radius = given['radiusMm'];
  const radiusM = typeof radius === 'number' ? radius / 1000 : undefined;
  const key = [thicknessM, holdSeconds, radiusM].join(' ');
  const task = stripTask({
    thicknessM,
    holdSeconds,
    grid: sheetGrid(1, 2.5e-4, 1.03, radiusM),
    steps: { firstSeconds: 0.005, growth: 1.002 },
  });
  const sheet = kept.get(key) ?? solved(task);
  kept.set(key, sheet);
  return sheet.at(number(given, 'distanceMm'), number(given, 'seconds'));
}

/**
 * A dose of heat on a point of a sheet: a disc of half a millimetre held for a hundredth of a second, its answer scaled to the
 * dose. With constant values everything is proportional.
 */
export function pointDoseCelsius(given: Given): number {
  const radiusM = 5e-4;
  const task = stripTask({
    grid: sheetGrid(0.4, 5e-5, 1.03, radiusM),
    zoneM2: Math.PI * radiusM * radiusM,
    sourceCelsius: 1e6,
    holdSeconds: 0.01,
    steps: { firstSeconds: 1e-4, growth: 1.005 },
    coolSeconds: 100,
  });
  const sheet = doseSheet ?? { ...solved(task), field: conductSheet(task) };
  doseSheet = sheet;
  const { areasM2 } = task.grid;
  const released = sheet.field.seconds.findIndex((seconds) => seconds >= task.holdSeconds);
  let dose = 0;
  sheet.field.celsius[released]?.forEach((celsius, i) => {
    const area = cell(areasM2, i) + (i === 0 ? task.zoneM2 : 0);
    dose += constantSteel.density * 600 * task.thicknessM * area * (celsius - 20);
  });
  const rise = sheet.at(number(given, 'radiusMm') - 1000 * radiusM, number(given, 'seconds')) - 20;
  return 20 + (rise * number(given, 'joules')) / dose;
}
let doseSheet: SolvedSheet | undefined;
