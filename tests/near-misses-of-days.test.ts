import { describe, expect, test } from 'vitest';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';

const radar =
  "disturbed: bumper, kind: static, result: passed, done: 2026-10-12T09:00, cite: { reference: assist, at: p. 9 }, conditions: { load: 'Nobody inside, nothing loaded', tyre_pressures: Set to the plate, floor: 'Bay 4, last levelled 2026-08-17' }, report: R-2224-2";

// One day without hours says nothing of the order, and what spoils nothing may come late. Common practice.
describe('cleared', () => {
  test.each<[string, string, readonly Change[]]>([
    [
      'bolts of a link tightened on the day of the bench, without an hour',
      wholeJob,
      [['tightened: 2026-10-06', 'tightened: 2026-10-10']],
    ],
    [
      'bolts of a link tightened an hour before the bench',
      wholeJob,
      [['tightened: 2026-10-06', 'tightened: 2026-10-10T13:00']],
    ],
    [
      'the last scan on the day of the calibrations, without an hour',
      wholeJob,
      [['scan_after: { done: 2026-10-12T11:00', 'scan_after: { done: 2026-10-12']],
    ],
    [
      'the first scan on the morning on which the batteries were disconnected',
      wholeJob,
      [['scan_before: { done: 2026-09-30', 'scan_before: { done: 2026-10-01T07:40']],
    ],
    [
      'wax on the day of the sealer, without an hour, where nothing is baked on the vehicle',
      batteryOut,
      [
        ['  sealer: { planned: true, done: 2026-09-16T16:00', '  sealer: { planned: true, done: 2026-09-21'],
        [
          '  bake: { planned: true, done: 2026-09-18, temperature: 60 °C, time: 40 min, traction_battery: removed }\n',
          '',
        ],
      ],
    ],
    [
      'the drive before the last calibration, which is a dynamic one',
      wholeJob,
      [['road_test: { done: 2026-10-12T13:00', 'road_test: { done: 2026-10-11T13:00']],
    ],
    [
      'a radar that needs no calibration by the maker’s page, although the cover came off',
      wholeJob,
      [[radar, 'disturbed: bumper, kind: not required, cite: { reference: assist, at: p. 9 }']],
    ],
    [
      'a pillar 2.9 mm off that nobody touches',
      batteryOut,
      [['before: [1010.2 mm, 689.4 mm', 'before: [1010.2 mm, 687.3 mm']],
    ],
    [
      'one of two points read as the data sheet has it',
      wholeJob,
      [['after: [-1020.6 mm, -451.6 mm, 214.4 mm]', 'after: [-1020 mm, -452 mm, 214 mm]']],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});
