import { expect, test } from 'vitest';
import { unfitConditions } from '../../src/facts/step/unfit-conditions.ts';

// What no maker asks for when a sensor is set, and what many do. Common practice of the trade, from memory.
test.each([
  [{ load: 'Tool box of 80 kg in the boot' }, 1],
  [{ load: 'Two people inside' }, 1],
  [{ load: 'Nobody inside, nothing loaded' }, 0],
  [{ load: 'Tank full, luggage taken out' }, 0],
  [{ load: 'Ballast of 75 kg on the driver’s seat, as the page asks' }, 0],
  [{ tyre_pressures: 'As it came' }, 1],
  [{ tyre_pressures: 'Front left low' }, 1],
  [{ tyre_pressures: 'Not set' }, 1],
  [{ tyre_pressures: 'Set to the plate' }, 0],
  [{ tyre_pressures: 'Set to the plate, for low load' }, 0],
  [{ tyre_pressures: '2.5 bar all round' }, 0],
  [{ floor: 'Yard, slopes 2 %' }, 1],
  [{ floor: 'Not quite level' }, 1],
  [{ floor: 'Bay 4, last levelled 2026-08-17' }, 0],
  [{ floor: 'Bay 2, slopes less than 1 mm a metre' }, 0],
  [{ floor: 'Covered yard, level to 3 mm' }, 0],
])('%j', (conditions, count) => {
  expect(unfitConditions({ kind: 'static', conditions })).toHaveLength(count);
});

test('whoever drives a sensor in sits inside, on a street', () => {
  const conditions = { load: 'Driver inside', floor: 'Street' };
  expect(unfitConditions({ kind: 'dynamic', conditions })).toEqual([]);
  expect(unfitConditions({ kind: 'static', conditions })).toEqual(['load "Driver inside"', 'floor "Street"']);
});
