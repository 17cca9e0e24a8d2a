import type { Fault } from './fault.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { electric, rail, ring } from './one-change.ts';

const of = (plan: string, severity: Fault['severity']): Pick<Fault, 'plan' | 'severity'> => ({
  plan,
  severity,
});
const line = (plan: string, part: string): string => {
  const found = plan.split('\n').find((one) => one.includes(part));
  if (found === undefined) throw new Error(`the plan does not hold: ${part}`);
  return `${found}\n`;
};

const camberLeft = line(wholeJob, 'of: camber, at: front left');
const flange = line(wholeJob, 'point: flange before closing');
const alignment = wholeJob.slice(
  wholeJob.indexOf('    values:\n'),
  wholeJob.indexOf('  calibrations:\n', wholeJob.indexOf('    values:\n')),
);

/** Plans with one thing wrong in the numbers of the wheels, the calibration, the hold points or the lamps. Common practice of the trade. */
export const faultsOfProcess: readonly Fault[] = [
  {
    ...of(wholeJob, 'stop'),
    name: 'wheels: the camber of the wheel that was hit is still out',
    changes: [[`before: -1°50', after: -0°35'`, `before: -1°50', after: -1°10'`]],
    rule: 'alignment-value-out-of-range',
    on: `after: -1°10'`,
  },
  {
    ...of(wholeJob, 'stop'),
    name: 'wheels: the rear axle outside a range that is given by its ends',
    changes: [
      [`from: -2°00', to: -1°00', before: -1°25', after: -1°25'`, `from: -2°00', to: -1°00', after: -0°58'`],
    ],
    rule: 'alignment-value-out-of-range',
    on: `after: -0°58'`,
  },
  {
    ...of(wholeJob, 'stop'),
    name: 'wheels: the vehicle runs at an angle',
    changes: [[`before: 0°02', after: 0°02'`, `before: 0°02', after: -0°14'`]],
    rule: 'alignment-value-out-of-range',
    on: 'of: thrust angle',
  },
  {
    ...of(bondedRail, 'hold'),
    name: 'wheels: toe in millimetres beside toe in degrees',
    changes: [['before: -1.5 mm, after: 1.2 mm', 'before: -1.5 mm, after: 0.2°']],
    rule: 'alignment-value-not-compared',
    on: 'after: 0.2°',
  },
  {
    ...of(bondedRail, 'hold'),
    name: 'wheels: camber in millimetres',
    changes: [
      [
        'specified: -1.5°, tolerance: 0.5°, before: -1.4°, after: -1.4°',
        'specified: -9 mm, tolerance: 3 mm, after: -8 mm',
      ],
    ],
    rule: 'alignment-value-not-compared',
    on: 'specified: -9 mm',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'wheels: within range, says the plan, and not one number',
    changes: [[alignment, '']],
    rule: 'alignment-without-values',
    on: '  alignment:',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'wheels: only the side that was not hit is measured for camber',
    changes: [[camberLeft, '']],
    rule: 'alignment-values-one-sided',
    on: '    values:',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'wheels: minutes typed as degrees',
    changes: [[`before: -1°50', after: -0°35'`, `before: -1°50', after: -35°`]],
    rule: 'entry-unreadable-quantity',
    on: 'after: -35°',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'wheels: whose values they are is not told',
    changes: [['    cite: { reference: link, at: p. 11 }\n', '']],
    rule: 'alignment-values-without-source',
    on: '  alignment:',
  },
  {
    ...of(wholeJob, 'stop'),
    name: 'wheels: compared with the values of the estate',
    changes: [
      ['cite: { reference: link, at: p. 11 }', 'cite: { reference: bench, at: row 12 }'],
      [
        '\nmake_safe:',
        '  - { id: bench, kind: general guidance, title: Data of the alignment bench, document: AB-2026-3, revision: "3", published: 2026-03-01, covers: { maker: Corvane, model: Ilex, bodies: [wagon], years: 2022-2024 }, looked_up: 2026-09-29, for_job: K-2224 }\n\nmake_safe:',
      ],
    ],
    rule: 'alignment-values-of-other-vehicle',
    on: 'cite: { reference: bench',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'calibration: nothing said of floor and tyres',
    changes: [
      [
        `conditions: { load: 'Nobody inside, nothing loaded', tyre_pressures: Set to the plate, floor: 'Bay 4, last levelled 2026-08-17' }`,
        `conditions: { load: 'Nobody inside, nothing loaded' }`,
      ],
    ],
    rule: 'calibration-conditions-not-stated',
    on: 'sensor: front radar',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'calibration: passed, and no result document',
    changes: [[', report: R-2224-2', '']],
    rule: 'calibration-conditions-not-stated',
    on: 'sensor: front radar',
  },
  {
    ...of(bondedRail, 'hold'),
    name: 'calibration: a camera whose bracket was renewed needs none, by no page',
    changes: [
      [
        '    - { sensor: steering angle',
        '    - { sensor: front camera, disturbed: bracket, kind: not required }\n    - { sensor: steering angle',
      ],
    ],
    rule: 'check-not-recorded',
    on: 'sensor: front camera',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'hold points: nobody looks at the flange before it is closed',
    changes: [[flange, '']],
    rule: 'hold-point-missing',
    on: 'hold_points:',
  },
  {
    ...of(ring, 'hold'),
    name: 'hold points: planned, and nobody named',
    changes: [
      [
        'point: flange before closing, by: { name: B. Ohm, role: workshop lead }',
        'point: flange before closing, by: { role: workshop lead }',
      ],
    ],
    rule: 'hold-point-not-released',
    on: 'point: flange before closing',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'hold points: the flange never released',
    changes: [['part: rail-l, done: 2026-10-05T09:00, ', 'part: rail-l, ']],
    rule: 'hold-point-not-released',
    on: 'point: flange before closing',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'hold points: the flange released the day after it was welded shut',
    changes: [['done: 2026-10-05T09:00', 'done: 2026-10-06T09:00']],
    rule: 'hold-point-passed',
    on: 'done: 2026-10-06T09:00',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'hold points: of a part that the plan does not list',
    changes: [['before closing, part: rail-l', 'before closing, part: rail-r']],
    rule: 'entry-points-nowhere',
    on: 'part: rail-r',
  },
  {
    ...of(batteryOut, 'hold'),
    name: 'hold points: the cavity released an hour after the skin was on',
    changes: [['done: 2026-09-16T08:00', 'done: 2026-09-16T11:00']],
    rule: 'hold-point-passed',
    on: 'done: 2026-09-16T11:00',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'hold points: the structure released before it was measured',
    changes: [['done: 2026-10-05T08:30', 'done: 2026-10-02T08:30']],
    rule: 'out-of-order',
    on: 'done: 2026-10-02T08:30',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'release: the structure released before it was measured again',
    changes: [
      ['structural_release: { done: 2026-10-07T16:00', 'structural_release: { done: 2026-10-06T16:00'],
    ],
    rule: 'out-of-order',
    on: 'structural_release:',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'release: the structure released by nobody',
    changes: [
      [
        'structural_release: { done: 2026-10-07T16:00, by: { name: B. Ohm, role: workshop lead } }',
        'structural_release: { done: 2026-10-07T16:00 }',
      ],
    ],
    rule: 'structural-release-incomplete',
    on: 'structural_release:',
  },
  {
    ...of(ring, 'hold'),
    name: 'make safe: live airbags come off, and no word of where they lie',
    changes: [[line(ring, '    storage:'), '']],
    rule: 'removed-units-storage-not-stated',
    on: '  restraints:\n',
  },
  {
    ...of(rail, 'stop'),
    name: 'make safe: a memory supply while an airbag is unplugged',
    changes: [['fitted: [12 V] }', 'fitted: [12 V], memory_supply: true }']],
    rule: 'memory-supply-on-restraints',
    on: 'memory_supply: true',
  },
  {
    ...of(electric, 'hold'),
    name: 'make safe: isolated, and the key is anywhere',
    changes: [[', key: In the office }', ' }']],
    rule: 'key-not-kept-away',
    on: '  low_voltage:',
  },
  {
    ...of(batteryOut, 'stop'),
    name: 'battery: its cooling leaks',
    changes: [['coolant: tight', 'coolant: leaks']],
    rule: 'battery-coolant-leaks',
    on: 'coolant: leaks',
  },
  {
    ...of(wholeJob, 'stop'),
    name: 'lamps: the airbag lamp is lit as the vehicle goes',
    changes: [['T13:30, lit: []', 'T13:30, lit: [{ lamp: airbag, explanation: goes out by itself }]']],
    rule: 'warning-lamp-lit',
    on: 'lamp: airbag',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'lamps: one is lit and nobody says why',
    changes: [['T13:30, lit: []', 'T13:30, lit: [{ lamp: washer fluid, system: body }]']],
    rule: 'warning-lamp-not-explained',
    on: 'lamp: washer fluid',
  },
  {
    ...of(wholeJob, 'hold'),
    name: 'lamps: lit at the counter, and never looked at again',
    changes: [[line(wholeJob, '  warning_lamps: { done'), '']],
    rule: 'warning-lamps-not-looked-at',
    on: 'verify:',
  },
];
