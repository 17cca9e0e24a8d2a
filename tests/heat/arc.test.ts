import fc from 'fast-check';
import { expect, test } from 'vitest';
import { adamsPeakCelsius, adamsWidthMm } from '../../src/heat/weld/adams.ts';
import type { AdamsCase } from '../../src/heat/weld/adams.ts';
import { assumedHeatInput } from '../../src/heat/weld/arc.ts';

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
  expect(assumedHeatInput(1.2)).toEqual({ ok: true, joulePerMm: 1200 });
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

test('the width is the peak turned round, with and without a free edge', () => {
  const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(
      number(0.4, 6),
      number(40, 900),
      number(60, 1500),
      fc.option(number(0.5, 200), { nil: undefined }),
      (thicknessMm, perMm, celsius, freeEndMm) => {
        const weld = {
          thicknessMm,
          heatInputJPerMm: perMm * thicknessMm,
          metal: 'steel' as const,
          ...(freeEndMm === undefined ? {} : { freeEndMm }),
        };
        const answer = adamsWidthMm({ ...weld, celsius });
        if (!answer.ok) throw new Error(answer.reason);
        const at = peak({ ...weld, distanceMm: answer.widthMm });
        if (answer.toFreeEnd) {
          expect(answer.widthMm).toBe(freeEndMm);
          expect(at).toBeGreaterThanOrEqual(celsius - 1e-6);
        } else {
          expect(Math.abs(at - celsius)).toBeLessThan(1e-6 * celsius);
        }
      },
    ),
  );
});

test.each([{ celsius: 20 }, { celsius: 2000 }, { celsius: Number.NaN }, { celsius: 600, thicknessMm: 0 }])(
  'no width: %o',
  (changed) => {
    expect(adamsWidthMm({ ...seam, ...changed })).toMatchObject({ ok: false });
  },
);

// Constants from public property tables: with the same heat, the lighter the metal by volume, the hotter.
test('every metal melts at the fused edge and is hotter beside it than steel of the same rise', () => {
  expect(peak({ ...seam, metal: 'stainless', distanceMm: 0 })).toBeCloseTo(1455, 6);
  expect(peak({ ...seam, metal: 'magnesium', distanceMm: 0 })).toBeCloseTo(650, 6);
  expect(peak({ ...seam, metal: 'stainless' })).toBeGreaterThan(peak(seam));
  expect(peak({ ...seam, metal: 'magnesium' })).toBeGreaterThan(peak({ ...seam, metal: 'aluminium' }));
});
