import { expect, test } from 'vitest';
import { laterPage } from '../../src/facts/papers/later-page.ts';

test.each([
  ['p. 4', 'p. 4'],
  ['p. 1-4', 'p. 1-4'],
  ['page 12', 'page 12'],
  ['p. 2', undefined],
  ['section 7', undefined],
  ['step 9', undefined],
])('of a single sheet, “%s”', (at, found) => {
  expect(laterPage({ parts: [{ grade_from: { reference: 'rail', at } }] }, 'rail')).toBe(found);
  expect(laterPage({ parts: [{ grade_from: { reference: 'rail', at } }] }, 'other')).toBeUndefined();
});
