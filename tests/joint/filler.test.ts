import { expect, test } from 'vitest';
import { fillerMetal } from '../../src/joint/filler.ts';

// Designations of ISO 14341, 14343, 24373 and 18273 and words of the trade; from memory.
test.each([
  ['CuSi3', 'copper'],
  ['CuSi3Mn1', 'copper'],
  ['Cu 6560', 'copper'],
  ['ISO 24373 - S Cu 6560 (CuSi3Mn1), 1.0 mm', 'copper'],
  ['CuAl8', 'copper'],
  ['ERCuSi-A', 'copper'],
  ['silicon bronze', 'copper'],
  ['aluminium bronze', 'copper'],
  ['G3Si1', 'steel'],
  ['G 3 Si 1', 'steel'],
  ['ISO 14341-A - G 42 4 M21 G3Si1', 'steel'],
  ['ER70S-6, 0.8 mm', 'steel'],
  ['SG2', 'steel'],
  ['AlSi5', 'aluminium'],
  ['AlSi12', 'aluminium'],
  ['AlMg5', 'aluminium'],
  ['Al 4043', 'aluminium'],
  ['ER5356', 'aluminium'],
  ['4047', 'aluminium'],
  ['308LSi', 'stainless'],
  ['ER316L', 'stainless'],
  ['19 9 L Si', 'stainless'],
  ['the usual wire', undefined],
  ['0.8 mm', undefined],
  ['AlSi5 or CuSi3', undefined],
  ['G3Si1 for the root, CuSi3 for the cover', undefined],
])('%s is %s', (designation, metal) => {
  expect(fillerMetal(designation)).toBe(metal);
});
