import { describe, expect, test } from 'vitest';
import { solveHeldSheet } from '../../src/heat/sheet/held-sheet.ts';
import { factsOf } from './facts-of.ts';

const heat = (shape: string, more = ''): string =>
  `{ do: heat, source: induction, temperature: 600 °C, hold: 60 s, times: 1, measured_by: { means: contact probe }, free_end: runs on, ${shape} near: [{ part: n, distance: 40 mm, path: same sheet${more} }] }`;
const derive = (...heats: readonly string[]): ReturnType<typeof factsOf> =>
  factsOf(`parts:
  - { id: h, grade: HC340LA, thickness: 1.2 mm, operations: [${heats.join(', ')}] }
  - { id: n, grade: 22MnB5, thickness: 1.4 mm }`);
const peakOf = (...heats: readonly string[]): number => Number(derive(...heats).value('exposure.peak'));
const noteOf = (...heats: readonly string[]): string =>
  JSON.stringify(derive(...heats).fact('exposure.peak'));

describe('the shape of the heated spot', () => {
  test('that is not stated is a strip, which is never cooler than a disc', () => {
    const strip = peakOf(heat(''));
    expect(peakOf(heat('shape: strip,'))).toBe(strip);
    for (const radius of [5, 20, 60, 150])
      expect(peakOf(heat(`shape: disc, radius: ${String(radius)} mm,`))).toBeLessThan(strip);
  });

  test('a disc is what the command computes for one', () => {
    // 20 K for the probe.
    const solved = solveHeldSheet({
      ...{ sourceCelsius: 620, holdSeconds: 60, times: 1, thicknessMm: 1.2, metal: 'steel' },
      ...{ shape: 'disc', radiusMm: 20 },
    });
    const place = solved.ok ? solved.history.at(40) : solved;
    expect(peakOf(heat('shape: disc, radius: 20 mm,'))).toBeCloseTo(
      place.ok ? place.point.peakCelsius : NaN,
      6,
    );
  });

  test('the larger the disc, the hotter', () => {
    const peaks = [5, 10, 20, 40, 80].map((radius) =>
      peakOf(heat(`shape: disc, radius: ${String(radius)} mm,`)),
    );
    expect(peaks).toEqual(peaks.toSorted((a, b) => a - b));
  });

  test('a disc without its radius, or beside a heat of the place that states none, is a strip and says so', () => {
    const strip = peakOf(heat(''));
    for (const shape of ['shape: disc,', 'shape: disc, radius: large,', 'radius: 20 mm,'])
      expect([shape, peakOf(heat(shape))]).toEqual([shape, strip]);
    expect(noteOf(heat('shape: disc,'))).toContain('computed as a strip');
    const disc = heat('shape: disc, radius: 20 mm,');
    expect(peakOf(disc, heat(''))).toBe(peakOf(heat(''), heat('')));
    expect(peakOf(disc, heat('shape: disc, radius: 40 mm,'))).toBeCloseTo(
      peakOf(heat('shape: disc, radius: 40 mm,'), heat('shape: disc, radius: 40 mm,')),
      6,
    );
  });

  test('a disc of no plausible size is asked about', () => {
    for (const radius of ['1 mm', '2 m'])
      expect(derive(heat(`shape: disc, radius: ${radius},`)).fact('exposure.peak').known).toBe(false);
  });
});
