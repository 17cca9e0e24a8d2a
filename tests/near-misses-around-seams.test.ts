import { describe, expect, test } from 'vitest';
import { replacedWhole } from './faults-around-seams.ts';
import { bondedQuarter, sectionedPost } from './faults-of-seams.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';

const rowOfSill = / {10}- to: sill-r\n[\s\S]*?(?= {8}near:\n)/u.exec(sectionedPost)?.[0] ?? 'no such joint';
const bonder = "qualification: 'arc brazing and bonding, steel'";
const wiring = '- { item: wiring, distance: 80 mm, path: through air, treatment: removed }';
const fire = 'extinguisher: Two of 6 kg beside the bay, watch: 45 min';
const sheet = 'settings: { machine: Inverter gun with the short arm';

// Each is a plan that a fault of faults-around-seams.ts lies close to; it stays cleared.
describe('near misses around seams stay cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    [
      'a gun that gives what coated mild sheet asks for',
      sectionedPost,
      [['most_force: 5 kN', 'most_force: 2.8 kN']],
    ],
    [
      'a force that is set higher than mild sheet asks for',
      sectionedPost,
      [[sheet, 'settings: { force: 4.2 kN, machine: Inverter gun with the short arm']],
    ],
    [
      'a flange with room for the row to the millimetre',
      sectionedPost,
      [['edge: 9 mm', 'edge: 9 mm\n            length: 850 mm\n            factory_pitch: 34 mm']],
    ],
    ['a stack at the end of the grip', bondedRail, [['grip_to: 7 mm', 'grip_to: 5.5 mm']]],
    [
      'primed, sealed and baked on one day',
      sectionedPost,
      [
        ['primer: { planned: true, done: 2026-09-16T09:00', 'primer: { planned: true, done: 2026-09-18'],
        ['sealer: { planned: true, done: 2026-09-16T11:00', 'sealer: { planned: true, done: 2026-09-18'],
      ],
    ],
    [
      'painted on the day of the brazing',
      bondedQuarter,
      [
        ['film: 0.16 mm, done: 2026-09-24', 'film: 0.16 mm, done: 2026-09-22'],
        ['primer: { planned: true, done: 2026-09-23T16:00', 'primer: { planned: true, done: 2026-09-22'],
        ['sealer: { planned: true, done: 2026-09-23T17:00', 'sealer: { planned: true, done: 2026-09-22'],
      ],
    ],
    [
      'painted on the bench before it was fitted',
      bondedQuarter,
      [
        [
          'step: 40, film: 0.16 mm, done: 2026-09-24',
          'step: 40, off_vehicle: true, film: 0.16 mm, done: 2026-09-21',
        ],
      ],
    ],
    [
      'a skin bonded to structure on the last day of an approval',
      bondedQuarter,
      [['vehicle:\n', `  joined_by: [{ name: T. Rusk, ${bonder}, valid_until: 2026-09-22 }]\nvehicle:\n`]],
    ],
    [
      'a sound seat out for the work and in again',
      bondedQuarter,
      [
        [
          '  - id: wheel-rl\n',
          `  - id: seat
    name: Driver's seat
    kind: seat
    damage: { kind: none, found_by: seen }
    operations:
      - { do: remove and refit, step: 3, refit_step: 50, done: 2026-09-25, cite: { reference: quarter, at: p. 18 }, fasteners: { one_time: renewed, cite: { reference: quarter, at: p. 18 }, tightened: 2026-09-25 } }
  - id: wheel-rl\n`,
        ],
        [
          '    - { sensor: steering angle sensor',
          '    - { sensor: seat mat, kind: not fitted }\n    - { sensor: steering angle sensor',
        ],
      ],
    ],
    [
      'a post replaced whole and joined to sill and roof rail',
      sectionedPost,
      [
        ...replacedWhole,
        [
          '        near:\n',
          `${rowOfSill.replaceAll('sill-r', 'roof-rail-r').replaceAll('W-502-2', 'W-502-3')}        near:\n`,
        ],
      ],
    ],
    [
      'a post that by its page is joined to the sill alone',
      sectionedPost,
      [...replacedWhole, ['    damage: { kind: kink', '    joined_to: [sill-r]\n    damage: { kind: kink']],
    ],
    ...['front radars left and right', 'both front radars', 'front radar'].map(
      (sensor): readonly [string, string, readonly Change[]] => [
        `after the cover was off calibrated: ${sensor}`,
        wholeJob,
        [['sensor: front radar,', `sensor: ${sensor},`]],
      ],
    ),
    [
      'a radar at the left alone, none at the right',
      wholeJob,
      [
        ['sensor: front radar,', 'sensor: front radar left,'],
        [
          '    - { sensor: front camera',
          '    - { sensor: front radar right, kind: not fitted }\n    - { sensor: front camera',
        ],
      ],
    ],
    [
      'foam taken out and put back',
      sectionedPost,
      [
        [wiring, `${wiring}\n          - { item: foam, distance: 60 mm, path: joined, treatment: removed }`],
        ['wax: Through the drawn holes', 'foam: Two-part foam of the maker, wax: Through the drawn holes'],
      ],
    ],
    [
      'the refrigerant drawn off',
      sectionedPost,
      [[fire, `${fire}, fluids: [{ item: refrigerant line, treatment: emptied }]`]],
    ],
    [
      'the clamp on the part, half a metre off, the units unplugged, in the fixed words',
      sectionedPost,
      [
        [
          '        earth_clamp:',
          '        earth_clamp_on: same part\n        earth_clamp_distance: 500 mm\n        control_units_state: unplugged\n        earth_clamp:',
        ],
      ],
    ],
    [
      'the hit post measured at one point before',
      sectionedPost,
      [['before: [1105.3 mm, 639 mm, 900.2 mm], ', '']],
    ],
    [
      'the post of a car that was hit in front, told by the diagonals of its opening',
      sectionedPost,
      [
        [
          'impact: Right side low on the b-post, at a right angle, by a bollard.',
          'impact: Right front corner.',
        ],
        [
          / {4}- \{ name: P1, on: post-r.*\n {4}- \{ name: P2, on: post-r.*\n/u.exec(sectionedPost)?.[0] ??
            '',
          '',
        ],
        [
          'hold_points:\n',
          '  openings:\n    - { name: Front door opening right, nominal: [1402 mm, 1296 mm], diagonals_before: [1396 mm, 1300 mm], diagonals_after: [1402.4 mm, 1295.6 mm], tolerance: 3 mm }\nhold_points:\n',
        ],
      ],
    ],
    ['a seam that nobody counts', sectionedPost, [['            count: 1\n            count_done: 1\n', '']]],
    [
      'a rail that ends at a seam of the factory',
      wholeJob,
      [
        [
          'extent: whole\n        cite: { reference: rail, at: p. 8-16 }',
          'extent: part\n        at: factory seam at the apron\n        cite: { reference: rail, at: p. 8-16 }',
        ],
      ],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });
});

test('4.2 kN on steel of 1,300 MPa gets no note that would have the force turned down', () => {
  const strong = changed(sectionedPost, [
    [
      'name: Sill, right\n    kind: sill\n    side: right\n    structural: true\n    grade: HC420LA',
      'name: Sill, right\n    kind: sill\n    side: right\n    structural: true\n    grade: 22MnB5+AS150',
    ],
  ]);
  const notes = (force: string): readonly string[] =>
    ruleIds(
      judgeText(
        changed(strong, [[sheet, `settings: { force: ${force}, machine: Inverter gun with the short arm`]]),
      ),
      ['note'],
    );
  expect(notes('4.2 kN')).not.toContain('spot-settings-unusual');
  expect(notes('4.2 kN')).not.toContain('spot-force-low-for-strong-steel');
  expect(notes('0.42 kN')).toContain('spot-force-low-for-strong-steel');
});

test('a permit for a hold of the whole plan may name the part that it was met on', () => {
  const permit = (part: string): string =>
    changed(sectionedPost, [
      ['fire_watch: 45 min', 'fire_watch: 10 min'],
      [
        'sign_off:',
        `deviations:\n  - { rule: fire-watch-too-short, part: ${part}, by: { name: M. Dorn, role: workshop lead }, date: 2026-09-14, reason: Watched by camera, expires: 2026-10-30 }\nsign_off:`,
      ],
    ]);
  expect(ruleIds(judgeText(permit('post-r')))).not.toContain('deviation-matches-nothing');
  expect(ruleIds(judgeText(permit('nobody')))).toContain('deviation-matches-nothing');
});

test('a rail that is measured at one point alone gets a note, at two none', () => {
  const notes = (plan: string): readonly string[] => ruleIds(judgeText(plan), ['note']);
  const atOne = changed(wholeJob, [['{ name: R3, on: rail-l', '{ name: R3, on: apron-l']]);
  expect(notes(wholeJob)).not.toContain('worked-part-measured-at-one-point');
  expect(notes(atOne)).toContain('worked-part-measured-at-one-point');
});
