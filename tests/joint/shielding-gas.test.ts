import { expect, test } from 'vitest';
import { meltWidthMm } from '../../src/joint/melt-width.ts';
import { gasKind } from '../../src/joint/shielding-gas.ts';

// Groups of ISO 14175 and how shops write them; from memory.
test.each([
  ['M21', 'active'],
  ['M21, 82 % argon and 18 % carbon dioxide', 'active'],
  ['82/18 Ar/CO2', 'active'],
  ['C1', 'active'],
  ['I1', 'inert'],
  ['pure argon', 'inert'],
  ['Ar/He 70/30', 'inert'],
  ['nitrogen', 'unfit'],
  ['none, in air', 'unfit'],
  ['as usual', undefined],
])('“%s” is %s', (text, kind) => {
  expect(gasKind(text)).toBe(kind);
});

// By hand: 1/(Tp − T0) = 4.13 ρc t Y/H + 1/(Tm − T0) with the handbook’s numbers, solved for the molten half width at 100 J/mm in 1 mm.
test('a strip that melts', () => {
  expect(meltWidthMm(100)).toBeCloseTo((2 * 100) / (4.1327 * 0.0044 * 1490), 2);
});
