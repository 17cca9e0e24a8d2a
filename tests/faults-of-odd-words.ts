import type { Fault } from './fault.ts';
import { bondedQuarter } from './faults-of-seams.ts';
import { rivetedSill } from './faults-of-joints.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { measuredRing } from './measured-ring.ts';
import type { Change } from './one-change.ts';
import { releasedElectric, releasedRing } from './released.ts';

export const lock = (words: string): Change => ['lock: Padlock K-7 and tag', `lock: '${words}'`];
export const sealedAt = (words: string): Change => [
  'places: Every seam that was opened',
  `places: '${words}'`,
];
export const waxed = (words: string): Change => [
  'part: ring-l, planned: true, done: 2026-10-14, primer: Two-part epoxy, wax: Through the drawn holes after all heat',
  `part: ring-l, planned: true, done: 2026-10-14, primer: Two-part epoxy, wax: '${words}'`,
];
export const driven = (note: string): Change => [
  'road_test: { done: 2026-10-16, result: passed }',
  `road_test: { done: 2026-10-16, result: passed, note: '${note}' }`,
];
export const kept = (where: string): Change => ['where: job folder', `where: '${where}'`];
/** The point across from one corner of the door: it kept its tolerance. */
export const left = (because: string): Change => [
  'before: [600.1 mm, 1240.2 mm, 100.1 mm], after: [600.1 mm, 1240.1 mm, 99.9 mm]',
  `before: [600.1 mm, 1240.2 mm, 100.1 mm], dropped_because: '${because}'`,
];
/** A corner of the ring that was 6 mm off. */
export const leftOff = (because: string): Change => [
  'before: [1681.2 mm, 66.3 mm, 1099.4 mm], after: [1680.5 mm, 60.8 mm, 1100.2 mm]',
  `before: [1681.2 mm, 66.3 mm, 1099.4 mm], dropped_because: '${because}'`,
];
/** Without the opening, which asks for all its corners. */
export const noOpening: Change = ['  openings: [{ name: Front left door, corners: [C1, C2, C3, C4] }]\n', ''];

const hold = { plan: releasedRing, severity: 'hold' } as const;

/** Words in which somebody says no, or too little, without the word for it. What is a fault is common practice. */
export const faultsOfOddWords: readonly Fault[] = [
  ...[
    'Plug laid on the driver seat',
    'Plug on the bench',
    'Lies in the boot of the car',
    'Plug with its tag in the glove box',
    'As always',
    'Not locked, nobody touches it',
    'Left unlocked',
  ].map((words): Fault => ({
    ...hold,
    plan: releasedElectric,
    name: `the isolation is held by: ${words}`,
    changes: [lock(words)],
    rule: 'high-voltage-isolation-not-locked',
    on: 'isolation: {',
  })),
  ...[
    'no time left',
    'was fine before',
    'the battery of the system ran flat',
    'C9 stands for it',
    'forgot, hidden by nothing',
  ].map((because): Fault => ({
    ...hold,
    plan: measuredRing,
    name: `a point that kept its tolerance, left out because: ${because}`,
    changes: [left(because)],
    rule: 'point-out-of-tolerance',
    on: 'name: C1R',
  })),
  ...['no time left', 'C1R stands for it', 'out of reach'].map((because): Fault => ({
    ...hold,
    plan: measuredRing,
    name: `a point that was off, left out because: ${because}`,
    changes: [noOpening, leftOff(because)],
    rule: 'point-out-of-tolerance',
    on: 'name: C3',
  })),
  ...['Floor only', 'Floor', 'only the floor seams', 'Roof', 'What was left in the tube, a little'].map(
    (words): Fault => ({
      ...hold,
      name: `sealed: ${words}`,
      changes: [sealedAt(words)],
      rule: 'sealer-leaves-seams-out',
      on: 'sealer: {',
    }),
  ),
  ...['a little, what was left', 'Aluminium does not rust, none', 'As far as the can reached'].map(
    (words): Fault => ({
      ...hold,
      name: `waxed: ${words}`,
      changes: [waxed(words)],
      rule: 'closed-section-scantly-protected',
      on: 'part: ring-l, planned',
    }),
  ),
  {
    ...hold,
    name: 'bared aluminium that does not rust',
    changes: [['product: Two-part epoxy on bared metal', "product: 'Does not rust, none'"]],
    rule: 'bared-metal-primer-not-recorded',
    on: 'primer: { planned: true, done: 2026-10-13',
  },
  ...['none', 'Aluminium does not rust, none'].map((words): Fault => ({
    plan: rivetedSill,
    severity: 'stop',
    name: `aluminium kept apart from steel by: ${words}`,
    changes: [
      ['method: adhesive and rivet\n', 'method: blind rivet\n'],
      [
        '            adhesive: { product: Two-part A, preparation: abraded and primed, cure: 24 h at 20 °C }\n',
        '',
      ],
      ['insulation: nylon film', `insulation: '${words}'`],
    ],
    rule: 'unlike-metals-bare',
    on: '- to: floor',
  })),
  ...[
    'Steering wheel wobbles at 80',
    'vibrates slightly from 100 on',
    'Pulls to the left when braking',
    'pulls slightly to the right',
    'shudders when cold',
    'noise from the front left',
    'ABS warning light after 2 km',
    'rattles on bad roads, will be looked at',
  ].map((note): Fault => ({
    ...hold,
    name: `the road test tells: ${note}`,
    changes: [driven(note)],
    rule: 'note-tells-of-trouble',
    on: 'road_test: {',
  })),
  ...[
    'On my phone',
    'my own phone',
    'Private cloud of T. Holm',
    'At home with the technician',
    "nobody's",
    'his laptop, to be copied',
  ].map((where): Fault => ({
    ...hold,
    name: `the record is kept: ${where}`,
    changes: [['where: job folder', `where: "${where}"`]],
    rule: 'record-not-with-the-shop',
    on: 'where: ',
  })),
  {
    ...hold,
    name: 'the photographs of the welds on a private phone',
    changes: [['record: P-2207-1', "record: 'photographs on T. Holm''s own phone'"]],
    rule: 'record-not-with-the-shop',
    on: "record: 'photographs",
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'the flange released by the one who welded it, beside a workshop lead',
    changes: [
      [
        'point: flange before closing, part: rail-l, done: 2026-10-05T09:00, by: { name: B. Ohm, role: workshop lead }',
        'point: flange before closing, part: rail-l, done: 2026-10-05T09:00, by: { name: T. Holm, role: body technician }',
      ],
    ],
    rule: 'own-work-released-beside-a-second-person',
    on: 'point: flange before closing',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'the structure released by the one who welded it, beside a workshop lead',
    changes: [
      [
        'structural_release: { done: 2026-10-07T16:00, by: { name: B. Ohm, role: workshop lead } }',
        'structural_release: { done: 2026-10-07T16:00, by: { name: Holm T, role: body technician } }',
      ],
    ],
    rule: 'own-work-released-beside-a-second-person',
    on: 'structural_release: {',
  },
  {
    ...hold,
    plan: wholeJob,
    name: 'the vehicle signed by the one who welded it, beside a workshop lead',
    changes: [
      [
        '  by: { name: B. Ohm, role: workshop lead, qualification: body structure level 3 }\n  date',
        '  by: { name: T. Holm, role: body technician, qualification: body structure level 3 }\n  date',
      ],
    ],
    rule: 'own-work-signed-beside-a-second-person',
    on: '  by: { name: T. Holm, role: body technician, qualification: body structure level 3 }',
  },
  {
    ...hold,
    plan: bondedQuarter,
    name: 'sealed along the floor alone, and the quarter panel was joined',
    changes: [['places: Arch flange and every seam that was opened', 'places: Floor only']],
    rule: 'sealer-leaves-seams-out',
    on: 'places: Floor only',
  },
];
