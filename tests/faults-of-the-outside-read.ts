import { readFileSync } from 'node:fs';
import type { Fault } from './fault.ts';

/** A roof skin renewed, and the windscreen bonded in after paint. */
export const roofAndScreen = readFileSync('tests/plans/roof-and-screen.yaml', 'utf8');

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
];
