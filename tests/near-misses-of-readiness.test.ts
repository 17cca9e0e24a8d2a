import { describe, expect, test } from 'vitest';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed } from './one-change.ts';
import type { Change } from './one-change.ts';

const belt = 'at: pillar-r, state: undeployed, treatment: removed, step: 2';
const beside = '          - { item: traction battery, distance: 120 mm';

// Beside each fault of readiness, a good plan that lies close to it. Common practice of the trade.
describe('near misses of readiness stay cleared', () => {
  test.each<readonly [string, readonly Change[]]>([
    [
      'a belt reel comes off, its step not numbered',
      [[belt, 'at: pillar-r, state: undeployed, treatment: removed']],
    ],
    [
      'a belt reel of the other side stays',
      [
        [
          `${belt} }`,
          `${belt} }\n      - { unit: belt pretensioner, name: Front belt left, at: sill-l, state: undeployed, treatment: stays }`,
        ],
      ],
    ],
    [
      'a belt reel stays, and its distance is listed',
      [
        [belt, 'at: pillar-r, state: undeployed, treatment: stays'],
        [beside, `          - { item: belt pretensioner, distance: 600 mm, path: through air }\n${beside}`],
      ],
    ],
    [
      'fire precautions on the day of the first weld',
      [['fire: { planned: true, done: 2026-09-14', 'fire: { planned: true, done: 2026-09-15']],
    ],
    [
      'fire precautions an hour before the first weld',
      [['fire: { planned: true, done: 2026-09-14', 'fire: { planned: true, done: 2026-09-15T14:00']],
    ],
    [
      'set on its points on the day of the first weld',
      [['lifting: { planned: true, done: 2026-09-10', 'lifting: { planned: true, done: 2026-09-15']],
    ],
    ['the belt back on the day of the last weld', [['tightened: 2026-09-22T08:30', 'tightened: 2026-09-16']]],
    [
      'the key away from the vehicle, in so many words',
      [['key: In the office', 'key: On the board in the office 20 m from the car']],
    ],
    ['a battery that air cools', [['coolant: tight', 'coolant: air-cooled']]],
    [
      'the brake line was emptied',
      [['watch: 40 min }', 'watch: 40 min, fluids: [{ item: brake line, treatment: emptied }] }']],
    ],
    [
      'live units on a shelf under lock, with a warning in words',
      [
        [
          'storage: Locked steel cabinet by the parts store, away from heat and power',
          "storage: 'On a shelf of the locked cabinet, cushion side up, never upside down'",
        ],
      ],
    ],
    [
      'live units in a box under lock beside the booth',
      [
        [
          'storage: Locked steel cabinet by the parts store, away from heat and power',
          'storage: Lock box on the wall beside the booth',
        ],
      ],
    ],
    [
      'a qualification for traction voltage besides that of a welder',
      [
        [
          'qualification: high-voltage level 3 }\n    isolation',
          "qualification: 'resistance spot, steel, and high-voltage level 2' }\n    isolation",
        ],
      ],
    ],
    [
      'a qualification that names no trade',
      [['qualification: high-voltage level 3 }\n    isolation', 'qualification: level 3 }\n    isolation']],
    ],
    ['a lock by its number', [['lock: Padlock K-3 and tag', 'lock: K-3']]],
    [
      'the bolts of the belts at the minute of the check',
      [['tightened: 2026-09-22T08:30', 'tightened: 2026-09-22T09:00']],
    ],
    [
      'the scan tells that no unit fired',
      [
        [
          'scan_before: { done: 2026-09-09, tool: shop tool 4.2, codes: [] }',
          'scan_before: { done: 2026-09-09, tool: shop tool 4.2, codes: [{ code: B0070, system: restraint, state: stored, explanation: belt not fired but unplugged }] }',
        ],
      ],
    ],
    [
      'the battery was cut off by the crash signal',
      [
        [
          'scan_before: { done: 2026-09-09, tool: shop tool 4.2, codes: [] }',
          'scan_before: { done: 2026-09-09, tool: shop tool 4.2, codes: [{ code: P0A7D, system: traction battery, state: stored, explanation: cut off by the crash signal }] }',
        ],
      ],
    ],
    [
      'no cable in the zone, and one is listed 400 mm off',
      [
        ['battery_removed: true\n', 'battery_removed: true\n    cables_in_zone: none\n'],
        ['item: high-voltage cable, distance: 500 mm', 'item: high-voltage cable, distance: 400 mm'],
      ],
    ],
    [
      'words on the blow that name both sides',
      [
        [
          'impact: Right side at the front door, at a right angle, by a post.',
          'impact: By a car that came from the left, on the right side.',
        ],
      ],
    ],
    [
      'words that deny a crack',
      [
        [
          "extent: 'at the foot of the front door, 80 mm long'",
          "extent: 'at the foot of the front door, no crack, not torn'",
        ],
      ],
    ],
    ['a page for both sides', [["title: 'Sill, replacement'", "title: 'Sill left and right, replacement'"]]],
    [
      'a document that names restraints and the body',
      [["title: 'Sill, replacement'", "title: 'Sill, and restraints to be taken off for it'"]],
    ],
  ])('%s', (_name, changes) => {
    expect(ruleIds(judgeText(changed(batteryOut, changes)))).toEqual([]);
  });
});
