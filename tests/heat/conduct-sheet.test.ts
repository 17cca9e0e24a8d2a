import { describe, expect, test } from 'vitest';
import { aluminium } from '../../src/heat/aluminium.ts';
import { carbonSteel } from '../../src/heat/carbon-steel.ts';
import { cell } from '../../src/heat/cell.ts';
import type { SheetTask } from '../../src/heat/conduct-sheet.ts';
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
