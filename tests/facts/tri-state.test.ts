import { expect, test } from 'vitest';
import { allYes, anyYes } from '../../src/facts/tri-state.ts';
import type { TriState } from '../../src/facts/tri-state.ts';

// The strong three-valued logic of Kleene (1938): `or` and `and` over any number of answers.
test.each<readonly [readonly TriState[], TriState, TriState]>([
  [[], false, true],
  [[true], true, true],
  [[false], false, false],
  [[undefined], undefined, undefined],
  [[true, false], true, false],
  [[true, undefined], true, undefined],
  [[undefined, true], true, undefined],
  [[false, undefined], undefined, false],
  [[undefined, false], undefined, false],
  [[false, undefined, true], true, false],
])('%j: any %s, all %s', (values, any, all) => {
  expect([anyYes(values), allYes(values)]).toEqual([any, all]);
});
