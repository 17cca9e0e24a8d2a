import { describe, expect, test } from 'vitest';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, rail, ring, skin } from './one-change.ts';
import type { Change } from './one-change.ts';

const holdPoints = (plan: string): string =>
  plan.slice(plan.indexOf('hold_points:\n'), plan.indexOf('\nfinish:\n') + 1);
const bench =
  '  - { id: bench, kind: general guidance, title: Data of the alignment bench, document: AB-2026-3, revision: "3", published: 2026-03-01, covers: { maker: Corvane, model: Ilex, bodies: [saloon], years: 2022-2024 }, looked_up: 2026-09-29, for_job: K-2224 }\n\nmake_safe:';

// Beside each fault of the wheels, the calibration, the hold points and the lamps, a good plan that lies close to it.
describe('near misses of the process stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    ['camber at the end of its range', wholeJob, [[`after: -0°35'`, `after: -1°00'`]]],
    ['the same value in minutes alone', wholeJob, [[`after: 0°04'`, `after: 4'`]]],
    [
      'the same value in decimal degrees',
      wholeJob,
      [[`before: -1°50', after: -0°35'`, `before: -1°50', after: -0.58°`]],
    ],
    ['toe at the end of its range, in millimetres', bondedRail, [['after: 1.2 mm', 'after: 2 mm']]],
    ['toe in inches', bondedRail, [['before: -1.5 mm, after: 1.2 mm', 'before: -0.06 in, after: 0.05 in']]],
    [
      'out of range before the work, which is why it is done',
      wholeJob,
      [[`before: 0°02', after: 0°02'`, `before: 0°40', after: 0°02'`]],
    ],
    [
      'the data of the bench, listed with what they cover',
      wholeJob,
      [
        ['cite: { reference: link, at: p. 11 }', 'cite: { reference: bench, at: row 12 }'],
        ['\nmake_safe:', bench],
      ],
    ],
    // Power on, wheels, cover on, radar: the usual order.
    [
      'a cover put on after the voltage is on again',
      wholeJob,
      [
        [
          '- { do: replace, extent: whole, done: 2026-10-09 }',
          '- { do: replace, extent: whole, done: 2026-10-10T11:00 }',
        ],
      ],
    ],
    [
      'total toe instead of that of each wheel',
      wholeJob,
      [
        [
          `of: toe, at: front left, specified: 0°05', tolerance: 0°05', before: -0°25', after: 0°04'`,
          `of: total toe, at: front axle, specified: 0°10', tolerance: 0°10', after: 0°09'`,
        ],
      ],
    ],
    [
      'a dynamic calibration, for which no floor is needed',
      wholeJob,
      [
        [
          'kind: static, result: passed, done: 2026-10-12T09:00',
          'kind: dynamic, result: passed, done: 2026-10-12T09:00',
        ],
        [`, floor: 'Bay 4, last levelled 2026-08-17'`, ''],
      ],
    ],
    [
      'a camera that needs none after its bracket, by the maker’s page',
      bondedRail,
      [
        [
          '    - { sensor: steering angle',
          '    - { sensor: front camera, disturbed: bracket, kind: not required, cite: { reference: wheels, at: p. 12 } }\n    - { sensor: steering angle',
        ],
      ],
    ],
    [
      'a camera that nobody touched',
      bondedRail,
      [
        [
          '    - { sensor: steering angle',
          '    - { sensor: front camera, disturbed: not disturbed, kind: not required }\n    - { sensor: steering angle',
        ],
      ],
    ],
    [
      'a flange released the hour before it is closed',
      batteryOut,
      [['done: 2026-09-15T09:00', 'done: 2026-09-15T14:59']],
    ],
    [
      'a flange released the minute it is closed',
      batteryOut,
      [['done: 2026-09-15T09:00', 'done: 2026-09-15T15:00']],
    ],
    [
      'hold points of no part in particular',
      wholeJob,
      [
        ['before the last weld, part: rail-l, ', 'before the last weld, '],
        ['before closing, part: rail-l, ', 'before closing, '],
      ],
    ],
    [
      'a hold point of the shop’s own beside them',
      ring,
      [
        [
          'hold_points:\n',
          'hold_points:\n  - { point: other, name: Doors hung before paint, by: { name: B. Ohm } }\n',
        ],
      ],
    ],
    ['a cosmetic job without any hold point', skin, []],
    ['heat alone closes nothing', rail, []],
    [
      'a memory supply while no restraint connector is open',
      skin,
      [
        [
          'parts:\n',
          'make_safe: { low_voltage: { planned: true, batteries: [12 V], fitted: [12 V], memory_supply: true } }\nparts:\n',
        ],
      ],
    ],
    [
      'the cooling told by its test alone',
      batteryOut,
      [['checked: [connectors, enclosure, mounting, coolant]', 'checked: [connectors, enclosure, mounting]']],
    ],
    [
      'a lamp that is lit and explained',
      wholeJob,
      [
        [
          'T13:30, lit: []',
          'T13:30, lit: [{ lamp: service due, system: engine, explanation: The owner has it done elsewhere and knows. }]',
        ],
      ],
    ],
    [
      'no lamp lit at the counter, none spoken of at the end',
      batteryOut,
      [['warning_lamps: none,', 'warning_lamps: No lamps lit.,']],
    ],
    [
      'no release of the structure where no pack asks for one',
      wholeJob,
      [['  structural_release: { done: 2026-10-07T16:00, by: { name: B. Ohm, role: workshop lead } }\n', '']],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });

  test('who wrote the plan may release a hold point, with a note; a shop may make it a hold', () => {
    const own = changed(wholeJob, [
      ['09:00, by: { name: B. Ohm, role: workshop lead }', '09:00, by: { name: Amsel R }'],
    ]);
    expect(ruleIds(judgeText(own))).toEqual([]);
    expect(ruleIds(judgeText(own), ['note'])).toContain('released-by-its-author');
    expect(ruleIds(judgeText(own, 'examples/rules/amsel-shop'))).toContain('released-by-its-author');
    expect(ruleIds(judgeText(wholeJob, 'examples/rules/amsel-shop'))).not.toContain('released-by-its-author');
  });

  test('a shop asks for a release of the structure, and for a hold point of its own', () => {
    const without = changed(wholeJob, [
      ['  structural_release: { done: 2026-10-07T16:00, by: { name: B. Ohm, role: workshop lead } }\n', ''],
    ]);
    expect(ruleIds(judgeText(without, 'examples/rules/amsel-shop'))).toContain('structural-release-missing');
  });

  test('several points that are missing are one question', () => {
    const report = judgeText(changed(ring, [[holdPoints(ring), '']]));
    const asked = report.findings.filter(({ finding }) => finding.severity !== 'note');
    expect(asked.map(({ finding }) => finding.rule)).toEqual(['hold-point-missing']);
  });
});
