import { readFileSync } from 'node:fs';
import type { Fault } from './fault.ts';
import { rail } from './one-change.ts';
import type { Change } from './one-change.ts';

/** A roof skin renewed, and the windscreen bonded in after paint. */
export const roofAndScreen = readFileSync('tests/plans/roof-and-screen.yaml', 'utf8');

/** The heat as one entry and the pull in it as the next. */
export const heatedAndPulled: readonly Change[] = [
  [
    '        clear_within: 300 mm\n\n  - id: a-pillar-r',
    `        clear_within: 300 mm
      - { do: straighten, step: 11, method: with heat, cite: { reference: rail, at: p. 7 } }

  - id: a-pillar-r`,
  ],
  [
    'damage: { kind: bend, found_by: measured }',
    'damage: { kind: bend, short_radius: false, found_by: measured }',
  ],
];

const hold = { severity: 'hold' } as const;

/** Beside each, in near-misses-of-the-outside-read.test.ts, stands the good plan that was once taken for it. */
export const faultsOfTheOutsideRead: readonly Fault[] = [
  {
    ...hold,
    name: 'protection: the seams of the roof were sealed before it was on',
    plan: roofAndScreen,
    changes: [
      ['sealer: { planned: true, done: 2026-09-19T09:00', 'sealer: { planned: true, done: 2026-09-14T09:00'],
    ],
    rule: 'sealed-before-the-joint',
    on: 'done: 2026-09-14T09:00',
  },
  {
    ...hold,
    name: 'current: the roof is cut off by plasma, and the clamp is where a gun for spots has none',
    plan: roofAndScreen,
    changes: [['cut_with: drill', 'cut_with: plasma']],
    rule: 'earth-clamp-and-units-not-stated',
    on: '- do: replace',
  },
  {
    severity: 'hold',
    name: 'heat: pulled in the heat of the entry before, of which nobody says how long it is held',
    plan: rail,
    changes: [...heatedAndPulled, ['        hold: 60 s\n', '']],
    rule: 'neighbour-too-hot',
    on: 'do: heat',
  },
  {
    severity: 'stop',
    name: 'heat: pulled in the heat of the entry before, which is too hot',
    plan: rail,
    changes: [...heatedAndPulled, ['temperature: 600 °C', 'temperature: 660 °C']],
    rule: 'heat-over-650',
    on: 'temperature: 660 °C',
  },
];
