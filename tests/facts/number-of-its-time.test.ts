import { expect, test } from 'vitest';
import { numberOfItsTime } from '../../src/facts/number-of-its-time.ts';

const short = 'PL13-204417';

test.each([
  { frame_number: short, model_year: 1980, market: 'united-states' as const },
  { frame_number: short, model_year: 1985, market: 'european-union' as const },
  { frame_number: short, model_year: 1990, market: 'united-kingdom' as const },
])('a short number of its time: %j', (vehicle) => {
  expect(numberOfItsTime(vehicle)).toEqual({ text: short, key: 'frame_number' });
});

test.each([
  { frame_number: short, model_year: 1991, market: 'european-union' as const },
  { frame_number: short, model_year: 1985, market: 'united-states' as const },
  { frame_number: short, model_year: 1985 },
  // The tail of a long number, and a long one of which characters are lost.
  { vin: 'HX770088', model_year: 1985, market: 'european-union' as const },
  { frame_number: '0TSHH8ZZZJX7700', model_year: 1985, market: 'european-union' as const },
])('a number of which the form is asked: %j', (vehicle) => {
  expect(numberOfItsTime(vehicle)).toBeUndefined();
});
