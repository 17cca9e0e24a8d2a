import { describe, expect, test } from 'vitest';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, ring } from './one-change.ts';
import type { Change } from './one-change.ts';

// What looks like a fault and is none, each at the limit of a rule. Common practice of the trade.

const fitter = `        by: { name: L. Brandt, role: high-voltage technician, qualification: high-voltage level 3 }
        done: 2026-09-22T11:00`;
const newBattery: readonly Change[] = [
  ['do: remove and refit\n        step: 4\n        refit_step: 50', 'do: replace\n        step: 50'],
  ['kind: traction battery\n', 'kind: traction battery\n    condition: new\n'],
  ['restraints: { done: 2026-09-22T09:00', 'restraints: { done: 2026-09-22T12:00'],
];

const battery: readonly (readonly [name: string, changes: readonly Change[]])[] = [
  [
    'proved as the wait is over',
    [['wait: 10 min, wait_asked: 10 min, lock', 'wait: 15 min, wait_asked: 15 min, lock']],
  ],
  [
    'only the wait that the page asks is stated',
    [['wait: 10 min, wait_asked: 10 min, lock', 'wait_asked: 10 min, lock']],
  ],
  ['the proof reads 10 V', [['reading: 0.2 V', 'reading: 10 V']]],
  [
    'the insulation at the least limit that there is',
    [
      ['insulation: 1200', 'insulation: 100'],
      ['limit: 500', 'limit: 100'],
    ],
  ],
  ['the voltage put on the minute the battery is in', [['done: 2026-09-22T15:00', 'done: 2026-09-22T11:00']]],
  ['nobody else named at the battery than who isolated', [[fitter, '        done: 2026-09-22T11:00']]],
  ['the battery in at the step after the last weld', [['refit_step: 50', 'refit_step: 31']]],
  ['the battery in by its day alone', [['        step: 4\n        refit_step: 50\n', '']]],
  [
    'the battery in on the day of the bake',
    [
      ['tightened: 2026-09-22T11:00', 'tightened: 2026-09-18T11:00'],
      [fitter, fitter.replace('22T', '18T')],
    ],
  ],
  ['a new battery, bolted in when the body was measured', newBattery],
  [
    'the pretensioner off at the step of the work',
    [
      [
        'at: pillar-r, state: undeployed, treatment: removed, step: 2 ',
        'at: sill-r, state: undeployed, treatment: removed, step: 20 ',
      ],
    ],
  ],
  ['sealed on the day of the last weld', [['done: 2026-09-16T16:00', 'done: 2026-09-16']]],
  [
    'primed between two welds, before the box is closed',
    [['done: 2026-09-16T14:00, product', 'done: 2026-09-15T17:00, product']],
  ],
];

const bonded: readonly (readonly [name: string, changes: readonly Change[]])[] = [
  ['rivets at twice their diameter from the edge', [['edge: 14 mm', 'edge: 13 mm']]],
  ['rivets at three times their diameter from each other', [['pitch: 40 mm', 'pitch: 19.5 mm']]],
  ['the stack as thick as the rivet holds', [['grip_to: 7 mm', 'grip_to: 5.5 mm']]],
  ['the adhesive on its last day', [['expires: 2027-01-31', 'expires: 2026-09-07']]],
  ['closed as its open time ends', [['closed_after: 25 min', 'closed_after: 60 min']]],
  [
    'cured the day it was joined',
    [['24 h at 23 °C, cured: 2026-09-08T10:00', '30 min at 80 °C, cured: 2026-09-07']],
  ],
  [
    'cured the minute it is driven, measured when it bore handling',
    [['cured: 2026-09-08T10:00', 'handling_time: 24 h, cured: 2026-09-15T16:00']],
  ],
  [
    'more rivets than the factory',
    [['count: 18\n            count_done: 18', 'count: 20\n            count_done: 21']],
  ],
  [
    'bonded metal primed before it was joined',
    [['primer: { planned: true, done: 2026-09-08T14:00', 'primer: { planned: true, done: 2026-09-07T09:00']],
  ],
  ['no bolts that are used once', [['one_time: renewed', 'one_time: none']]],
  [
    'a mild hybrid, both batteries off',
    [
      ['drive: combustion', 'drive: mild-hybrid'],
      ['batteries: [12 V], fitted: [12 V]', 'batteries: [12 V, 48 V], fitted: [12 V, 48 V]'],
    ],
  ],
  [
    'belts of which more is said than that they wait',
    [['belts_checked: "All looked', 'belts_checked: "Not yet driven; all looked']],
  ],
];

const whole: readonly (readonly [name: string, changes: readonly Change[]])[] = [
  [
    'the pretensioner in the ring off at the step of its skin',
    [
      [
        'at: ring-l, state: undeployed, treatment: removed, step: 2 }\n    deployed',
        'at: ring-l, state: undeployed, treatment: removed, step: 10 }\n    deployed',
      ],
    ],
  ],
];

describe('near misses of whole jobs stay cleared', () => {
  test.each([
    ...battery.map(([name, changes]) => [name, batteryOut, changes] as const),
    ...bonded.map(([name, changes]) => [name, bondedRail, changes] as const),
    ...whole.map(([name, changes]) => [name, ring, changes] as const),
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});
