import { describe, expect, test } from 'vitest';
import { aluminium } from '../../src/heat/metal/aluminium.ts';
import { carbonSteel } from '../../src/heat/metal/carbon-steel.ts';
import { cell } from '../../src/heat/cell.ts';
import type { SheetTask } from '../../src/heat/sheet/conduct-sheet.ts';
import { mildSteel } from '../../src/heat/metal/mild-steel.ts';
import { usualSteps } from '../../src/heat/sheet/held-sheet.ts';
import { sheetGrid } from '../../src/heat/sheet/sheet-grid.ts';
import { stainlessSteel } from '../../src/heat/metal/stainless-steel.ts';
import { constantSteel, solved, stripTask } from './sheet-case.ts';

describe('heat balance', () => {
  const cases: readonly (readonly [string, SheetTask])[] = [
    ['constant', stripTask()],
    [
      'steel through the 735 °C peak, radiating',
      stripTask({ properties: carbonSteel, sourceCelsius: 900, emissivity: 0.7 }),
    ],
    ['aluminium', stripTask({ properties: aluminium, sourceCelsius: 500 })],
    ['with a heated zone', stripTask({ properties: carbonSteel, zoneM2: 0.02 })],
    ['short flange', stripTask({ properties: carbonSteel, sourceCelsius: 800 }, 0.03)],
  ];
  test.each(cases)('%s: after release, what is lost is what went out through the faces', (_, task) => {
    const { field, grid } = solved(task);
    const widths = grid.areasM2.map((width, i) => (i === 0 ? width + task.zoneM2 : width));
    const sum = (row: Float64Array, of: (celsius: number) => number): number =>
      row.reduce((total, celsius, i) => total + cell(widths, i) * of(celsius), 0);
    const loss = (celsius: number): number => {
      const kelvin = celsius + 273.15;
      return (
        2 * (task.convection * (celsius - 20) + task.emissivity * 5.670374e-8 * (kelvin ** 4 - 293.15 ** 4))
      );
    };
    const { density, enthalpy } = task.properties;
    const stored = (row: Float64Array): number => sum(row, (c) => density * task.thicknessM * enthalpy(c));
    const released = field.seconds.findIndex((seconds) => seconds >= task.holdSeconds);
    let given = 0;
    field.celsius.forEach((row, n) => {
      if (n > released) given += (cell(field.seconds, n) - cell(field.seconds, n - 1)) * sum(row, loss);
    });
    const first = field.celsius[released];
    const last = field.celsius.at(-1);
    if (!first || !last) throw new Error('no rows');
    expect(given / (stored(first) - stored(last))).toBeCloseTo(1, 4);
  });

  test('held long, the losses of the whole fin are the power of the steady fin: 953 W per metre of width', () => {
    // Steady fin √(2hkd)·θ, 45 W/mK, 25 W/m²K, 1.2 mm, 580 K; any heat transfer textbook.
    const { field, grid } = solved(stripTask({ holdSeconds: 3600 }, 1));
    const row = field.celsius[field.seconds.findIndex((seconds) => seconds >= 3600)];
    if (!row) throw new Error('no row');
    const watts = row.reduce((total, celsius, i) => total + cell(grid.areasM2, i) * 50 * (celsius - 20), 0);
    expect(Math.abs(watts / 953 - 1)).toBeLessThan(0.005);
  });
});

describe('heat put in by the held root', () => {
  const disc = { grid: sheetGrid(0.4, 5e-4, 1.06, 0.015), zoneM2: Math.PI * 0.015 ** 2 } as const;
  test.each<readonly [string, SheetTask]>([
    ['strip', stripTask({ properties: carbonSteel, emissivity: 0.3, zoneM2: 0.02 })],
    ['disc', stripTask({ properties: carbonSteel, emissivity: 0.3, ...disc })],
    ['disc through the 735 °C peak', stripTask({ properties: carbonSteel, sourceCelsius: 900, ...disc })],
    ['one cooled face, short', stripTask({ properties: aluminium, cooledFaces: 1, holdSeconds: 300 }, 0.1)],
  ])('%s: is what is stored and lost beyond it, to 0.1 %', (_, task) => {
    const { field, grid } = solved(task);
    const { density, enthalpy, conductivity } = task.properties;
    const released = field.seconds.findIndex((seconds) => seconds >= task.holdSeconds);
    let given = 0;
    let lost = 0;
    for (let n = 1; n <= released; n++) {
      const dt = cell(field.seconds, n) - cell(field.seconds, n - 1);
      field.celsius[n]?.forEach((celsius, i, row) => {
        if (i === 0) {
          const next = cell(row, 1);
          const k = (conductivity(celsius) + conductivity(next)) / 2;
          given += dt * k * task.thicknessM * cell(grid.facesByGap, 0) * (celsius - next);
          return;
        }
        const flux =
          task.convection * (celsius - 20) +
          task.emissivity * 5.670374e-8 * ((celsius + 273.15) ** 4 - 293.15 ** 4);
        lost += dt * task.cooledFaces * cell(grid.areasM2, i) * flux;
      });
    }
    let stored = 0;
    field.celsius[released]?.forEach((celsius, i) => {
      if (i > 0)
        stored += density * task.thicknessM * cell(grid.areasM2, i) * (enthalpy(celsius) - enthalpy(20));
    });
    expect(Math.abs((stored + lost) / given - 1)).toBeLessThan(1e-3);
  });
});

// Eight times smaller steps and four times smaller cells than the tool's; holds, metals and shapes across its range.
describe('finer steps and cells change no peak rise by 1 %', () => {
  test.each([
    [carbonSteel, 60, 1.2e-3, undefined],
    [carbonSteel, 5, 0.4e-3, undefined],
    [stainlessSteel, 5, 0.4e-3, 0.02],
    [stainlessSteel, 0.5, 0.4e-3, 0.02],
    [mildSteel, 5, 0.4e-3, undefined],
    [aluminium, 0.5, 1.2e-3, 0.005],
    [aluminium, 900, 4e-3, 0.1],
  ])('%#', (properties, holdSeconds, thicknessM, radiusM) => {
    const of = { properties, holdSeconds, thicknessM, convection: 8, emissivity: 0.3, sourceCelsius: 500 };
    const zoneM2 = radiusM === undefined ? 0.02 : Math.PI * radiusM ** 2;
    const steps = usualSteps(holdSeconds, radiusM === undefined ? 'strip' : 'disc');
    const tool = solved(stripTask({ ...of, zoneM2, grid: sheetGrid(2, 5e-4, 1.06, radiusM), steps }));
    const { firstSeconds, growth } = steps;
    const fine = solved(
      stripTask({
        ...of,
        zoneM2,
        grid: sheetGrid(2, 1.25e-4, 1.015, radiusM),
        steps: { firstSeconds: firstSeconds / 8, growth: 1 + (growth - 1) / 8 },
      }),
    );
    for (const mm of [5, 10, 20, 40, 80, 120]) {
      const exact = fine.peak(mm) - 20;
      if (exact < 5) continue;
      expect(Math.abs((tool.peak(mm) - 20) / exact - 1), `${mm} mm`).toBeLessThan(0.01);
    }
  });
});

test('no place is ever hotter than the source or colder than the surroundings', () => {
  for (const sourceCelsius of [100, 735, 740, 1200]) {
    const { field } = solved(stripTask({ properties: carbonSteel, sourceCelsius, holdSeconds: 3 }));
    for (const row of field.celsius) {
      expect(Math.max(...row)).toBeLessThanOrEqual(sourceCelsius + 1e-6);
      expect(Math.min(...row)).toBeGreaterThanOrEqual(20 - 1e-6);
    }
  }
});

// Lumped cooling, exp(−2ht/ρcd) with time constant 113 s for these values; a flange of 3 mm has no profile left.
test('a short flange let go cools as one lump', () => {
  const flange = solved(stripTask({ properties: constantSteel }, 0.003));
  const after = flange.at(1.5, 173) - 20;
  expect(Math.abs(after / (580 * Math.exp(-1)) - 1)).toBeLessThan(0.02);
});

test('time steps meet the release exactly and end when all is cold', () => {
  const { field } = solved(stripTask({ holdSeconds: 7.3 }));
  expect(field.seconds).toContain(7.3);
  expect(Math.max(...(field.celsius.at(-1) ?? []))).toBeLessThanOrEqual(21);
});
