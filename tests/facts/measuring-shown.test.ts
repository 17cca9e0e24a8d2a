import { expect, test } from 'vitest';
import { measuringShown } from '../../src/facts/measuring/measuring-shown.ts';
import { measuredBody } from '../../src/facts/measuring/measured-body.ts';
import { surveyOf } from './facts-of.ts';

/** Whether a point alone is shown as off; its deviation along x, by a reading as written. */
const off = (given: string, more = ''): boolean | undefined => {
  const survey = surveyOf(
    `measurements: { ${more}points: [{ name: A, nominal: [0 mm, 0 mm, 0 mm], tolerance: 3 mm, ${given} }] }`,
  );
  const { measurements } = survey.plan;
  if (measurements === undefined) throw new Error('not measured');
  return measuringShown(measuredBody(survey, measurements))?.points[0]?.off;
};

// ISO 14253-1: with an uncertainty, what is not proven to keep the limit does not count as keeping it.
test.each([
  ['at the limit', 'after: [3 mm, 0 mm, 0 mm]', '', false],
  ['just over it', 'after: [3.1 mm, 0 mm, 0 mm]', '', true],
  [
    'within it, but by less than the uncertainty',
    'after: [2.6 mm, 0 mm, 0 mm]',
    'uncertainty: 0.5 mm, ',
    true,
  ],
  ['within it by the uncertainty', 'after: [2.5 mm, 0 mm, 0 mm]', 'uncertainty: 0.5 mm, ', false],
  ['the last reading counts', 'before: [9 mm, 0 mm, 0 mm], after: [1 mm, 0 mm, 0 mm]', '', false],
  ['without a later one the first does', 'before: [9 mm, 0 mm, 0 mm]', '', true],
])('%s', (_what, given, more, expected) => {
  expect(off(given, more)).toBe(expected);
});

test('a point keeps its place by the data sheet', () => {
  const survey = surveyOf(
    'measurements: { points: [{ name: A, nominal: [1 m, -2 mm, 3 mm], after: [1 m, 0 mm, 0 mm] }] }',
  );
  const shown = measuringShown(measuredBody(survey, survey.plan.measurements ?? {}));
  expect(shown?.points[0]?.nominal).toEqual([1000, -2, 3]);
});
