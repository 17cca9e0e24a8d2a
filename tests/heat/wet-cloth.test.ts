import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { carbonSteel } from '../../src/heat/metal/carbon-steel.ts';
import { solveHeldSheet } from '../../src/heat/sheet/held-sheet.ts';
import type { HeldSheet } from '../../src/heat/sheet/held-sheet.ts';
import { solved, stripTask } from './sheet-case.ts';

const bare: HeldSheet = { sourceCelsius: 600, holdSeconds: 60, times: 1, thicknessMm: 1.2, metal: 'steel' };
const cloth = { fromMm: 30, toMm: 60, waterKgPerM2: 2 } as const;

function peakAt(sheet: HeldSheet, distanceMm: number): number {
  const answer = solveHeldSheet(sheet);
  if (!answer.ok) throw new Error(answer.reason);
  const at = answer.history.at(distanceMm);
  if (!at.ok) throw new Error(at.reason);
  return at.point.peakCelsius;
}

describe('a wet cloth between heat and neighbour', () => {
  test('helps behind it, never below boiling where the bare sheet was above', () => {
    const without = peakAt(bare, 70);
    const held = peakAt({ ...bare, wetCloth: cloth }, 45);
    expect(held).toBeLessThan(peakAt(bare, 45));
    expect(held).toBeGreaterThanOrEqual(100);
    expect(peakAt({ ...bare, wetCloth: cloth }, 70)).toBeLessThan(without);
  });

  test('sheet that stays below 100 °C is not cooled by it: the covered face only loses less', () => {
    const far = { ...bare, holdSeconds: 10, wetCloth: { fromMm: 80, toMm: 120, waterKgPerM2: 2 } };
    expect(peakAt(far, 90)).toBeLessThan(100);
    expect(peakAt(far, 90)).toBeGreaterThanOrEqual(peakAt({ ...bare, holdSeconds: 10 }, 90));
  });

  test('dried out where the sheet passes 150 °C: at the very edge of the heat it is no cloth at all', () => {
    const near = { ...bare, wetCloth: { fromMm: 0, toMm: 10, waterKgPerM2: 20 } };
    expect(peakAt(near, 15)).toBeGreaterThanOrEqual(peakAt(bare, 15) - 0.05);
  });

  test('little water is soon gone', () => {
    const peaks = [0.1, 0.3, 1, 3].map((waterKgPerM2) =>
      peakAt({ ...bare, wetCloth: { ...cloth, waterKgPerM2 } }, 70),
    );
    peaks.forEach((peak, n) => {
      expect(peak).toBeLessThanOrEqual((peaks[n - 1] ?? Infinity) + 0.05);
    });
    expect(peaks[0]).toBeGreaterThan((peaks[3] ?? 0) + 3);
  });

  test('hotter, longer or nearer never makes a cooler place behind it', () => {
    const value = fc.record({
      sourceCelsius: fc.double({ min: 150, max: 900, noNaN: true }),
      holdSeconds: fc.double({ min: 1, max: 900, noNaN: true }),
      from: fc.double({ min: 5, max: 80, noNaN: true }),
      water: fc.double({ min: 0.1, max: 5, noNaN: true }),
      by: fc.double({ min: 1, max: 1.5, noNaN: true }),
    });
    fc.assert(
      fc.property(value, ({ sourceCelsius, holdSeconds, from, water, by }) => {
        const sheet: HeldSheet = {
          ...bare,
          sourceCelsius,
          holdSeconds,
          wetCloth: { fromMm: from, toMm: from + 30, waterKgPerM2: water },
        };
        for (const place of [from + 15, from + 40]) {
          const before = peakAt(sheet, place);
          // A place of the cloth dries out or not by the step: a fiftieth of the rise.
          const least = before - 0.02 * (before - 20) - 0.1;
          expect(
            peakAt({ ...sheet, sourceCelsius: Math.min(1200, sourceCelsius * by) }, place),
          ).toBeGreaterThan(least);
          expect(peakAt({ ...sheet, holdSeconds: holdSeconds * by }, place)).toBeGreaterThan(least);
        }
      }),
      { numRuns: 60, seed: 20245 },
    );
  });

  test.each<readonly [string, HeldSheet['wetCloth'] & object]>([
    ['cloth', { fromMm: 20, toMm: 25, waterKgPerM2: 1 }],
    ['cloth', { fromMm: 60, toMm: 30, waterKgPerM2: 1 }],
    ['cloth', { fromMm: -1, toMm: 30, waterKgPerM2: 1 }],
    ['water', { fromMm: 20, toMm: 50, waterKgPerM2: 0 }],
    ['water', { fromMm: 20, toMm: 50, waterKgPerM2: Number.NaN }],
    ['water', { fromMm: 20, toMm: 50, waterKgPerM2: 21 }],
  ])('no number from %s %o', (word, wetCloth) => {
    const answer = solveHeldSheet({ ...bare, wetCloth });
    if (answer.ok) throw new Error('answered');
    expect(answer.reason).toContain(word);
  });
});

// Mathematics: a long cloth with much water is a fin towards 100 °C. Steady, with a root at 140 °C, 1000 W/m²K on one
// face, air on the other shut off: θ = θ0·exp(−x·√(h/kd)).
// A straight line between nodes adds up to 0.3 K.
test('under the cloth it is the steady fin towards 100 °C', () => {
  const task = stripTask(
    {
      sourceCelsius: 140,
      holdSeconds: 900,
      convection: 0,
      cloth: { fromM: 0, toM: 0.2, waterKgPerM2: 1e6 },
      steps: { firstSeconds: 0.02, growth: 1.01 },
    },
    0.2,
  );
  const fin = solved(task);
  for (const x of [2, 5, 10]) {
    const exact = 40 * Math.exp((-x / 1000) * Math.sqrt(1000 / (45 * 1.2e-3)));
    expect(Math.abs(fin.at(x, 900) - 100 - exact)).toBeLessThan(0.4);
  }
});

test('no place under a cloth is cooled below boiling, none heated by it', () => {
  const task = stripTask({ properties: carbonSteel, cloth: { fromM: 0.02, toM: 0.06, waterKgPerM2: 2 } });
  const { field } = solved(task);
  for (const row of field.celsius) {
    expect(Math.max(...row)).toBeLessThanOrEqual(600 + 1e-6);
    expect(Math.min(...row)).toBeGreaterThanOrEqual(20 - 1e-6);
  }
});
