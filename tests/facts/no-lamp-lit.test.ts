import { expect, test } from 'vitest';
import { saysNoLampLit } from '../../src/facts/step/no-lamp-lit.ts';

test.each([
  'none',
  'No warning lamps were lit.',
  'none, has only oil, charge and brake',
  'none, looked at with the ignition switched over',
])('no lamp was lit: %s', (text) => {
  expect(saysNoLampLit(text)).toBe(true);
});

test.each([
  'none but the airbag',
  'none, only the airbag',
  'none, ABS',
  'none, engine',
  'none, has only oil and brake, and brake was lit',
  'none, but one came on later',
  'airbag',
])('a lamp may have been lit: %s', (text) => {
  expect(saysNoLampLit(text)).toBe(false);
});
