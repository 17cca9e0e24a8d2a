import type { Fault } from './fault.ts';
import { electric, ring } from './one-change.ts';

const ringOperationStart = '- do: replace\n        step: 20';

/** What is made safe before the work, and the battery in the booth. */
export const faultsOfSafety: readonly Fault[] = [
  {
    name: 'no battery disconnected',
    plan: ring,
    changes: [['batteries: [12 V]', 'batteries: []']],
    rule: 'welding-with-battery-connected',
    severity: 'stop',
    on: 'low_voltage:',
  },
  {
    name: 'the auxiliary battery left on',
    plan: ring,
    changes: [['fitted: [12 V]', 'fitted: [12 V, auxiliary]']],
    rule: 'welding-with-battery-connected',
    severity: 'stop',
    on: 'low_voltage:',
  },
  {
    name: 'the 48 V battery of a mild hybrid left on',
    plan: ring,
    changes: [['drive: combustion', 'drive: mild-hybrid']],
    rule: 'welding-with-battery-connected',
    severity: 'stop',
    on: 'low_voltage:',
  },
  {
    name: 'an undeployed unit stays at the ring',
    plan: ring,
    changes: [
      [
        'state: undeployed, treatment: removed, step: 2 }\n      - { unit: belt',
        'state: undeployed, treatment: stays }\n      - { unit: belt',
      ],
    ],
    rule: 'work-at-fitted-restraint-unit',
    severity: 'stop',
    on: ringOperationStart,
  },
  {
    name: 'an undeployed unit taken off after the work',
    plan: ring,
    changes: [
      [
        'at: ring-l, state: undeployed, treatment: removed, step: 2 }',
        'at: ring-l, state: undeployed, treatment: removed, step: 30 }',
      ],
    ],
    rule: 'work-at-fitted-restraint-unit',
    severity: 'stop',
    on: ringOperationStart,
  },
  // High voltage, bake.
  {
    name: 'no isolation',
    plan: electric,
    changes: [[/isolation: .*\n/u.exec(electric)?.[0] ?? '', '\n']],
    rule: 'high-voltage-not-isolated',
    severity: 'stop',
    on: 'high_voltage:\n    planned',
  },
  {
    name: 'isolation by no document',
    plan: electric,
    changes: [[', cite: { reference: hv, at: p. 3-8 }', '']],
    rule: 'high-voltage-isolation-uncited',
    severity: 'hold',
    on: 'isolation:',
  },
  {
    name: 'isolation by a person without qualification',
    plan: electric,
    changes: [[', qualification: high-voltage level 2', '']],
    rule: 'high-voltage-person-not-qualified',
    severity: 'hold',
    on: 'isolation:',
  },
  {
    name: 'the absence of voltage not to be proved',
    plan: electric,
    changes: [['    proof_of_absence: { planned: true }\n', '']],
    rule: 'absence-of-voltage-not-planned',
    severity: 'hold',
    on: 'high_voltage:\n    planned',
  },
  {
    name: 'the absence of voltage not proved at release',
    plan: electric,
    changes: [['stage: start', 'stage: release']],
    rule: 'absence-of-voltage-not-proved',
    severity: 'stop',
    on: 'proof_of_absence:',
  },
  {
    name: 'bake above the limit of the battery',
    plan: electric,
    changes: [
      ['    battery_removed: true\n', ''],
      [
        'finish:\n',
        'finish:\n  bake: { temperature: 61 °C, time: 30 min, traction_battery: in the vehicle, battery_limit: { temperature: 61 °C, cite: { reference: hv, at: p. 9 } } }\n',
      ],
    ],
    rule: 'bake-over-battery-limit',
    severity: 'stop',
    on: 'bake:',
  },
  {
    name: 'the battery left on where only resistance spots are made',
    plan: electric,
    changes: [['batteries: [12 V], fitted', 'batteries: [], fitted']],
    rule: 'welding-with-battery-connected',
    severity: 'stop',
    on: 'low_voltage:',
  },
  {
    name: 'an undeployed unit that stays, its place not stated',
    plan: ring,
    changes: [
      [
        'at: ring-l, state: undeployed, treatment: removed, step: 2 }\n      - { unit: belt',
        'state: undeployed, treatment: stays }\n      - { unit: belt',
      ],
    ],
    rule: 'work-at-fitted-restraint-unit',
    severity: 'hold',
    on: 'restraints:\n',
  },
  {
    name: 'the wait after disconnecting is too short',
    plan: ring,
    changes: [['wait: 10 min\n', 'wait: 9 min\n']],
    rule: 'restraint-wait-too-short',
    severity: 'stop',
    on: 'restraints:\n',
  },
  {
    name: 'nobody named who isolates the traction voltage',
    plan: electric,
    changes: [['by: { name: L. Brandt, qualification: high-voltage level 2 }, ', '']],
    rule: 'high-voltage-person-not-named',
    severity: 'hold',
    on: 'isolation:',
  },
  {
    name: 'the bake longer than the battery bears',
    plan: electric,
    changes: [
      ['    battery_removed: true\n', ''],
      [
        'finish:\n',
        'finish:\n  bake: { temperature: 60 °C, time: 46 min, traction_battery: in the vehicle, battery_limit: { temperature: 60 °C, time: 45 min, cite: { reference: hv, at: p. 9 } } }\n',
      ],
    ],
    rule: 'bake-longer-than-battery-limit',
    severity: 'stop',
    on: 'bake:',
  },
];
