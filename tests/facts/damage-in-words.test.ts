import { expect, test } from 'vitest';
import { damageInWords } from '../../src/facts/part/damage-in-words.ts';
import { laterPage } from '../../src/facts/papers/later-page.ts';

test.each([
  ['kinked at the tower, 20 mm long', ['bend'], 'kinked'],
  ['the flange is torn', ['bend'], 'torn'],
  ['a crack of 5 mm', ['bend'], 'crack'],
  ['smooth, not kinked', ['bend'], undefined],
  ['no crack, no crease', ['bend'], undefined],
  ['behind the crush box, 60 mm long', ['bend'], undefined],
  ['kinked at the tower', ['kink'], undefined],
  ['creased', ['crease'], undefined],
  [undefined, ['bend'], undefined],
])('“%s” beside %s tells of %s', (extent, kinds, word) => {
  expect(damageInWords({ damage: extent === undefined ? {} : { extent } }, kinds)).toBe(word);
});

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
