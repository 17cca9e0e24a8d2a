import { expect, test } from 'vitest';
import { gasGroup, gasShares, leastCarbonDioxide, sharesOff } from '../../src/joint/gas-shares.ts';
import { gasKind } from '../../src/joint/shielding-gas.ts';

// Groups and their limits: ISO 14175:2008, from memory. The ways of writing are those of bottles and job cards.

test.each([
  ['82 % argon and 18 % carbon dioxide', 82, 18],
  ['argon 82 % CO2 18 %', 82, 18],
  ['82 % argon 18 % CO2', 82, 18],
  ['CO2 18 % argon', undefined, 18],
  ['Ar/CO2 82/18', 82, 18],
  ['82/18 argon and carbon dioxide (M21)', 82, 18],
  ['argon with 2,5 % CO2', undefined, 2.5],
  ['argon', undefined, undefined],
])('the shares of "%s"', (text, argon, carbonDioxide) => {
  const shares = gasShares(text);
  expect([shares.argon, shares.carbonDioxide]).toEqual([argon, carbonDioxide]);
});

test.each([
  'M21, 15 % CO2',
  'M21, 25 % CO2',
  'M20, 15 % CO2',
  'M12, 2.5 % CO2',
  'M24, 10 % CO2, 3 % O2',
  'C1',
  'I1, argon 100 %',
  '50 % argon, 50 % CO2',
])('fits: %s', (text) => {
  expect(sharesOff(text)).toBeUndefined();
});

test.each([
  'M21, 14 % CO2',
  'M21, 26 % CO2',
  'M13, 2 % CO2',
  'I1, 18 % CO2',
  'C1, 82 % argon',
  '49 % argon, 51 % CO2',
])('does not fit: %s', (text) => {
  expect(sharesOff(text)).toBeDefined();
});

test('the least carbon dioxide is the share, else that of the group; a mixture without either tells none', () => {
  expect(['C1', 'CO2', 'M21', 'M12', 'I1', 'argon mix'].map(leastCarbonDioxide)).toEqual([
    100,
    100,
    15,
    0.5,
    0,
    undefined,
  ]);
  expect(gasGroup('M210')).toBeUndefined();
});

test('what is denied is not in it', () => {
  expect(
    ['Pure argon, no CO2', 'argon without oxygen', 'CO2-free argon', 'argon, no air'].map(gasKind),
  ).toEqual(['inert', 'inert', 'inert', 'inert']);
});
