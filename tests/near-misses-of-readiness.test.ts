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
  ])('%s', (_name, changes) => {
    expect(ruleIds(judgeText(changed(batteryOut, changes)))).toEqual([]);
  });
});
