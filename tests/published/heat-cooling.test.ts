import { describe, expect, test } from 'vitest';
import { scaledK0, scaledK1 } from '../../src/heat/weld/bessel.ts';
import { coolingRate } from '../../src/heat/weld/cooling-rate.ts';
import type { CoolingCase } from '../../src/heat/weld/cooling-rate.ts';
import { coolingTime } from '../../src/heat/weld/cooling-time.ts';
import type { CoolingPass } from '../../src/heat/weld/cooling-time.ts';
import { fieldCelsius, fieldPeakCelsius } from '../../src/heat/weld/rosenthal.ts';
import type { MovingSource } from '../../src/heat/weld/rosenthal.ts';

function answered<A extends { readonly ok: boolean }>(answer: A): Extract<A, { readonly ok: true }> {
  if (!answer.ok) throw new Error(JSON.stringify(answer));
  return answer as Extract<A, { readonly ok: true }>;
}

/** Within half a per cent, the accuracy that the vectors are given with. */
function near(value: number, expected: number): void {
  expect(Math.abs(value / expected - 1), `${value} for ${expected}`).toBeLessThan(0.005);
}

// EN 1011-2 annex D, worked out in Python by the writer of the vectors; the form factors are from memory.
describe('t8/5', () => {
  test.each([
    [1000, 20, 20, 14.66, 'three-dimensional', 5.29],
    [1000, 10, 20, 14.66, 'two-dimensional', 11.36],
    [1500, 15, 100, 19.18, 'two-dimensional', 16.29],
    [96, 0.8, 20, 4.54, 'two-dimensional', 16.36],
    [120, 1, 20, 5.08, 'two-dimensional', 16.36],
    [153, 1.2, 20, 5.73, 'two-dimensional', 18.47],
    [180, 1.5, 20, 6.22, 'two-dimensional', 16.36],
    [216, 2, 20, 6.81, 'two-dimensional', 13.25],
    [304, 3, 20, 8.08, 'two-dimensional', 11.67],
  ] as const)(
    '%d J/mm on %d mm at %d °C',
    (heatInputJPerMm, thicknessMm, ambientCelsius, transition, governs, seconds) => {
      const time = answered(coolingTime({ heatInputJPerMm, thicknessMm, ambientCelsius }));
      near(time.transitionMm, transition);
      near(time.leastSeconds, seconds);
      near(time.mostSeconds, seconds);
      expect(time.governs).toBe(governs);
      expect(time.howSure).toBe(thicknessMm < 3 ? 'order of magnitude' : 'proved for plate');
    },
  );

  test('form factors: 16.63 s between runs (0.9), and 0.7 × 18.47 s lies within a corner fillet', () => {
    const sheet: CoolingPass = { heatInputJPerMm: 153, thicknessMm: 1.2 };
    near(answered(coolingTime({ ...sheet, weld: 'between runs of a butt' })).mostSeconds, 16.63);
    const corner = answered(coolingTime({ ...sheet, weld: 'single fillet, corner' }));
    near(corner.mostSeconds, 0.9 * 18.47);
    near(corner.leastSeconds, 0.67 * 18.47);
    const tee = answered(coolingTime({ ...sheet, weld: 'single fillet, T' }));
    near(tee.leastSeconds, 0.45 * 18.47);
    near(tee.mostSeconds, 0.67 * 18.47);
  });

  test('at the transition thickness both ways take equally long', () => {
    for (const weld of ['bead on plate', 'between runs of a butt', 'single fillet, corner'] as const) {
      const pass = { heatInputJPerMm: 1500, ambientCelsius: 100, weld };
      const { transitionMm } = answered(coolingTime({ ...pass, thicknessMm: 15 }));
      const thick = answered(coolingTime({ ...pass, thicknessMm: 100 })).mostSeconds;
      near(answered(coolingTime({ ...pass, thicknessMm: transitionMm * 0.99999 })).mostSeconds, thick);
      expect(
        answered(coolingTime({ ...pass, thicknessMm: transitionMm * 0.98 })).mostSeconds,
      ).toBeGreaterThan(1.01 * thick);
    }
  });
});

// M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, tables 9.8 and 9.11; and where two pieces meet.
test('modified Bessel functions', () => {
  expect(scaledK0(0.5) * Math.exp(-0.5)).toBeCloseTo(0.924419, 6);
  expect(scaledK0(1) * Math.exp(-1)).toBeCloseTo(0.421024, 6);
  expect(scaledK1(0.5) * Math.exp(-0.5)).toBeCloseTo(1.656441, 6);
  expect(scaledK1(1) * Math.exp(-1)).toBeCloseTo(0.601907, 6);
  for (const scaled of [scaledK0, scaledK1]) {
    expect(scaled(2.0000001) / scaled(2)).toBeCloseTo(1, 6);
    // Far out both fall like √(π/2x).
    expect(scaled(1e6) / Math.sqrt(Math.PI / 2e6)).toBeCloseTo(1, 5);
    expect(scaled(0)).toBeNaN();
    expect(scaled(-1)).toBeNaN();
  }
});

// D. Rosenthal 1946, from memory; worked out in Python by the writer of the vectors.
describe('moving source', () => {
  const sheet: MovingSource = {
    watts: 1224,
    speedMmPerSecond: 8,
    conductivity: 40,
    joulePerMm3K: 0.0044,
    thicknessMm: 1.2,
    meltCelsius: 1510,
  };
  const { thicknessMm: _, ...block } = { ...sheet, watts: 2400, speedMmPerSecond: 5 };

  test.each([
    [-10, 5, 1353],
    [-20, 10, 587],
    [-40, 10, 710.1],
  ])('sheet, %d mm behind, %d mm beside', (ahead, beside, celsius) => {
    near(answered(fieldCelsius(sheet, ahead, beside)).celsius, celsius);
  });

  test.each([
    [-10, 0, 974.9],
    [-10, 5, 637.4],
    [-20, 10, 243.1],
  ])('half space, %d mm behind, %d mm beside', (ahead, beside, celsius) => {
    near(answered(fieldCelsius(block, ahead, beside)).celsius, celsius);
  });

  test('peak at 10 and 20 mm from the centre line: 712.6 and 369.5 °C, below the fast source', () => {
    near(answered(fieldPeakCelsius(sheet, 10)).peakCelsius, 712.6);
    near(answered(fieldPeakCelsius(sheet, 20)).peakCelsius, 369.5);
    // Q/d/(√(2πe)·ρc·y), the limit of infinite speed: 721.2 and 370.6 °C.
    const fast = (mm: number) => 20 + 1224 / 8 / 1.2 / (Math.sqrt(2 * Math.PI * Math.E) * 0.0044 * mm);
    near(fast(10), 721.2);
    for (const mm of [5, 10, 20, 60, 200]) {
      const at = answered(fieldPeakCelsius(sheet, mm)).peakCelsius;
      expect(at).toBeLessThanOrEqual(fast(mm));
      if (mm >= 60) near(at, fast(mm));
    }
  });

  test.each([
    ['sheet', sheet],
    ['half space', block],
  ])('nothing on the way past is hotter than the peak: %s', (_name, source) => {
    for (const beside of [6, 10, 25]) {
      const { peakCelsius, behindMm } = answered(fieldPeakCelsius(source, beside));
      near(answered(fieldCelsius(source, -behindMm, beside)).celsius, peakCelsius);
      for (let ahead = -600; ahead <= 50; ahead += 0.5) {
        const at = answered(fieldCelsius(source, ahead, beside)).celsius;
        expect(at).toBeLessThanOrEqual(peakCelsius + 1e-3);
      }
    }
  });

  test('no number in the pool, nor from nonsense', () => {
    expect(fieldCelsius(sheet, 0, 0)).toMatchObject({ ok: false });
    expect(fieldCelsius(sheet, -1, 1)).toMatchObject({ ok: false });
    expect(fieldPeakCelsius(sheet, 1)).toMatchObject({ ok: false });
    for (const wrong of [
      { watts: Number.NaN },
      { watts: -1224 },
      { speedMmPerSecond: 0 },
      { conductivity: 0.04 },
      { joulePerMm3K: 4.4e6 },
      { thicknessMm: 0 },
      { ambientCelsius: Infinity },
      { meltCelsius: Number.NaN },
    ]) {
      expect(fieldCelsius({ ...sheet, ...wrong }, -20, 10)).toMatchObject({ ok: false });
      expect(fieldPeakCelsius({ ...sheet, ...wrong }, 10)).toMatchObject({ ok: false });
    }
    expect(fieldCelsius(sheet, Number.NaN, 10)).toMatchObject({ ok: false });
    expect(fieldPeakCelsius(sheet, -10)).toMatchObject({ ok: false });
  });
});

// Welding Handbook, heat flow chapter (from memory): centre-line rates, relative thickness.
describe('cooling rate', () => {
  const plate: CoolingCase = { heatInputJPerMm: 720, thicknessMm: 5, ambientCelsius: 25, atCelsius: 550 };

  test('plate of the worked example: 0.283, thin 5.40 K/s (thick 67.3 would be wrong)', () => {
    const rate = answered(coolingRate(plate));
    near(rate.relativeThickness, 0.283);
    near(rate.kelvinPerSecond, 5.4);
    near(rate.thickKelvinPerSecond, 67.3);
    expect(rate.regime).toBe('thin');
  });

  test('sheet: 0.148, 7.09 K/s', () => {
    const rate = answered(
      coolingRate({ heatInputJPerMm: 153, thicknessMm: 1.2, atCelsius: 550, ambientCelsius: 20 }),
    );
    near(rate.relativeThickness, 0.148);
    near(rate.kelvinPerSecond, 7.09);
  });

  test('thick above 0.9; between 0.6 and 0.9 the faster of both', () => {
    const thick = answered(coolingRate({ ...plate, thicknessMm: 16 }));
    expect(thick.regime).toBe('thick');
    near(thick.kelvinPerSecond, 67.3);
    const between = answered(coolingRate({ ...plate, thicknessMm: 5 * (0.75 / 0.283) }));
    expect(between.regime).toBe('between');
    near(between.kelvinPerSecond, Math.max(between.thinKelvinPerSecond, between.thickKelvinPerSecond));
    // Thin over thick is the square of the relative thickness.
    near(between.thinKelvinPerSecond / between.thickKelvinPerSecond, 0.75 ** 2);
  });
});

test.each([
  { heatInputJPerMm: 0 },
  { heatInputJPerMm: 0.153 },
  { heatInputJPerMm: Number.NaN },
  { thicknessMm: -1 },
  { thicknessMm: 10000 },
  { ambientCelsius: 500 },
])('neither time nor rate from %o', (wrong) => {
  const pass = { heatInputJPerMm: 153, thicknessMm: 1.2, atCelsius: 550 };
  expect(coolingTime({ ...pass, ...wrong })).toMatchObject({ ok: false });
  expect(coolingRate({ ...pass, ...wrong })).toMatchObject({ ok: false });
});
