import type { Fault } from './fault.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { measuredRing } from './measured-ring.ts';
import { rail, ring } from './one-change.ts';

const hold = { severity: 'hold' } as const;
const stop = { severity: 'stop' } as const;

/** Rows that stop short of their flange, numbers that cannot be true together, and what is told by its strength alone. Common practice. */
export const faultsOfCovering: readonly Fault[] = [
  {
    ...hold,
    plan: wholeJob,
    name: '32 spots that leave 200 mm of the flange bare at either end, the factory’s pitch unknown',
    changes: [['pitch: 32 mm', 'pitch: 32 mm\n            length: 1400 mm']],
    rule: 'row-short-of-flange',
    on: 'length: 1400 mm',
  },
  {
    ...hold,
    plan: ring,
    name: '56 spots bunched in the middle of the flange',
    changes: [['pitch: 33 mm', 'pitch: 25 mm\n            length: 1848 mm']],
    rule: 'row-short-of-flange',
    on: 'length: 1848 mm',
  },
  {
    ...hold,
    plan: ring,
    name: 'a row short of its flange at the factory’s pitch',
    changes: [
      ['pitch: 33 mm', 'pitch: 33 mm\n            factory_pitch: 33 mm\n            length: 2200 mm'],
    ],
    rule: 'row-short-of-flange',
    on: 'length: 2200 mm',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'spots recorded as made at a pitch for which the flange has no room',
    changes: [['pitch: 32 mm', 'pitch: 45 mm\n            length: 800 mm']],
    rule: 'row-made-beyond-flange',
    on: 'count_done: 32',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'a factory that is said to have put 5 spots on a metre',
    changes: [
      ['factory_count: 24', 'factory_count: 5'],
      ['pitch: 32 mm', 'pitch: 32 mm\n            length: 1050 mm'],
    ],
    rule: 'factory-row-too-thin',
    on: 'factory_count: 5',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'one spot of the factory, and two for it, on half a metre',
    changes: [
      ['factory_count: 24', 'factory_count: 1'],
      ['count: 32\n            count_done: 32', 'count: 2\n            count_done: 2'],
      ['pitch: 32 mm', 'pitch: 32 mm\n            length: 500 mm'],
    ],
    rule: 'factory-row-too-thin',
    on: 'factory_count: 1\n',
  },
  {
    ...hold,
    plan: rail,
    name: 'a rail that is heated, told by its strength alone',
    changes: [['grade: HC340LA', 'strength: 410 MPa']],
    rule: 'heated-metal-not-told',
    on: 'strength: 410 MPa',
  },
  {
    ...stop,
    plan: measuredRing,
    name: 'a zero point in inches after the repair',
    changes: [['after: [1800.2 mm, 1120 mm, 0.1 mm]', 'after: [70.87 mm, 44.09 mm, 0 mm]']],
    rule: 'point-misread-after',
    on: 'name: Z4',
  },
  {
    ...stop,
    plan: measuredRing,
    name: 'y of the wrong sign at a corner of the door',
    changes: [['after: [1700.2 mm, -120.6 mm', 'after: [1700.2 mm, 120.6 mm']],
    rule: 'point-misread-after',
    on: 'name: C2, on',
  },
];
