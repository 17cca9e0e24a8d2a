import { describe, expect, test } from 'vitest';
import { aluminium } from '../../src/heat/metal/aluminium.ts';
import { carbonSteel } from '../../src/heat/metal/carbon-steel.ts';
import { mildSteel } from '../../src/heat/metal/mild-steel.ts';
import { stainlessSteel } from '../../src/heat/metal/stainless-steel.ts';

describe('carbon steel, EN 1993-1-2:2005, 3.4.1', () => {
  test.each([
    [20, 439.8, 53.334],
    [100, 487.62, 50.67],
    [200, 529.76, 47.34],
    [300, 564.74, 44.01],
    [400, 605.88, 40.68],
    [500, 666.5, 37.35],
    [600, 760.22, 34.02],
    [700, 1008.16, 30.69],
    [735, 5000, 29.52],
    [800, 803.26, 27.3],
    [900, 650, 27.3],
    [1150, 650, 27.3],
  ])('at %d °C', (celsius, heatCapacity, conductivity) => {
    expect(Math.abs(carbonSteel.heatCapacity(celsius) - heatCapacity)).toBeLessThan(0.01);
    // The clause gives two branches at 800 °C, 27.36 and 27.3.
    expect(Math.abs(carbonSteel.conductivity(celsius) - conductivity)).toBeLessThan(0.006);
  });

  test('heat taken up from 20 to 600 and to 800 °C, kJ/kg', () => {
    const from20 = (celsius: number): number =>
      (carbonSteel.enthalpy(celsius) - carbonSteel.enthalpy(20)) / 1000;
    expect(from20(600)).toBeCloseTo(335.74, 2);
    expect(from20(800)).toBeCloseTo(561.6, 1);
  });
});

test('mild steel conducts a fifth better, 60 to 65 W/mK when cold (from memory)', () => {
  expect(mildSteel.conductivity(20)).toBeGreaterThan(60);
  expect(mildSteel.conductivity(20)).toBeLessThan(65);
  expect(mildSteel.heatCapacity(400)).toBeCloseTo(605.88, 2);
});

test('aluminium 6xxx, EN 1999-1-2 (from memory)', () => {
  expect(aluminium.conductivity(20)).toBeCloseTo(191.4, 6);
  expect(aluminium.conductivity(200)).toBeCloseTo(204, 6);
  expect(aluminium.heatCapacity(20)).toBeCloseTo(911.2, 6);
  expect(aluminium.heatCapacity(200)).toBeCloseTo(985, 6);
  expect(aluminium.density).toBe(2700);
});

test('austenitic stainless, EN 1993-1-2 annex C (from memory)', () => {
  expect(stainlessSteel.conductivity(300)).toBeCloseTo(18.41, 2);
  expect(stainlessSteel.heatCapacity(300)).toBeCloseTo(511.43, 2);
});

// Mathematics, no source: the solver keeps its heat balance only if this holds.
test.each([
  ['carbon steel', carbonSteel],
  ['mild steel', mildSteel],
  ['aluminium', aluminium],
  ['stainless', stainlessSteel],
])('enthalpy of %s is the integral of its heat capacity', (_, metal) => {
  for (let celsius = -30; celsius < 1190; celsius += 0.5) {
    const steps = 20;
    let sum = 0;
    for (let n = 0; n < steps; n++) sum += metal.heatCapacity(celsius + ((n + 0.5) * 0.5) / steps);
    const midpoint = (sum * 0.5) / steps;
    const exact = metal.enthalpy(celsius + 0.5) - metal.enthalpy(celsius);
    expect(Math.abs(exact - midpoint) / midpoint).toBeLessThan(1e-3);
  }
});
