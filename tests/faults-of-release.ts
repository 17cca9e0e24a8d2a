import type { Fault } from './fault.ts';
import { releasedElectric, releasedRing } from './released.ts';

const completion = '  restraints: { done: 2026-10-16, result: complete }\n';
const road = 'road_test: { done: 2026-10-16, result: passed }';
const curtain = 'state: undeployed, treatment: removed, step: 2 }\n      - { unit: belt';
const deployedList = [
  'deployed: false\n',
  'deployed: true\n    replacement_list: { reference: safe, at: p. 9 }\n',
] as const;

/** What must not be released, and what must be answered before it is. */
export const faultsOfRelease: readonly Fault[] = [
  {
    name: 'the absence of voltage proved before the isolation',
    plan: releasedElectric,
    changes: [['done: 2026-10-20T09:30', 'done: 2026-10-20T08:30']],
    rule: 'voltage-proved-before-isolation',
    severity: 'stop',
    on: 'proof_of_absence:',
  },
  {
    name: 'the isolation never done',
    plan: releasedElectric,
    changes: [['done: 2026-10-20T09:00, ', '']],
    rule: 'high-voltage-isolation-not-recorded',
    severity: 'stop',
    on: 'isolation:',
  },
  {
    name: 'neither lock nor tag',
    plan: releasedElectric,
    changes: [['lock: Padlock K-7 and tag, ', '']],
    rule: 'high-voltage-isolation-not-locked',
    severity: 'hold',
    on: 'isolation:',
  },
  {
    name: 'a live circuit, the leads the other way round',
    plan: releasedElectric,
    changes: [['reading: 0.2 V', 'reading: -390 V']],
    rule: 'voltage-still-there',
    severity: 'stop',
    on: 'proof_of_absence:',
  },
  {
    name: 'an isolation fault left',
    plan: releasedElectric,
    changes: [['faults: none', 'faults: isolation fault active, battery lamp on']],
    rule: 'high-voltage-faults-left',
    severity: 'stop',
    on: 'faults:',
  },
  {
    name: 'faults left, in words that do not say which',
    plan: releasedElectric,
    changes: [['faults: none', 'faults: two stored']],
    rule: 'high-voltage-faults-unclear',
    severity: 'hold',
    on: 'faults:',
  },
  {
    name: 're-commissioning without a day',
    plan: releasedElectric,
    changes: [['    done: 2026-10-21T10:00\n', '']],
    rule: 're-commissioning-missing',
    severity: 'hold',
    on: '  high_voltage:\n    by:',
  },
  {
    name: 're-commissioning refused and yet dated',
    plan: releasedElectric,
    changes: [['    done: 2026-10-21T10:00\n', '    done: 2026-10-21T10:00\n    planned: false\n']],
    rule: 're-commissioning-missing',
    severity: 'hold',
    on: '  high_voltage:\n    done:',
  },
  {
    name: 'the insulation below its limit, and no day written',
    plan: releasedElectric,
    changes: [
      ['    done: 2026-10-21T10:00\n', ''],
      ['900 Ω/V', '90 Ω/V'],
    ],
    rule: 'insulation-below-limit',
    severity: 'stop',
    on: 'insulation:',
  },
  {
    name: 'no scan after the welding',
    plan: releasedElectric,
    changes: [['  scan_after: { done: 2026-10-21, codes: [] }\n', '']],
    rule: 'scan-missing',
    severity: 'hold',
    on: 'verify:',
  },
  {
    name: 'a deployed unit stays',
    plan: releasedRing,
    changes: [
      [curtain, curtain.replace('undeployed, treatment: removed', 'deployed, treatment: stays')],
      deployedList,
    ],
    rule: 'deployed-unit-kept',
    severity: 'stop',
    on: 'units:',
  },
  {
    name: 'a unit that nobody looked at',
    plan: releasedRing,
    changes: [[curtain, curtain.replace('undeployed', 'not yet seen')]],
    rule: 'restraint-units-open',
    severity: 'hold',
    on: 'units:',
  },
  {
    name: 'the restraint system not complete',
    plan: releasedRing,
    changes: [['result: complete', 'result: open']],
    rule: 'restraint-completion-open',
    severity: 'stop',
    on: completion.replace('complete', 'open').trimStart(),
  },
  {
    name: 'units came off and nobody says that they are in again',
    plan: releasedRing,
    changes: [[completion, '']],
    rule: 'restraint-completion-missing',
    severity: 'hold',
    on: 'verify:',
  },
  {
    name: 'an active code of the restraint system',
    plan: releasedRing,
    changes: [['4.2, codes: []', '4.2, codes: [{ code: B0012, system: restraint, state: active }]']],
    rule: 'safety-code-left',
    severity: 'stop',
    on: 'scan_after:',
  },
  {
    name: 'a stored code of the brakes that nobody explains',
    plan: releasedRing,
    changes: [['4.2, codes: []', '4.2, codes: [{ code: C0040, system: brake, state: stored }]']],
    rule: 'code-not-explained',
    severity: 'hold',
    on: 'scan_after:',
  },
  {
    name: 'the road test failed',
    plan: releasedRing,
    changes: [[road, road.replace('passed', 'failed')]],
    rule: 'check-failed',
    severity: 'stop',
    on: 'road_test:',
  },
  {
    name: 'the road test planned and not recorded',
    plan: releasedRing,
    changes: [[road, 'road_test: { planned: true }']],
    rule: 'check-not-recorded',
    severity: 'hold',
    on: 'road_test:',
  },
  {
    name: 'a calibration failed',
    plan: releasedRing,
    changes: [
      [road, `${road}\n  calibrations: [{ sensor: front camera, result: failed, done: 2026-10-16 }]`],
    ],
    rule: 'check-failed',
    severity: 'stop',
    on: 'calibrations:',
  },
  {
    name: 'a calibration not finished',
    plan: releasedRing,
    changes: [
      [road, `${road}\n  calibrations: [{ sensor: front camera, result: not finished, done: 2026-10-16 }]`],
    ],
    rule: 'check-not-finished',
    severity: 'hold',
    on: 'calibrations:',
  },
  {
    name: 'the alignment out of range',
    plan: releasedRing,
    changes: [[road, `${road}\n  alignment: { result: out of range, done: 2026-10-16 }`]],
    rule: 'check-failed',
    severity: 'stop',
    on: 'alignment:',
  },
  {
    name: 'a subframe taken off and no alignment',
    plan: releasedRing,
    changes: [
      [
        'measurements:\n',
        '  - { id: sub, name: Subframe, kind: subframe, damage: { kind: none, found_by: seen }, operations: [{ do: remove and refit, cite: { reference: ring, at: p. 3 } }] }\nmeasurements:\n',
      ],
    ],
    rule: 'alignment-missing',
    severity: 'hold',
    on: 'verify:',
  },
  {
    name: 'a windscreen replaced and no word of the camera',
    plan: releasedRing,
    changes: [
      [
        'measurements:\n',
        '  - { id: ws, name: Windscreen, kind: glass, damage: { kind: crack, found_by: seen }, operations: [{ do: replace, extent: whole, joints: [{ to: ring-l, method: adhesive }] }] }\nmeasurements:\n',
      ],
    ],
    rule: 'calibration-missing',
    severity: 'hold',
    on: 'verify:',
  },
];
