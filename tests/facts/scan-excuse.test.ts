import { expect, test } from 'vitest';
import { scanExcuse } from '../../src/facts/step/scan-excuse.ts';

// process.md, step 22: a missing scan is a hold. What keeps a vehicle from being read is common practice of the trade.
test.each([
  'No time before the job',
  'Customer did not want to pay',
  'not necessary',
  'The tool was lent out',
  'Battery was flat and the customer did not pay for a supply',
])('%s: no reason of the vehicle', (text) => {
  expect(scanExcuse(text)).toBe(text);
});

test.each([
  'The 12 V battery was crushed and the vehicle takes no current',
  'Diagnostic connector torn off',
  'Front burnt out, does not wake',
  'The vehicle has no diagnosis',
  'Flooded to the seats',
  'none',
])('%s: accepted', (text) => {
  expect(scanExcuse(text)).toBeUndefined();
});
