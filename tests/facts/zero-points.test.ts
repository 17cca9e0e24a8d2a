import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

describe('how wide the zero points stand', () => {
  const base = (...places: readonly string[]): readonly unknown[] => {
    const points = places.map((place, index) => `{ name: Z${String(index)}, nominal: [${place}] }`);
    const names = places.map((_place, index) => `Z${String(index)}`);
    const derived = factsOf(
      `measurements: { zero_points: [${names.join(', ')}], points: [${points.join(', ')}] }`,
    );
    return [derived.value('measurement.zero_point_span'), derived.value('measurement.zero_point_width')];
  };

  // By hand: sides 3, 4 and 5 m; the height on the longest is 3 · 4 / 5 = 2.4 m.
  test('a right triangle', () => {
    const [span, width] = base('0 mm, 0 mm, 0 mm', '3000 mm, 0 mm, 0 mm', '0 mm, 4000 mm, 0 mm');
    expect(span).toBeCloseTo(5000, 6);
    expect(width).toBeCloseTo(2400, 6);
  });

  test('on one line, whichever way it runs', () => {
    for (const places of [
      ['0 mm, 0 mm, 0 mm', '10 mm, 0 mm, 0 mm', '20 mm, 0 mm, 0 mm'],
      ['0 mm, 0 mm, 0 mm', '1 m, 1 m, 1 m', '2 m, 2 m, 2 m', '3 m, 3 m, 3 m'],
    ]) {
      expect(base(...places)[1]).toBeCloseTo(0, 6);
    }
    expect(base('5 mm, 5 mm, 5 mm', '5 mm, 5 mm, 5 mm', '5 mm, 5 mm, 5 mm')).toEqual([0, 0]);
  });

  // By hand: the diagonal of 1.8 m × 1.12 m is √(3.24 + 1.2544) m; a corner lies 1.8 · 1.12 / 2.12 m from it.
  test('four at the corners of a floor', () => {
    const [span, width] = base(
      '0 mm, 0 mm, 0 mm',
      '1800 mm, 0 mm, 0 mm',
      '0 mm, 1120 mm, 0 mm',
      '1800 mm, 1120 mm, 0 mm',
    );
    expect(span).toBeCloseTo(2120, 6);
    expect(width).toBeCloseTo((1800 * 1120) / 2120, 6);
  });

  test('fewer than three, or one without its place, tell nothing', () => {
    expect(String(base('0 mm, 0 mm, 0 mm', '1 m, 0 mm, 0 mm')[1])).toMatch(/^\?/u);
    const derived = factsOf(
      'measurements: { zero_points: [A, B, C, D], points: [{ name: A, nominal: [0 mm, 0 mm, 0 mm] }, { name: B, nominal: [1 m, 0 mm, 0 mm] }, { name: C, nominal: [0 mm, 1 m, 0 mm] }] }',
    );
    expect(derived.fact('measurement.zero_point_span').known).toBe(false);
  });
});
