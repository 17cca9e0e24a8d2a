import type { Fault } from './fault.ts';
import { beltsOfJob } from './faults-of-plain-words.ts';
import { roofAndScreen } from './faults-of-the-outside-read.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { bondedQuarter, hemmedDoor } from './faults-of-seams.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { rail } from './one-change.ts';
import type { Change } from './one-change.ts';

/** The steps by which the door plan makes airbags and pretensioners safe. */
export const restraintsOfDoor = / {2}restraints: \{ planned.*\n/u.exec(hemmedDoor)?.[0] ?? '';

const fasteners =
  'fasteners: { one_time: renewed, cite: { reference: safe, at: p. 4 }, tightened: 2026-09-25T09:00 }';

/** A seat or unit that comes off the car with the door. */
export const comesOff = (kind: string, name: string, what = 'do: remove and refit'): Change => [
  'parts:\n',
  `parts:
  - { id: unit, name: '${name}', kind: ${kind}, damage: { kind: none, found_by: seen }, operations: [{ ${what}, step: 2, refit_step: 30, cite: { reference: safe, at: p. 4 }, ${fasteners}, done: 2026-09-25T09:00 }] }
`,
];

/** A part of the fire list, of the roof's plan. */
export const fireList = (entry: string): Change => ['watch: 45 min }', `watch: 45 min, fluids: [${entry}] }`];

/** The tank beside the heated rail. */
export const tankBeside = (entry: string): Change => [
  'path: same sheet }\n',
  `path: same sheet }\n          - { item: fuel tank, path: through air, ${entry} }\n`,
];

/** The curtain airbag of the quarter's plan at a roof rail that no joint of it reaches. */
export const curtainAtRail = (treatment: string): readonly Change[] => [
  [
    'at: c-pillar-l, state: undeployed, treatment: removed, step: 2',
    `at: roof-rail-l, state: undeployed, ${treatment}`,
  ],
  [
    '  - id: wheel-rl\n',
    `  - { id: roof-rail-l, name: 'Roof rail, left', kind: roof rail, side: left, structural: true, grade: HC420LA, grade_from: { reference: quarter, at: p. 2 }, thickness: 1.2 mm, damage: { kind: none, found_by: measured } }
  - id: wheel-rl\n`,
  ],
];
/** Foam in the rail to which the roof skin over it is spot-welded. */
export const foamInRail: Change = ['    under: roof\n', '    under: roof\n    holds: [foam]\n'];

export const foundAway = 'battery tray and its bolts, left door gaps, roof], found: none found';
export const works = 'warning_lamps: none, works: everything';

const hold = { severity: 'hold' } as const;

/** Beside each, in near-misses-of-handling.test.ts, stands the plan that is like it and good. */
export const faultsOfHandling: readonly Fault[] = [
  ...(
    [
      ['seat', 'Front seat, left'],
      ['restraint unit', 'Front belt with pretensioner, left'],
    ] as const
  ).map(([kind, name]): Fault => ({
    ...hold,
    name: `restraints: ${name} comes off and nothing is made safe`,
    plan: hemmedDoor,
    changes: [[restraintsOfDoor, ''], comesOff(kind, name)],
    rule: 'unit-off-without-making-safe',
    on: 'id: unit',
  })),
  ...[
    'Front left belt and buckle replaced by the list; front right was worn in the crash, pulled through, in order; the others in order',
    'Front left belt replaced by the list, buckle kept, the others in order',
  ].map((text): Fault => ({
    ...hold,
    name: `belts: ${text}`,
    plan: wholeJob,
    changes: [[beltsOfJob, `"${text}"`]],
    rule: 'belt-part-kept',
    on: 'belts_checked:',
  })),
  {
    ...hold,
    name: 'belts: one side looked at',
    plan: roofAndScreen,
    changes: [['All five looked at and pulled through by the maker’s list, in order', 'Left side looked at']],
    rule: 'belts-unlooked',
    on: 'Left side looked at',
  },
  {
    ...hold,
    name: 'restraints: a connector held by tape',
    plan: roofAndScreen,
    changes: [
      [
        'restraints: { done: 2026-09-23T08:00, result: complete }',
        "restraints: { done: 2026-09-23T08:00, result: complete, note: 'pretensioner connector loose, secured with tape' }",
      ],
    ],
    rule: 'note-tells-of-trouble',
    on: 'secured with tape',
  },
  {
    ...hold,
    name: 'restraints: a unit without its place comes off after the spots',
    plan: roofAndScreen,
    changes: [
      [
        '      - { unit: curtain airbag, name: Curtain airbag left,',
        `      - { unit: side airbag, name: Side airbag left, state: undeployed, treatment: removed, step: 45, cite: { reference: safe, at: p. 4 } }
      - { unit: curtain airbag, name: Curtain airbag left,`,
      ],
    ],
    rule: 'live-unit-off-after-hot-work',
    on: 'name: Side airbag left',
  },
  {
    ...hold,
    name: 'battery: called sound, its case dented by the words of what was found',
    plan: batteryOut,
    changes: [
      [
        foundAway,
        foundAway.replace('none found', "'door gap narrower, case of the traction battery dented'"),
      ],
    ],
    rule: 'dented-battery-called-sound',
    on: 'battery_condition: sound',
  },
  ...[
    'starts, display shows an insulation fault',
    'drives, brake pedal sinks to the floor',
    'rolls, steering is loose',
  ].map((text): Fault => ({
    ...hold,
    name: `as received: ${text}`,
    plan: batteryOut,
    changes: [[works, `warning_lamps: none, works: '${text}'`]],
    rule: 'trouble-on-arrival-unanswered',
    on: text,
  })),
  {
    ...hold,
    name: 'fire: the tank stands under the bench beside the bay',
    plan: roofAndScreen,
    changes: [fireList('{ item: fuel tank, treatment: removed, place: Under the bench beside the bay }')],
    rule: 'fuel-kept-beside-the-work',
    on: 'Under the bench',
  },
  {
    ...hold,
    name: 'fire: a tank that was emptied, 450 mm from the torch',
    plan: rail,
    changes: [tankBeside('distance: 450 mm, treatment: emptied')],
    rule: 'emptied-fuel-in-reach-of-sparks',
    on: 'item: fuel tank',
  },
  {
    ...hold,
    name: 'high voltage: a tag and no lock',
    plan: batteryOut,
    changes: [['lock: Padlock K-3 and tag', 'lock: Tag only']],
    rule: 'high-voltage-isolation-not-locked',
    on: 'isolation:',
  },
  {
    ...hold,
    name: 'restraints: a curtain airbag stays at the roof rail while the quarter below it is brazed',
    plan: bondedQuarter,
    changes: curtainAtRail('treatment: stays'),
    rule: 'restraint-unit-above-the-work',
    on: 'name: Curtain airbag left',
  },
  {
    ...hold,
    name: 'foam: in a rail to which the new skin over it is welded, and not renewed',
    plan: roofAndScreen,
    changes: [foamInRail],
    rule: 'foam-not-renewed',
    on: 'holds: [foam]',
  },
];
