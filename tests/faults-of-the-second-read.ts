import type { Fault } from './fault.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { electric, ring } from './one-change.ts';
import type { Change } from './one-change.ts';
import { releasedRing } from './released.ts';

/** The seam of the skin, at 12 mm from the ring; the plan says that the ring is off. */
export const seamNearRing: Change = [
  'treatment: stays, distance: 60 mm, path: joined',
  'treatment: removed, distance: 12 mm, path: joined',
];

export const extinguisher = 'extinguisher: Two of 6 kg beside the bay';
export const isolatedBy = 'by: { name: L. Brandt, qualification: high-voltage level 2 }, cite:';
export const signedBy = 'role: workshop lead, qualification: body structure level 3 }\n  date: 2026-10-17';
export const lamps = 'warning_lamps: none';

const hotWork = { plan: releasedRing, severity: 'hold' } as const;
const course = {
  plan: electric,
  severity: 'hold',
  rule: 'high-voltage-person-not-qualified',
  on: 'isolation: {',
} as const;
const lamp = {
  plan: batteryOut,
  severity: 'hold',
  rule: 'lamp-at-intake-without-code',
  on: 'scan_before:',
} as const;
const lifted = {
  plan: releasedRing,
  severity: 'stop',
  rule: 'lifted-on-what-carries-nothing',
  on: 'lifting: {',
} as const;

/** A part that is only there to be lifted on: it has no operation, and nothing else to be said of it. */
export const partAdded = (kind: string): Change => [
  '  - id: floor\n',
  `  - { id: point, name: Lifting point, kind: ${kind}, damage: { kind: none, found_by: seen } }\n  - id: floor\n`,
];

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
  ...['traction battery', 'bumper beam', 'bumper cover', 'suspension part', 'steering part'].map(
    (kind): Fault => ({
      ...lifted,
      name: `lifted at a ${kind}`,
      changes: [partAdded(kind), ['points: [floor]', 'points: [floor, point]']],
    }),
  ),
  {
    ...lifted,
    severity: 'hold',
    name: 'lifted at a subframe without a page',
    changes: [partAdded('subframe'), ['points: [floor]', 'points: [floor, point]']],
    rule: 'lifted-on-what-only-a-page-allows',
  },
  ...[
    'none',
    'None at hand.',
    'no extinguisher',
    '"One of 6 kg, empty, to be refilled next week"',
    'Two that expired in spring',
    'At the reception',
    'One in the office',
    'Water hose at the door',
    'Two buckets of water beside the car',
    'A 9 l water extinguisher beside the bay',
  ].map((text): Fault => ({
    ...hotWork,
    name: `hot work and as extinguisher: ${text}`,
    changes: [[extinguisher, `extinguisher: ${text}`]],
    rule: 'extinguisher-not-at-hand',
    on: `extinguisher: ${text}`,
  })),
  {
    ...hotWork,
    name: 'the extinguisher stands 60 m away',
    changes: [[extinguisher, "extinguisher: 'At the office, 60 m away'"]],
    rule: 'extinguisher-far-away',
    on: 'extinguisher: ',
  },
  ...[
    'high-voltage level 2 (course in November)',
    'high-voltage course from 2026-11-02',
    'high-voltage course is running',
    'high-voltage level 2 booked',
    'attending the high-voltage seminar',
  ].map((text): Fault => ({
    ...course,
    name: `isolated by somebody with ${text}`,
    changes: [[isolatedBy, isolatedBy.replace('high-voltage level 2', `'${text}'`)]],
  })),
  {
    plan: electric,
    severity: 'hold',
    name: 'isolated by somebody whose qualification ran out in spring',
    changes: [
      [
        isolatedBy,
        isolatedBy
          .replace('level 2', 'level 2, valid until 2026-03-31')
          .replace('qualification: ', "qualification: '")
          .replace('03-31', "03-31'"),
      ],
    ],
    rule: 'high-voltage-qualification-run-out',
    on: 'isolation: {',
  },
  {
    plan: releasedRing,
    severity: 'hold',
    name: 'signed by somebody whose course is to come',
    changes: [[signedBy, signedBy.replace('level 3', 'level 3 course in December')]],
    rule: 'signed-with-another-qualification',
    on: 'by: { name: B. Ohm, role: workshop lead, qualification: body structure level 3 course',
  },
  {
    plan: releasedRing,
    severity: 'hold',
    name: 'welded by somebody whose test is next week',
    changes: [['shop test 26-04', 'test in December']],
    rule: 'joints-made-without-qualification',
    on: 'test in December',
  },
  ...['airbag', 'traction battery (red)', 'ABS', 'steering', 'tyre pressure and brake'].map(
    (text): Fault => ({
      ...lamp,
      name: `lit at intake and no code of it: ${text}`,
      changes: [
        [lamps, `warning_lamps: ${text}`],
        ['verify:\n', 'verify:\n  warning_lamps: { done: 2026-09-23T11:00, lit: [] }\n'],
      ],
    }),
  ),
];
