import { describe, expect, test } from 'vitest';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, electric, rail, ring, skin } from './one-change.ts';
import type { Change } from './one-change.ts';
import { releasedElectric, releasedRing } from './released.ts';

const road = 'road_test: { done: 2026-10-16, result: passed }';
const scan = '4.2, codes: []';
const lists = (entries: string): Change => ['  low_voltage:\n', `  ${entries}\n  low_voltage:\n`];

// Beside each fault of making safe and of release, a good plan that lies close to it.
describe('near misses of safety stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    ['a dead circuit read in millivolts', releasedElectric, [['reading: 0.2 V', 'reading: 390 mV']]],
    [
      'the leads the other way round on a dead circuit',
      releasedElectric,
      [['reading: 0.2 V', 'reading: -0.3 V']],
    ],
    ['proved as the wait is over', releasedElectric, [['T09:30', 'T09:05']]],
    [
      'isolated and proved the day before',
      releasedElectric,
      [
        ['looked_up: 2026-10-20', 'looked_up: 2026-10-19'],
        ['looked_up: 2026-10-20', 'looked_up: 2026-10-19'],
        ['done: 2026-10-20T09:00', 'done: 2026-10-19T16:00'],
        ['done: 2026-10-20T09:30', 'done: 2026-10-19T16:20'],
      ],
    ],
    ['no faults, in other words', releasedElectric, [['faults: none', 'faults: None left.']]],
    ['the insulation at its limit', releasedElectric, [['900 Ω/V', '500 Ω/V']]],
    ['the road test is not stated', releasedRing, [[`  ${road}\n`, '']]],
    [
      'a stored code of the body with its explanation',
      releasedRing,
      [
        [
          scan,
          '4.2, codes: [{ code: B1200, system: body, state: stored, explanation: Lamp was unplugged. }]',
        ],
      ],
    ],
    [
      'a code that was cleared',
      releasedRing,
      [[scan, '4.2, codes: [{ code: B0012, system: restraint, state: cleared }]']],
    ],
    [
      'a camera that needs no calibration by the maker’s page',
      releasedRing,
      [
        [
          road,
          `${road}\n  calibrations: [{ sensor: front camera, kind: not required, cite: { reference: ring, at: p. 9 } }]`,
        ],
      ],
    ],
    [
      'an alignment within range',
      releasedRing,
      [
        [
          road,
          `${road}\n  alignment: { done: 2026-10-16, result: within range, cite: { reference: ring, at: p. 20 } }\n  calibrations: [{ sensor: steering angle sensor, kind: static, done: 2026-10-16, result: passed, cite: { reference: ring, at: p. 21 } }]`,
        ],
      ],
    ],
    [
      'a unit that deployed is replaced',
      releasedRing,
      [
        [
          'state: undeployed, treatment: removed, step: 2 }\n      - { unit: belt',
          'state: deployed, treatment: replaced, step: 2 }\n      - { unit: belt',
        ],
        [
          'deployed: false\n',
          'deployed: true\n    replacement_list: { reference: safe, at: p. 9 }\n    control_unit: replaced\n',
        ],
        [
          'hold_points:\n',
          'hold_points:\n  - { point: restraint wiring before the trim, done: 2026-10-15, by: { name: B. Ohm } }\n',
        ],
      ],
    ],
    [
      'a step planned in words that speak of what is not done',
      ring,
      [
        [
          'planned: Battery off and covered, key kept in the office.',
          'planned: Battery off and left on the bench; nothing stays connected.',
        ],
      ],
    ],
    [
      'batteries disconnected today',
      ring,
      [['planned: Battery off and covered, key kept in the office.', 'done: 2026-10-21T07:00']],
    ],
    [
      'the driver’s airbag stays, and everybody knows where it sits',
      ring,
      [
        [
          '      - { unit: belt',
          '      - { unit: airbag, name: Driver airbag, state: undeployed, treatment: stays }\n      - { unit: belt',
        ],
      ],
    ],
    ['a fire watch of half an hour', ring, [lists('fire: { planned: true, watch: 30 min }')]],
    [
      'a gas vehicle whose cylinder is taken out',
      ring,
      [
        ['drive: combustion', 'drive: [combustion, natural-gas]'],
        lists('fire: { planned: true, fluids: [{ item: gas cylinder, treatment: removed }] }'),
      ],
    ],
    [
      'a gas vehicle whose fender is pulled cold',
      skin,
      [['drive: combustion', 'drive: [combustion, liquefied-petroleum-gas]']],
    ],
    ['lifted on a floor that the work ends at', ring, [lists('lifting: { planned: true, points: [floor] }')]],
    [
      'heat read by a probe in calibration',
      rail,
      [['means: temperature crayon', 'means: contact probe, calibration_due: 2026-10-21']],
    ],
    [
      'a crayon with an old date on it',
      rail,
      [['means: temperature crayon', 'means: temperature crayon, calibration_due: 2020-01-01']],
    ],
    [
      'a new pretensioner',
      skin,
      [
        [
          'parts:\n',
          'parts:\n  - { id: belt, name: Front belt, kind: restraint unit, condition: new, damage: { kind: none, found_by: seen }, operations: [{ do: replace, extent: whole, fasteners: { one_time: renewed, cite: { reference: belt, at: p. 2 } } }] }\n',
        ],
        [
          'parts:\n',
          'references: [{ id: belt, kind: maker procedure, document: SRM-TRN-0300, revision: A, covers: { maker: Corvane, model: Tarn, bodies: [all], years: 2020-2022 }, looked_up: 2026-10-15, for_job: K-2215 }]\nmake_safe: { low_voltage: { planned: true, batteries: [12 V], key: In the office }, restraints: { planned: true, wait: 10 min, wait_asked: 10 min, wait_cite: { reference: belt, at: p. 1 }, units: [] } }\nparts:\n',
        ],
        [
          'verify:\n',
          'verify:\n  scan_before: { planned: true }\n  restraints: { planned: true }\n  scan_after: { planned: true }\n',
        ],
      ],
    ],
    [
      'the bake told with the part and once more with the finish',
      electric,
      [
        ['    battery_removed: true\n', ''],
        [
          '      - do: replace\n',
          '      - { do: bake, temperature: 60 °C, hold: 45 min }\n      - do: replace\n',
        ],
        [
          'finish:\n',
          'finish:\n  bake: { temperature: 60 °C, time: 45 min, traction_battery: in the vehicle, battery_limit: { temperature: 60 °C, time: 45 min, cite: { reference: hv, at: p. 9 } } }\n',
        ],
      ],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});
