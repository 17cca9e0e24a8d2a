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
    rule: 'out-of-order',
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
  {
    ...hold,
    name: 'restraints: live units lie on the bench beside the welder',
    changes: [
      [
        'storage: Locked steel cabinet by the parts store, away from heat and power',
        'storage: On the bench beside the welder',
      ],
    ],
    rule: 'removed-units-in-the-open',
    on: 'storage: On the bench',
  },
  ...['On the workbench, cushion side up', 'Locked steel cabinet by the parts store, cushion side down'].map(
    (kept): Fault => ({
      ...hold,
      name: `restraints: live units are kept so: ${kept}`,
      changes: [
        ['storage: Locked steel cabinet by the parts store, away from heat and power', `storage: '${kept}'`],
      ],
      rule: 'removed-units-in-the-open',
      on: 'storage:',
    }),
  ),
  {
    ...hold,
    name: 'restraints: the belts are bolted on after their system is said to be complete',
    changes: [['tightened: 2026-09-22T08:30', 'tightened: 2026-09-22T10:30']],
    rule: 'out-of-order',
    on: 'restraints: { done: 2026-09-22T09:00',
  },
  {
    ...hold,
    name: 'high voltage: a body technician isolates',
    changes: [
      [
        'qualification: high-voltage level 3 }\n    isolation',
        "qualification: 'resistance spot, steel' }\n    isolation",
      ],
    ],
    rule: 'high-voltage-person-not-qualified',
    on: "qualification: 'resistance spot, steel' }\n    isolation",
  },
  {
    ...hold,
    name: 'high voltage: a body technician proves the absence of voltage',
    changes: [
      [
        'proof_of_absence: { planned: true,',
        'proof_of_absence: { planned: true, by: { name: T. Holm, role: body technician, qualification: body structure level 3 },',
      ],
    ],
    rule: 'voltage-proved-by-unqualified-person',
    on: 'proof_of_absence:',
  },
  {
    ...hold,
    name: 'high voltage: a note on the windscreen for a lock',
    changes: [['lock: Padlock K-3 and tag', 'lock: Note on the windscreen']],
    rule: 'high-voltage-isolation-not-locked',
    on: 'isolation: {',
  },
  {
    ...hold,
    name: 'high voltage: the bolts of the battery are tightened after the voltage is on',
    changes: [['tightened: 2026-09-22T11:00', 'tightened: 2026-09-22T16:00']],
    rule: 'out-of-order',
    on: 'done: 2026-09-22T15:00',
  },
  {
    ...hold,
    name: 'high voltage: the scan tells of an isolation fault, the battery is sound',
    changes: [
      [
        'scan_before: { done: 2026-09-09, tool: shop tool 4.2, codes: [] }',
        'scan_before: { done: 2026-09-09, tool: shop tool 4.2, codes: [{ code: P0AA6, system: traction battery, state: active, explanation: isolation fault }] }',
      ],
    ],
    rule: 'first-scan-against-the-plan',
    on: 'scan_before',
  },
  {
    ...hold,
    name: 'high voltage: no cable in the zone, and one is listed 120 mm off',
    changes: [
      ['battery_removed: true\n', 'battery_removed: true\n    cables_in_zone: none\n'],
      ['item: high-voltage cable, distance: 500 mm', 'item: high-voltage cable, distance: 120 mm'],
    ],
    rule: 'cables-in-the-zone-unclear',
    on: 'cables_in_zone',
  },
  {
    ...hold,
    name: 'damage: the scan tells of a pretensioner that fired, the plan of none',
    changes: [
      [
        'scan_before: { done: 2026-09-09, tool: shop tool 4.2, codes: [] }',
        'scan_before: { done: 2026-09-09, tool: shop tool 4.2, codes: [{ code: B0070, system: restraint, state: stored, explanation: right front pretensioner fired }] }',
      ],
    ],
    rule: 'first-scan-against-the-plan',
    on: 'scan_before',
  },
  {
    ...hold,
    name: 'damage: the words on the blow are those of a job on the other side',
    changes: [['impact: Right side at the front door', 'impact: Left side at the front door']],
    rule: 'impact-on-the-other-side',
    on: 'impact:',
  },
  {
    ...hold,
    name: 'damage: a bend that its own words call kinked',
    changes: [
      [
        'kind: kink, found_by: outer panel cut back, extent: ',
        "kind: bend, found_by: outer panel cut back, extent: 'sharply kinked at the door post' }\n    note: { extent: ",
      ],
      [" }\n    note: { extent: 'at the foot of the front door, 80 mm long' }", ' }'],
    ],
    rule: 'damage-words-graver-than-its-kind',
    on: 'sharply kinked',
  },
  {
    ...hold,
    name: 'documents: the sill rests on the restraint manual',
    changes: [['cite: { reference: sill, at: p. 6-17 }', 'cite: { reference: safe, at: p. 6-17 }']],
    rule: 'cited-for-another-matter',
    on: 'cite: { reference: safe, at: p. 6-17 }',
  },
  {
    ...hold,
    name: 'documents: the page is that of the left sill',
    changes: [["title: 'Sill, replacement'", "title: 'Sill left, replacement'"]],
    rule: 'cited-document-of-the-other-side',
    on: 'cite: { reference: sill, at: p. 6-17 }',
  },
  {
    ...hold,
    name: 'battery: it comes out by no page',
    changes: [['        cite: { reference: hv, at: p. 9-22 }\n', '']],
    rule: 'battery-taken-out-by-no-page',
    on: '- do: remove and refit',
  },
];
