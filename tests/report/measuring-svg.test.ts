import { describe, expect, test } from 'vitest';
import type { MeasuringShown, PointShown } from '../../src/facts/measuring/measuring-shown.ts';
import { measuringDrawing } from '../../src/report/measuring/measuring-svg.ts';
import { readPage } from './read-page.ts';

const fit: MeasuringShown['fits'][0] = {
  occasion: 'after',
  zeroPoints: ['Z1'],
  residualMm: 0,
  scatterMm: 0,
  degreesOfFreedom: 3,
  turnedDegrees: 0,
};

const point = (name: string, given: Partial<PointShown>): PointShown => ({
  name,
  part: undefined,
  zero: false,
  toleranceMm: 3,
  before: undefined,
  after: [0, 0, 0],
  decision: undefined,
  ...given,
});

const drawingOf = (points: readonly PointShown[]): string => {
  const svg = measuringDrawing({ fits: [fit], points }, 'm-');
  if (svg === undefined) throw new Error('nothing drawn');
  return svg;
};

/** Centres of round marks, [x, y], in the order of the drawing: from above, from the side, then that of the legend. */
const centres = (svg: string): readonly (readonly [number, number])[] =>
  [...svg.matchAll(/<circle cx="([-\d.]+)" cy="([-\d.]+)"/gu)].map(
    ([, x, y]) => [Number(x), Number(y)] as const,
  );

/** Ends of the lines of arrows that are drawn as out of tolerance. */
const thick = (svg: string): readonly (readonly number[])[] =>
  [
    ...svg.matchAll(/<line x1="([-\d.]+)" y1="([-\d.]+)" x2="([-\d.]+)" y2="([-\d.]+)" stroke="#9a2a00"/gu),
  ].map(([, ...ends]) => ends.map(Number));

describe('measured points drawn', () => {
  const far = [point('A', { nominal: [0, 0, 0] }), point('B', { nominal: [2000, 1000, 500] })];

  test('one scale for both axes and both views', () => {
    const [a, b, aSide, bSide] = centres(drawingOf(far));
    if (a === undefined || b === undefined || aSide === undefined || bSide === undefined)
      throw new Error('missing');
    const perMm = (b[0] - a[0]) / 2000;
    expect(perMm).toBeGreaterThan(0);
    // Up the page is up in y, and in z.
    expect(a[1] - b[1]).toBeCloseTo(1000 * perMm, 1);
    expect(aSide[1] - bSide[1]).toBeCloseTo(500 * perMm, 1);
    expect(bSide[0] - aSide[0]).toBeCloseTo(2000 * perMm, 1);
  });

  test('an arrow is as long as the drawing says, and points where the point went', () => {
    const svg = drawingOf([
      ...far,
      point('C', { nominal: [1000, 500, 0], after: [6, -3, 0], decision: 'does not conform', off: true }),
    ]);
    const [, times] = /drawn (\d+) times larger than the body/u.exec(svg) ?? [];
    const [a, b] = centres(svg);
    const [above] = thick(svg);
    if (a === undefined || b === undefined || above === undefined || times === undefined)
      throw new Error('missing');
    const perMm = ((b[0] - a[0]) / 2000) * Number(times);
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = above;
    expect(x2 - x1).toBeCloseTo(6 * perMm, 0);
    // Right of the drawing is +x; down is −y.
    expect(y2 - y1).toBeCloseTo(3 * perMm, 0);
    expect(svg).toContain('C +6.0, -3.0');
    expect(svg).toContain('C: x +6.0, y -3.0, z 0.0 mm, tolerance 3 mm.');
  });

  test('what is off is drawn otherwise than what is within: from above, from the side, and once in the legend', () => {
    const at = { nominal: [500, 500, 0] as const, after: [3.1, 0, 0.2] as const };
    expect(thick(drawingOf([...far, point('C', { ...at, off: true })]))).toHaveLength(3);
    expect(thick(drawingOf([...far, point('C', { ...at, off: false })]))).toHaveLength(1);
    expect(thick(drawingOf([...far, point('C', at)]))).toHaveLength(1);
  });

  test('zero points are squares', () => {
    const svg = drawingOf([
      point('Z1', { nominal: [0, 0, 0], zero: true }),
      point('A', { nominal: [100, 0, 0] }),
    ]);
    expect([...svg.matchAll(/<rect [^>]*width="10" height="10"/gu)]).toHaveLength(3);
  });

  test.each([
    ['nothing', []],
    ['no nominal place', [point('A', {})]],
    ['not measured then', [point('A', { nominal: [0, 0, 0], after: undefined })]],
    [
      'a hundred metres apart',
      [point('A', { nominal: [0, 0, 0] }), point('B', { nominal: [100_000, 0, 0] })],
    ],
    ['beyond all numbers', [point('A', { nominal: [-1e308, 0, 0] }), point('B', { nominal: [1e308, 0, 0] })]],
  ])('%s: no drawing', (_what, points) => {
    expect(measuringDrawing({ fits: [fit], points }, 'm-')).toBeUndefined();
  });

  test('a thousand points in one place, and deviations of a metre: numbers stay within the picture', () => {
    const many = Array.from({ length: 1000 }, (_one, index) =>
      point(`P${String(index)}`, { nominal: [5, 5, 5], after: [1000, -1000, 400] }),
    );
    const svg = drawingOf(many);
    expect(svg).not.toMatch(/NaN|Infinity|e\+/u);
    expect(readPage(`<!DOCTYPE html><title>t</title>${svg}`).errors).toEqual([]);
  });
});
