import type { Fault } from './fault.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { bondedQuarter, sectionedPost } from './faults-of-seams.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import type { Change } from './one-change.ts';

const ofPost = { plan: sectionedPost, severity: 'hold' } as const;
const ofQuarter = { plan: bondedQuarter, severity: 'hold' } as const;
const ofRail = { plan: wholeJob, severity: 'hold' } as const;
const postPoints =
  / {4}- \{ name: P1, on: post-r.*\n {4}- \{ name: P2, on: post-r.*\n/u.exec(sectionedPost)?.[0] ?? '';
const diagonals =
  'nominal: [1402 mm, 1296 mm], diagonals_before: [1396 mm, 1300 mm], diagonals_after: [1402.4 mm, 1295.6 mm], tolerance: 3 mm';
const bonder = "qualification: 'arc brazing and bonding, steel'";
const approvedUntil = (day: string): Change => [
  'vehicle:\n',
  `  joined_by: [{ name: T. Rusk, role: body technician, ${bonder}, valid_until: ${day} }]\nvehicle:\n`,
];
const seatOf = (work: string): Change => [
  '  - id: wheel-rl\n',
  `  - id: seat
    name: Driver's seat
    kind: seat
    damage: { kind: bend, found_by: part removed }
    operations:
      - { do: ${work}, done: 2026-09-22 }
  - id: wheel-rl\n`,
];
const seamOfPost =
  / {10}- to: post-r\n[\s\S]*?(?= {10}- to: sill-r\n)/u.exec(sectionedPost)?.[0] ?? 'no such joint';
/** The whole post in place of its lower end: the seam at K1 is gone, and the sill is all that it is joined to. */
export const replacedWhole: readonly Change[] = [
  [
    'do: section\n        step: 20\n        at: K1\n',
    'do: replace\n        step: 20\n        extent: whole\n',
  ],
  [seamOfPost, ''],
  ['    joined_to: [post-inner-r, sill-r]\n', ''],
];
const wiring = '- { item: wiring, distance: 80 mm, path: through air, treatment: removed }';

/** What is wrong around the seam: the gun, the current, the neighbours, the paint, the measuring. Common practice. */
export const faultsAroundSeams: readonly Fault[] = [
  {
    ...ofPost,
    name: 'a gun of 1.2 kN for high-strength steel',
    changes: [['most_force: 5 kN', 'most_force: 1.2 kN']],
    rule: 'machine-too-weak-for-high-strength-steel',
    on: 'most_force: 1.2 kN',
  },
  {
    ...ofPost,
    name: 'a gun of 3 kN, where one of the sheets is dual-phase steel of 600 MPa',
    changes: [
      ['most_force: 5 kN', 'most_force: 3 kN'],
      [
        'name: Sill, right\n    kind: sill\n    side: right\n    structural: true\n    grade: HC420LA',
        'name: Sill, right\n    kind: sill\n    side: right\n    structural: true\n    grade: HCT600X',
      ],
    ],
    rule: 'machine-too-weak-for-strong-steel',
    on: 'most_force: 3 kN',
  },
  {
    ...ofPost,
    name: 'more spots than the flange has room for',
    changes: [['edge: 9 mm', 'edge: 9 mm\n            length: 500 mm\n            factory_pitch: 34 mm']],
    rule: 'spots-crowded-on-flange',
    on: 'count: 26',
  },
  {
    plan: bondedRail,
    severity: 'stop',
    name: 'a rivet half a millimetre too short for its stack',
    changes: [['grip_to: 7 mm', 'grip_to: 5 mm']],
    rule: 'stack-outside-grip',
    on: 'grip_to: 5 mm',
  },
  {
    ...ofPost,
    name: 'sealer on bare metal, primed the day after',
    changes: [
      ['primer: { planned: true, done: 2026-09-16T09:00', 'primer: { planned: true, done: 2026-09-17T09:00'],
    ],
    rule: 'sealed-before-primer',
    on: 'sealer: { planned: true, done',
  },
  {
    ...ofPost,
    name: 'sealed two days after the bake',
    changes: [
      ['sealer: { planned: true, done: 2026-09-16T11:00', 'sealer: { planned: true, done: 2026-09-20T11:00'],
    ],
    rule: 'sealed-after-bake',
    on: 'sealer: { planned: true, done',
  },
  {
    ...ofPost,
    name: 'primed the day after the bake',
    changes: [
      ['primer: { planned: true, done: 2026-09-16T09:00', 'primer: { planned: true, done: 2026-09-19T09:00'],
    ],
    rule: 'primed-after-bake',
    on: 'primer: { planned: true, done: 2026-09-19',
  },
  {
    ...ofQuarter,
    name: 'painted the day before it was brazed in',
    changes: [['film: 0.16 mm, done: 2026-09-24', 'film: 0.16 mm, done: 2026-09-21']],
    rule: 'painted-before-the-weld',
    on: 'do: refinish, step: 40',
  },
  {
    ...ofPost,
    name: 'foam taken out and never put back',
    changes: [
      [wiring, `${wiring}\n          - { item: foam, distance: 60 mm, path: joined, treatment: removed }`],
    ],
    rule: 'foam-not-renewed',
    on: 'item: foam',
  },
  {
    ...ofPost,
    name: 'a sound part beside the seam said to be removed',
    changes: [
      [
        wiring,
        `${wiring}\n          - { part: post-inner-r, distance: 5 mm, path: joined, treatment: removed }`,
      ],
    ],
    rule: 'said-off-and-stays',
    on: 'part: post-inner-r',
  },
  {
    ...ofPost,
    name: 'the drain holes of the joined sill shut',
    changes: [
      [
        'part: sill-r, planned: true, done: 2026-09-21, primer: Two-part epoxy, wax: Through the drawn holes, drains_open: true',
        'part: sill-r, planned: true, done: 2026-09-21, primer: Two-part epoxy, wax: Through the drawn holes, drains_open: false',
      ],
    ],
    rule: 'drains-shut',
    on: 'part: sill-r, planned',
  },
  {
    ...ofPost,
    name: 'the drain holes of the post shut: on the line of its own cavity',
    changes: [['drains_open: true', 'drains_open: false']],
    rule: 'drains-not-open',
    on: 'part: post-r, planned',
  },
  {
    ...ofPost,
    name: 'the sill waxed before the bake: on the line of its own cavity',
    changes: [
      ['part: sill-r, planned: true, done: 2026-09-21', 'part: sill-r, planned: true, done: 2026-09-17'],
    ],
    rule: 'inside-protected-before-bake',
    on: 'part: sill-r, planned',
  },
  {
    ...ofPost,
    name: 'the refrigerant line left full',
    changes: [
      [
        'extinguisher: Two of 6 kg beside the bay, watch: 45 min',
        'extinguisher: Two of 6 kg beside the bay, watch: 45 min, fluids: [{ item: refrigerant line, treatment: stays }]',
      ],
    ],
    rule: 'refrigerant-left-in-place',
    on: 'item: refrigerant line',
  },
  {
    ...ofPost,
    name: 'the earth clamp on the wheel hub, in words',
    changes: [
      ['earth_clamp: On the b-post outer, 200 mm above the seam.', 'earth_clamp: On the rear wheel hub'],
    ],
    rule: 'earth-current-through-bearing',
    on: 'earth_clamp: On the rear wheel hub',
  },
  {
    ...ofPost,
    name: 'the earth clamp on the gearbox, in the fixed words',
    changes: [
      ['        earth_clamp:', "        earth_clamp_on: 'engine, gearbox or motor'\n        earth_clamp:"],
    ],
    rule: 'earth-current-through-bearing',
    on: 'earth_clamp_on:',
  },
  {
    ...ofPost,
    name: 'the earth clamp at the other end of the car',
    changes: [['        earth_clamp:', '        earth_clamp_distance: 2.4 m\n        earth_clamp:']],
    rule: 'earth-clamp-far-off',
    on: 'earth_clamp_distance',
  },
  {
    ...ofPost,
    name: 'control units left plugged in',
    changes: [
      [
        'control_units: None within 300 mm of the current path.',
        'control_units: Left plugged in, the battery is off',
      ],
    ],
    rule: 'control-units-left-plugged-in',
    on: 'control_units: Left',
  },
  {
    ...ofRail,
    name: 'no point on the rail that is replaced, only on the apron',
    changes: [
      ['{ name: R1, on: rail-l', '{ name: R1, on: apron-l'],
      ['{ name: R3, on: rail-l', '{ name: R3, on: apron-l'],
    ],
    rule: 'worked-part-not-measured',
    on: '  points:',
  },
  {
    ...ofPost,
    name: 'the post that was pushed in, told by the diagonals of its door alone',
    changes: [
      [postPoints, ''],
      [
        'hold_points:\n',
        `  openings:\n    - { name: Front door opening right, ${diagonals} }\nhold_points:\n`,
      ],
    ],
    rule: 'worked-part-not-measured',
    on: '  points:',
  },
  {
    ...ofPost,
    name: 'the post of a car that was hit in front, told by the diagonals of the boot',
    changes: [
      [
        'impact: Right side low on the b-post, at a right angle, by a bollard.',
        'impact: Right front corner.',
      ],
      [postPoints, ''],
      ['hold_points:\n', `  openings:\n    - { name: Boot, ${diagonals} }\nhold_points:\n`],
    ],
    rule: 'worked-part-not-measured',
    on: '  points:',
  },
  {
    ...ofPost,
    name: 'the hit post not measured before',
    changes: [
      ['before: [1120.5 mm, 699.2 mm, 320.3 mm], ', ''],
      ['before: [1105.3 mm, 639 mm, 900.2 mm], ', ''],
    ],
    rule: 'hit-part-not-measured-before',
    on: '  points:',
  },
  {
    ...ofRail,
    name: 'a rail cut part-way, and no joint at the cut',
    changes: [
      [
        'extent: whole\n        cite: { reference: rail, at: p. 8-16 }',
        'extent: part\n        at: 40 mm behind the crush initiators\n        cite: { reference: rail, at: p. 8-16 }',
      ],
    ],
    rule: 'cut-without-joint',
    on: 'at: 40 mm behind',
  },
  {
    ...ofQuarter,
    name: 'the approval of who bonds a skin to structure ended before',
    changes: [approvedUntil('2026-08-31')],
    rule: 'approval-of-joiner-lapsed',
    on: 'joined_by:',
  },
  {
    ...ofQuarter,
    name: 'a skin bonded to structure by somebody who is still taught',
    changes: [[bonder, 'qualification: in training']],
    rule: 'joints-made-without-qualification',
    on: 'qualification: in training',
  },
  {
    ...ofQuarter,
    name: 'a skin brazed and bonded to structure by a test of aluminium',
    changes: [[bonder, "qualification: 'arc brazing and bonding, aluminium'"]],
    rule: 'joints-made-by-other-test',
    on: "qualification: 'arc brazing and bonding, aluminium'",
  },
  ...['straighten, method: cold', 'weld', 'drill'].map((work): Fault => ({
    ...ofQuarter,
    severity: 'stop',
    name: `a bent seat frame reworked: ${work}`,
    changes: [seatOf(work)],
    rule: 'seat-or-restraint-reworked',
    on: `do: ${work}`,
  })),
  {
    ...ofPost,
    name: 'a post replaced whole, whose joints all go to the sill',
    changes: replacedWhole,
    rule: 'member-joined-at-one-end',
    on: '- to: sill-r',
  },
  {
    ...ofRail,
    name: 'the radar of one side alone calibrated after the cover was off',
    changes: [['sensor: front radar,', 'sensor: front radar left,']],
    rule: 'radar-of-other-side-open',
    on: 'sensor: front radar left',
  },
];
