import { expect, test } from 'vitest';
import { neverReads, scanExcuse } from '../../src/facts/step/scan-excuse.ts';
import type { Scan } from '../../src/generated/plan-types.ts';

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

// A car of before the directive 98/69/EC (2001, from memory) may have nothing to read; a vehicle that is only dead is not ready for the road.
const never = (year: number, before: string, after = before): boolean =>
  neverReads({
    vehicle: { model_year: year },
    verify: { scan_before: { not_possible: before }, scan_after: { not_possible: after } },
  });

test.each(['the car has no diagnostic access', 'No diagnosis', 'without a diagnostic socket'])(
  '%s: not read after the repair either',
  (text) => {
    expect(never(1985, text)).toBe(true);
    expect(never(2000, text)).toBe(true);
    expect(never(2001, text)).toBe(false);
  },
);

test.each([
  'takes no current',
  'Diagnostic connector torn off',
  'no diagnostic access, the 12 V battery is dead and the customer did not pay',
  'the shop has no diagnostic interface',
  'no diagnostic access with our tool',
  'none',
])('%s: asked for after the repair', (text) => {
  expect(never(1985, text)).toBe(false);
  expect(never(1985, 'no diagnostic access', text)).toBe(false);
  expect(never(1985, text, 'no diagnostic access')).toBe(false);
});

test('a car that was read before can be read afterwards', () => {
  const reason = { not_possible: 'no diagnostic access' };
  const after = (scan_before: Scan): boolean =>
    neverReads({ vehicle: { model_year: 1985 }, verify: { scan_before, scan_after: reason } });
  expect(after({ ...reason, done: '2026-10-06' })).toBe(false);
  expect(after({ ...reason, codes: [{ code: 'B1' }] })).toBe(false);
  expect(neverReads({ vehicle: { model_year: 1985 }, verify: { scan_after: reason } })).toBe(false);
  expect(neverReads({ vehicle: {}, verify: { scan_before: reason, scan_after: reason } })).toBe(false);
  expect(after(reason)).toBe(true);
});
