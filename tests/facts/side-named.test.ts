import { expect, test } from 'vitest';
import { isNamedForOtherSide } from '../../src/facts/part/side-named.ts';

test.each([
  ['Door ring, left', 'right', true],
  ['RIGHT SILL', 'left', true],
  ['Door ring, left', 'left', false],
  ['Bracket left of the right lamp', 'right', false],
  ['Rail L', 'right', false],
  ['Rest of an upright', 'left', false],
  ['Cover, left-hand', 'right', false],
  ['Door ring, left', 'both', false],
  ['Door ring, left', 'centre', false],
] as const)('%s, stated as %s', (name, side, expected) => {
  expect(isNamedForOtherSide({ name, side })).toBe(expected);
  expect(isNamedForOtherSide({ side })).toBe(false);
  expect(isNamedForOtherSide({ name })).toBe(false);
});
