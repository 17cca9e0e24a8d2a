import type { Fault } from './fault.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { ring } from './one-change.ts';
import { releasedRing } from './released.ts';

/** The seam of the skin, at 12 mm from the ring; the plan says that the ring is off. */
export const seamNearRing = [
  'treatment: stays, distance: 60 mm, path: joined',
  'treatment: removed, distance: 12 mm, path: joined',
] as const;

/** What a reader of the trade found cleared, or stopped for another reason. What is a fault is common practice. */
export const faultsOfTheSecondRead: readonly Fault[] = [
  {
    plan: releasedRing,
    severity: 'stop',
    name: 'the seam of the skin laid days after the new ring went in, which the plan calls removed',
    changes: [seamNearRing],
    rule: 'neighbour-too-hot',
    on: 'part: ring-l, treatment: removed',
  },
  {
    plan: ring,
    severity: 'stop',
    name: 'a skin closed over a new ring, which the plan calls removed because the cut comes first',
    changes: [seamNearRing],
    rule: 'neighbour-too-hot',
    on: 'part: ring-l, treatment: removed',
  },
  {
    plan: releasedRing,
    severity: 'stop',
    name: 'the new ring called renewed at a seam dated after it',
    changes: [['treatment: stays, distance: 60 mm', 'treatment: renewed, distance: 12 mm']],
    rule: 'neighbour-too-hot',
    on: 'part: ring-l, treatment: renewed',
  },
];
