import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import type { MeasuringShown, PointShown } from '../../src/facts/measuring/measuring-shown.ts';
import { jsonForm } from '../../src/report/forms/json-form.ts';
import { measuringLines } from '../../src/report/measuring/measuring-text.ts';
import { measuredRing } from '../measured-ring.ts';
import { judgeText } from '../judge-text.ts';
import { head, planReport, tail } from './invented-report.ts';

const point = (name: string, given: Partial<PointShown> = {}): PointShown => ({
  name,
  part: 'ring-l',
  zero: false,
  toleranceMm: 3,
  before: undefined,
  after: [0.24, -4.05, 0.04],
  decision: undefined,
  ...given,
});
const fit: MeasuringShown['fits'][0] = {
  occasion: 'after',
  zeroPoints: ['Z1', 'Z2', 'Z3'],
  residualMm: 0.26,
  scatterMm: 0.2,
  degreesOfFreedom: 3,
  turnedDegrees: 0.1,
};

describe('the table of the worst points', () => {
  test('signs, tenths, names to the left and numbers to the right', () => {
    const points = [
      point('A1'),
      point('Z1', { part: 'floor', zero: true, after: [0, 10.2, -0.3], toleranceMm: 2.5 }),
    ];
    expect(measuringLines({ fits: [fit], points }, 80)).toEqual([
      '  Measured after the repair, mm off the data sheet',
      '       Fitted to it on Z1, Z2, Z3; at most 0.3 is left there.',
      '       Point      On         x      y     z  Tolerance',
      '       A1         ring-l  +0.2   -4.0   0.0          3',
      '       Z1 (zero)  floor    0.0  +10.2  -0.3        2.5',
    ]);
  });

  test('five at most, and how many there are', () => {
    const points = Array.from({ length: 120 }, (_one, index) => point(`P${String(index)}`));
    const lines = measuringLines({ fits: [fit], points }, 100);
    expect(lines).toHaveLength(8);
    expect(lines[1]).toContain('The worst 5 of 120 points:');
  });

  test('a name that runs on keeps the columns, and no control character comes through', () => {
    const lines = measuringLines({ fits: [fit], points: [point(`${'x'.repeat(60)}\u001b[2J`)] }, 80);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(80);
    expect(lines.join('')).not.toContain('\u001b');
  });

  test('no deviation, no table', () => {
    expect(measuringLines({ fits: [fit], points: [point('A1', { after: undefined })] }, 80)).toEqual([]);
  });

  test('without a fit it says so', () => {
    const asWritten = { ...fit, zeroPoints: [], residualMm: undefined };
    expect(measuringLines({ fits: [asWritten], points: [point('A1')] }, 80)[1]).toBe(
      '       As written: the zero points carry no fit.',
    );
  });
});

describe('the measuring as JSON', () => {
  const schema: object = JSON.parse(readFileSync('schemas/report.schema.json', 'utf8'));
  const validate = new Ajv2020({ strict: true, allErrors: true, allowUnionTypes: true }).compile(schema);

  test('of a whole plan it keeps to the schema: fits, points, axes and decision', () => {
    const { measuring } = judgeText(measuredRing);
    if (measuring === undefined) throw new Error('nothing measured');
    const form = jsonForm();
    const text =
      form.begin(head) + form.plan(planReport({ measuring })) + form.end(tail('cleared', 1, { cleared: 1 }));
    const report: { readonly plans: readonly { readonly measurements: object }[] } = JSON.parse(text);
    expect([validate(report), validate.errors]).toEqual([true, null]);
    expect(report.plans[0]?.measurements).toMatchObject({
      fits: [
        { occasion: 'before', zero_points: ['Z1', 'Z2', 'Z3', 'Z4'], degrees_of_freedom: 6 },
        { occasion: 'after', zero_points: ['Z1', 'Z2', 'Z3', 'Z4'], degrees_of_freedom: 6 },
      ],
    });
    expect(measuring.points).toHaveLength(11);
    expect(measuring.points.every(({ decision }) => decision === 'conforms')).toBe(true);
  });

  test('a plan without points says nothing of them', () => {
    expect(judgeText('format: 1\nvehicle: {}\nparts: []\n').measuring).toBeUndefined();
  });
});
