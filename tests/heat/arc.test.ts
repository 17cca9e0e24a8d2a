import fc from 'fast-check';
import { expect, test } from 'vitest';
import { adamsPeakCelsius, assumedHeatInput } from '../../src/heat/arc.ts';
import type { AdamsCase } from '../../src/heat/arc.ts';

const seam: AdamsCase = { heatInputJPerMm: 153, thicknessMm: 1.2, distanceMm: 10, metal: 'steel' };

function peak(weld: AdamsCase): number {
  const answer = adamsPeakCelsius(weld);
  return answer.ok ? answer.peakCelsius : Number.NaN;
}

test('at the fused edge the metal melts', () => {
  expect(peak({ ...seam, distanceMm: 0 })).toBeCloseTo(1510, 6);
  expect(peak({ ...seam, distanceMm: 0, metal: 'aluminium' })).toBeCloseTo(650, 6);
});

test.each<readonly [string, Partial<AdamsCase>]>([
  ['thickness', { thicknessMm: 0 }],
  ['thickness', { thicknessMm: Number.NaN }],
  ['thickness', { thicknessMm: 12 }],
  ['heat input', { heatInputJPerMm: 0.153 }],
  ['heat input', { heatInputJPerMm: -153 }],
  ['heat input', { heatInputJPerMm: 153000 }],
  ['distance', { distanceMm: -1 }],
  ['distance', { distanceMm: Number.NaN }],
  ['distance', { distanceMm: 30, freeEndMm: 25 }],
  ['before the pass', { ambientCelsius: Infinity }],
])('no number: %s %o', (word, changed) => {
  const answer = adamsPeakCelsius({ ...seam, ...changed });
  if (answer.ok) throw new Error('answered');
  expect(answer.reason).toContain(word);
});

test('no assumed heat input without a real thickness', () => {
  expect(assumedHeatInput(Number.NaN)).toMatchObject({ ok: false });
  expect(assumedHeatInput(-1)).toMatchObject({ ok: false });
  expect(assumedHeatInput(1.2)).toEqual({ ok: true, joulePerMm: 240 });
});

test('more heat, nearer, warmer before or a nearer free edge never gives a cooler place', () => {
  const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(
      number(0.4, 6),
      number(40, 400),
      number(0, 200),
      number(1, 2),
      (thicknessMm, perMm, distanceMm, by) => {
        const weld: AdamsCase = {
          thicknessMm,
          heatInputJPerMm: perMm * thicknessMm,
          distanceMm,
          metal: 'steel',
        };
        const base = peak(weld);
        expect(peak({ ...weld, heatInputJPerMm: by * weld.heatInputJPerMm })).toBeGreaterThanOrEqual(
          base - 1e-9,
        );
        expect(peak({ ...weld, distanceMm: distanceMm / by })).toBeGreaterThanOrEqual(base - 1e-9);
        expect(peak({ ...weld, ambientCelsius: 20 * by })).toBeGreaterThanOrEqual(base - 1e-9);
        const edge = peak({ ...weld, freeEndMm: by * distanceMm + 1 });
        expect(edge).toBeGreaterThan(base - 1e-9);
        expect(peak({ ...weld, freeEndMm: 2 * by * distanceMm + 2 })).toBeLessThanOrEqual(edge + 1e-9);
      },
    ),
  );
});
