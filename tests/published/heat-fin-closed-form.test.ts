import { describe, expect, test } from 'vitest';
import { erfc, erfcx } from '../heat/error-function.ts';
import { decay, heldRise, releasedRise } from '../heat/fin-closed-form.ts';
import type { Fin } from '../heat/fin-closed-form.ts';
import { solved, stripTask } from '../heat/sheet-case.ts';

const fin: Fin = {
  rise: 580,
  conductivity: 45,
  density: 7850,
  heatCapacity: 600,
  convection: 25,
  thicknessM: 1.2e-3,
};

describe('the oracle itself', () => {
  test('error function, tables of Abramowitz and Stegun', () => {
    expect(erfc(0.5)).toBeCloseTo(0.4795, 6);
    expect(erfc(1)).toBeCloseTo(0.157299, 6);
    expect(erfc(2)).toBeCloseTo(0.00467773, 8);
    expect(erfcx(3)).toBeCloseTo(0.179001, 6);
    expect(erfc(-0.5)).toBeCloseTo(2 - 0.4795, 6);
  });

  // Carslaw and Jaeger's fin (from memory), worked out with SciPy to 0.05 K by the writer of the reference cases.
  test.each([
    [0.8, [295.25, 109.98, 33.96], [265.23, 68.88, 20.93]],
    [1.2, [335.59, 146.67, 47.66], [287.39, 77.67, 21.17]],
    [2.0, [381.99, 198.49, 74.93], [307.36, 85.99, 21.39]],
    [3.0, [414.7, 241.58, 104.65], [318.19, 90.64, 21.52]],
  ])('fin of %d mm: steady and after 60 s at 20, 50, 100 mm', (thicknessMm, steady, atSixty) => {
    const of = { ...fin, thicknessM: thicknessMm / 1000 };
    [0.02, 0.05, 0.1].forEach((x, n) => {
      expect(Math.abs(20 + 580 * Math.exp(-decay(of) * x) - (steady[n] ?? 0))).toBeLessThan(0.05);
      expect(Math.abs(20 + heldRise(of, x, 60) - (atSixty[n] ?? 0))).toBeLessThan(0.05);
    });
  });

  test('after release: peaks at 64 and 81 s, and what is left at 120 and 300 s', () => {
    expect(20 + releasedRise(fin, 0.02, 60, 4)).toBeCloseTo(290.36, 1);
    expect(20 + releasedRise(fin, 0.04, 60, 21)).toBeCloseTo(138.49, 1);
    expect(20 + releasedRise(fin, 0.02, 60, 60)).toBeCloseTo(152.47, 1);
    expect(20 + releasedRise(fin, 0.04, 60, 60)).toBeCloseTo(113.34, 1);
    expect(20 + releasedRise(fin, 0.02, 60, 240)).toBeCloseTo(36.88, 1);
    expect(20 + releasedRise(fin, 0.04, 60, 240)).toBeCloseTo(35.05, 1);
  });
});

describe('the solver against the closed form, constant properties', () => {
  const strip = solved(stripTask({}, 0.6));

  // On the grid and steps that the tool uses; measured 1.0 K at most, at 10 mm and 5 s, where the rise is 230 K.
  test.each([5, 10, 20, 30, 45, 60])('held, %d s', (seconds) => {
    for (const x of [5, 10, 20, 40, 80, 120]) {
      expect(Math.abs(strip.at(x, seconds) - 20 - heldRise(fin, x / 1000, seconds))).toBeLessThan(1.1);
    }
  });

  test.each([65, 70, 80, 100, 150, 200, 300])('let go at 60 s, now %d s', (seconds) => {
    for (const x of [5, 10, 20, 40, 80, 120]) {
      const exact = releasedRise(fin, x / 1000, 60, seconds - 60);
      expect(Math.abs(strip.at(x, seconds) - 20 - exact)).toBeLessThan(1.2);
    }
  });

  test('finer steps and cells come ten times nearer: it is the same problem', () => {
    const fine = solved(stripTask({ steps: { firstSeconds: 0.002, growth: 1.002 } }, 0.6));
    for (const x of [10, 20, 40, 80]) {
      expect(Math.abs(fine.at(x, 60) - 20 - heldRise(fin, x / 1000, 60))).toBeLessThan(0.3);
    }
  });

  test.each([0.8, 1.2, 2, 3])('held for an hour it is the steady fin, %d mm', (thicknessMm) => {
    const of = { ...fin, thicknessM: thicknessMm / 1000 };
    const steady = solved(stripTask({ thicknessM: of.thicknessM, holdSeconds: 3600 }, 1));
    for (const x of [10, 20, 50, 100]) {
      const exact = 580 * Math.exp((-decay(of) * x) / 1000);
      expect(Math.abs(steady.at(x, 3600) - 20 - exact) / exact).toBeLessThan(0.006);
    }
  });
});
