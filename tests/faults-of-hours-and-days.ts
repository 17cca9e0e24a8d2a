import type { Fault } from './fault.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import type { Change } from './one-change.ts';
import { releasedRing } from './released.ts';

const scan = 'tool: shop tool 4.2, codes: []';
const codes = (entry: string): Change => [scan, `tool: shop tool 4.2, codes: [{ ${entry} }]`];
const belts = (text: string): Change => [
  'belts_checked: Left front belt and buckle replaced, seats in order',
  `belts_checked: "${text}"`,
];
const beltsOfJob = 'belts_checked: Front left belt and buckle replaced by the list, the others in order';

/** Found by a reader who knows the trade and not the code. What is a fault is common practice. */
export const faultsOfHoursAndDays: readonly Fault[] = [
  {
    plan: wholeJob,
    severity: 'stop',
    name: 'isolated at noon, spots made at nine, the operation closed at two',
    changes: [
      ['done: 2026-10-01T09:00, wait', 'done: 2026-10-05T12:00, wait'],
      ['done: 2026-10-01T09:30, meter', 'done: 2026-10-05T12:30, meter'],
      ['            done: 2026-10-05\n', '            done: 2026-10-05T09:00\n'],
      ['        done: 2026-10-05\n', '        done: 2026-10-05T14:00\n'],
    ],
    rule: 'high-voltage-step-out-of-order',
    on: 'isolation: {',
  },
  {
    plan: wholeJob,
    severity: 'stop',
    name: 'the 12 V battery off the day after the welding',
    changes: [
      [
        'low_voltage: { planned: true, done: 2026-10-01T08:00',
        'low_voltage: { planned: true, done: 2026-10-06T08:00',
      ],
    ],
    rule: 'batteries-off-after-the-welding',
    on: 'low_voltage: {',
  },
  {
    plan: releasedRing,
    severity: 'hold',
    name: 'restraints made safe on no day',
    changes: [['    done: 2026-10-07T08:20\n', '']],
    rule: 'restraints-not-recorded-safe',
    on: 'restraints:\n',
  },
  {
    plan: releasedRing,
    severity: 'hold',
    name: 'the clamped ring measured the day before the vehicle was made safe',
    changes: [['before_welding: 2026-10-08', 'before_welding: 2026-10-06']],
    rule: 'fit-checked-too-early',
    on: 'before_welding: 2026-10-06',
  },
  {
    plan: wholeJob,
    severity: 'hold',
    name: 'bolts of a link torqued before the link was renewed',
    changes: [['tightened: 2026-10-06', 'tightened: 2026-09-30']],
    rule: 'tightened-before-fitted',
    on: 'tightened: 2026-09-30',
  },
  {
    plan: batteryOut,
    severity: 'stop',
    name: 'a hit traction battery is quarantined and fitted again',
    changes: [
      [
        'battery_condition: sound',
        'battery_condition: hit\n    quarantine: { place: Open yard, distance: 18 m, watch: 48 h }',
      ],
    ],
    rule: 'damaged-battery-in-the-vehicle',
    on: 'do: remove and refit',
  },
  {
    plan: wholeJob,
    severity: 'stop',
    name: 'a traction battery with an isolation fault never left the vehicle',
    changes: [
      [
        'battery_condition: sound',
        'battery_condition: isolation fault\n    quarantine: { place: Open yard, distance: 18 m, watch: 48 h }',
      ],
    ],
    rule: 'damaged-battery-in-the-vehicle',
    on: 'battery_condition: isolation fault',
  },
  {
    plan: wholeJob,
    severity: 'stop',
    name: 'a fired pretensioner is taken off, and nothing new is fitted',
    changes: [
      [
        'name: Front belt left, state: deployed, treatment: replaced',
        'name: Front belt left, state: deployed, treatment: removed',
      ],
    ],
    rule: 'deployed-unit-kept',
    on: 'name: Front belt left',
  },
  ...['Not done, nothing to be seen', 'Not checked, car was parked', 'No time for it'].map((text): Fault => ({
    plan: releasedRing,
    severity: 'hold',
    name: `belts: ${text}`,
    changes: [belts(text)],
    rule: 'belts-not-checked',
    on: 'belts_checked:',
  })),
  ...['Rear centre belt locks, customer told', 'All looked at; buckle rear left is cracked'].map(
    (text): Fault => ({
      plan: releasedRing,
      severity: 'hold',
      name: `belts: ${text}`,
      changes: [belts(text)],
      rule: 'belt-defect-left',
      on: 'belts_checked:',
    }),
  ),
  {
    plan: wholeJob,
    severity: 'stop',
    name: 'belts not done after a deployment',
    changes: [[beltsOfJob, 'belts_checked: Not done, nothing to be seen']],
    rule: 'belts-not-checked-after-deployment',
    on: 'belts_checked:',
  },
  {
    plan: wholeJob,
    severity: 'stop',
    name: 'a belt that locks is left after a deployment',
    changes: [[beltsOfJob, 'belts_checked: "Rear centre belt locks, customer told"']],
    rule: 'belt-defect-left-after-deployment',
    on: 'belts_checked:',
  },
  {
    plan: wholeJob,
    severity: 'hold',
    name: 'a radar behind the cover, and the calibration says that none is fitted',
    changes: [
      [
        'sensor: front radar, disturbed: bumper, kind: static, result: passed, done: 2026-10-12T09:00, ',
        'sensor: front radar, disturbed: bumper, kind: not fitted, ',
      ],
    ],
    rule: 'radar-said-not-fitted',
    on: 'sensor: front radar',
  },
  ...[
    'code: C0035, system: brake, state: stored, explanation: Goes out by itself',
    'code: B0020, system: restraint, state: stored, explanation: From before',
    'code: C0050, system: steering, explanation: Battery was off',
  ].map((entry): Fault => ({
    plan: releasedRing,
    severity: 'stop',
    name: `left after the repair: ${entry}`,
    changes: [codes(entry)],
    rule: 'safety-code-left',
    on: 'scan_after:',
  })),
  {
    plan: releasedRing,
    severity: 'hold',
    name: 'an active radar code that is to go by itself',
    changes: [
      codes(
        'code: U0235, system: driver assistance, state: active, explanation: Radar will learn while driving',
      ),
    ],
    rule: 'assistance-code-active',
    on: 'scan_after:',
  },
  {
    plan: releasedRing,
    severity: 'hold',
    name: 'a stored code of the body that nobody explains',
    changes: [codes('code: B1200, system: body, state: stored')],
    rule: 'code-not-explained',
    on: 'scan_after:',
  },
  {
    plan: releasedRing,
    severity: 'hold',
    name: 'no scan at all of a car that has a diagnosis by its year',
    changes: [
      ['scan_before: { done: 2026-10-06, codes: [] }', 'scan_before: { not_possible: no diagnostic access }'],
      [
        'scan_after: { done: 2026-10-16, tool: shop tool 4.2, codes: [] }',
        'scan_after: { not_possible: no diagnostic access }',
      ],
    ],
    rule: 'scan-missing',
    on: 'scan_after:',
  },
  ...['No time before the job', 'Customer did not want to pay', 'The tool was lent out'].map(
    (text): Fault => ({
      plan: releasedRing,
      severity: 'hold',
      name: `no first scan: ${text}`,
      changes: [['scan_before: { done: 2026-10-06, codes: [] }', `scan_before: { not_possible: ${text} }`]],
      rule: 'first-scan-left-out',
      on: 'scan_before:',
    }),
  ),
  {
    plan: wholeJob,
    severity: 'stop',
    name: 'a fuel line under a blanket only, beside the spots',
    changes: [
      [
        '        near:\n',
        '        near:\n          - { item: fuel line, distance: 80 mm, path: through air, treatment: shielded }\n',
      ],
    ],
    rule: 'fuel-or-gas-only-shielded',
    on: 'item: fuel line',
  },
  {
    plan: wholeJob,
    severity: 'stop',
    name: 'the list of what is replaced is that of another model',
    changes: [
      [
        'document: SRM-ILX-0100, revision: D, published: 2023-02-20, covers: { maker: Corvane, model: Ilex,',
        'document: SRM-TRN-0100, revision: D, published: 2023-02-20, covers: { maker: Corvane, model: Tarn,',
      ],
    ],
    rule: 'deployed-without-replacement-list',
    on: 'replacement_list:',
  },
  {
    plan: wholeJob,
    severity: 'hold',
    name: 'the signature bears a day to come',
    changes: [['  date: 2026-10-13\n', '  date: 2026-10-30\n']],
    rule: 'signature-dated-ahead',
    on: 'date: 2026-10-30',
  },
];
