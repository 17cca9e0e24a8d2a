import { expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

/** Where a day stands that has not come, as of 2026-10-21. */
function ahead(text: string): readonly string[] {
  return factsOf(text)
    .all('entry')
    .filter(
      ({ facts }) => facts['entry.fault']?.known === true && facts['entry.fault'].value === 'dated ahead',
    )
    .map(({ at }) => at);
}

test.each([
  ['make_safe: { low_voltage: { done: 2026-10-22 } }', '/make_safe/low_voltage/done'],
  ['parts: [{ operations: [{ do: weld, done: 2027-01-01T08:00 }] }]', '/parts/0/operations/0/done'],
  [
    'parts: [{ operations: [{ joints: [{ adhesive: { cured: 2026-11-01 } }] }] }]',
    '/parts/0/operations/0/joints/0/adhesive/cured',
  ],
  ['measurements: { before_welding: 2026-12-01 }', '/measurements/before_welding'],
  ['verify: { calibrations: [{ done: 2026-12-01 }] }', '/verify/calibrations/0/done'],
])('%s', (text, at) => {
  expect(ahead(text)).toEqual([at]);
});

test.each([
  'make_safe: { low_voltage: { done: 2026-10-21T23:59 } }',
  'measurements: { calibration_due: 2027-03-01 }',
  'deviations: [{ date: 2026-10-10, expires: 2027-10-21 }]',
  'verify: { road_test: { planned: 2027-01-01 by P. Falk } }',
])('not: %s', (text) => {
  expect(ahead(text)).toEqual([]);
});
