import type { Fault } from './fault.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';

const hold = { plan: batteryOut, severity: 'hold' } as const;
const stop = { plan: batteryOut, severity: 'stop' } as const;

const belt = 'at: pillar-r, state: undeployed, treatment: removed, step: 2';

/** What was to be ready before the work, or off until its end, and was not. Common practice; the rules name their sources. */
export const faultsOfReadiness: readonly Fault[] = [
  {
    ...hold,
    name: 'restraints: a belt reel stays at the foot of the pillar above the sill that is welded',
    changes: [[belt, 'at: pillar-r, state: undeployed, treatment: stays']],
    rule: 'restraint-unit-above-the-work',
    on: 'name: Front belt right',
  },
  {
    ...hold,
    name: 'restraints: that belt reel comes off only after the weld',
    changes: [[belt, 'at: pillar-r, state: undeployed, treatment: removed, step: 25']],
    rule: 'restraint-unit-above-the-work',
    on: 'name: Front belt right',
  },
  {
    ...hold,
    name: 'restraints: what becomes of that belt reel is not said',
    changes: [[belt, 'at: pillar-r, state: undeployed']],
    rule: 'restraint-unit-above-the-work',
    on: 'name: Front belt right',
  },
  {
    ...hold,
    name: 'restraints: the belt is back before the sill is welded',
    changes: [['tightened: 2026-09-22T08:30', 'tightened: 2026-09-12T08:30']],
    rule: 'belt-fitted-before-the-work-ended',
    on: 'tightened: 2026-09-12',
  },
  {
    ...hold,
    name: 'fire: the precautions come the day after the first weld',
    changes: [['fire: { planned: true, done: 2026-09-14', 'fire: { planned: true, done: 2026-09-16T12:00']],
    rule: 'fire-precautions-after-the-work',
    on: 'fire: {',
  },
  {
    ...hold,
    name: 'fire: the precautions come an hour after the first weld',
    changes: [['fire: { planned: true, done: 2026-09-14', 'fire: { planned: true, done: 2026-09-15T16:00']],
    rule: 'fire-precautions-after-the-work',
    on: 'fire: {',
  },
  {
    ...hold,
    name: 'fire: a brake line stays full beside the work, and nobody says how far off',
    changes: [['watch: 40 min }', 'watch: 40 min, fluids: [{ item: brake line, treatment: stays }] }']],
    rule: 'fuel-left-in-place',
    on: 'fire: {',
  },
  {
    ...hold,
    name: 'fire: the refrigerant stays, and the condenser comes off',
    changes: [
      ['watch: 40 min }', 'watch: 40 min, fluids: [{ item: refrigerant line, treatment: stays }] }'],
      [
        '  - id: floor\n',
        '  - id: condenser\n    name: Condenser\n    kind: other\n    structural: false\n    damage: { kind: none, found_by: seen }\n    operations:\n      - { do: remove and refit, step: 5, refit_step: 60, done: 2026-09-22T10:00 }\n\n  - id: floor\n',
      ],
    ],
    rule: 'fluids-against-parts',
    on: 'fire: {',
  },
  {
    ...hold,
    name: 'lifting: the vehicle is set on its points after the sill was welded',
    changes: [['lifting: { planned: true, done: 2026-09-10', 'lifting: { planned: true, done: 2026-09-16']],
    rule: 'set-on-its-points-after-the-work',
    on: 'lifting: {',
  },
  {
    ...hold,
    name: 'batteries: the key lies in the vehicle',
    changes: [['key: In the office', 'key: In the cup holder']],
    rule: 'key-left-in-the-vehicle',
    on: 'key: In the cup holder',
  },
  {
    ...stop,
    name: 'high voltage: the wait is shorter than the page asks',
    changes: [['wait: 10 min, wait_asked: 10 min, lock', 'wait: 2 min, wait_asked: 10 min, lock']],
    rule: 'isolation-wait-too-short',
    on: 'wait: 2 min',
  },
  {
    ...hold,
    name: 'high voltage: the battery comes out, and its cooling is said not to have been opened',
    changes: [['coolant: tight', 'coolant: not opened']],
    rule: 'battery-cooling-said-unopened',
    on: 'coolant: not opened',
  },
];
