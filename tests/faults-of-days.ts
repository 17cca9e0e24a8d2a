import type { Fault } from './fault.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import type { Change } from './one-change.ts';

interface Early {
  readonly plan?: string;
  readonly name: string;
  readonly changes: readonly Change[];
  readonly on: string;
}

/** Two days the wrong way round; the line is that of what came too early. */
const early: readonly Early[] = [
  {
    name: 'the first scan the day after the batteries were disconnected',
    changes: [['scan_before: { done: 2026-09-30', 'scan_before: { done: 2026-10-02']],
    on: 'low_voltage: {',
  },
  {
    name: 'the bolts of a link tightened the day after the bench',
    changes: [['p. 7 }, tightened: 2026-10-06', 'p. 7 }, tightened: 2026-10-11']],
    on: 'done: 2026-10-10T14:00',
  },
  {
    name: 'the bolts of a link tightened after the drive',
    changes: [['p. 7 }, tightened: 2026-10-06', 'p. 7 }, tightened: 2026-10-12T18:00']],
    on: 'road_test: {',
  },
  {
    name: 'the bolts of a belt tightened after the restraints were complete',
    changes: [['tightened: 2026-10-09 }', 'tightened: 2026-10-11 }']],
    on: 'restraints: { done',
  },
  {
    name: 'restraint wiring looked at after the restraints were complete',
    changes: [
      ['wiring before the trim, done: 2026-10-09T16:00', 'wiring before the trim, done: 2026-10-11T16:00'],
    ],
    on: 'restraints: { done',
  },
  {
    plan: batteryOut,
    name: 'the bolts of the traction battery tightened after the voltage was on',
    changes: [['tightened: 2026-09-22T11:00', 'tightened: 2026-09-22T17:00']],
    on: 'done: 2026-09-22T15:00',
  },
  {
    plan: batteryOut,
    name: 'a belt that came off for the weld bolted on before it',
    changes: [['tightened: 2026-09-22T08:30', 'tightened: 2026-09-12T08:30']],
    on: 'tightened: 2026-09-12T08:30',
  },
  {
    name: 'the last scan the day before the calibrations',
    changes: [['scan_after: { done: 2026-10-12T11:00', 'scan_after: { done: 2026-10-11T11:00']],
    on: 'scan_after: {',
  },
  {
    name: 'the lamps looked at the day before the calibrations',
    changes: [['warning_lamps: { done: 2026-10-12T13:30', 'warning_lamps: { done: 2026-10-11T13:30']],
    on: 'warning_lamps: {',
  },
  {
    name: 'the cover of a radar fitted after the radar was calibrated',
    changes: [['extent: whole, done: 2026-10-09 }', 'extent: whole, done: 2026-10-12T15:00 }']],
    on: 'sensor: front radar',
  },
  {
    name: 'a cover painted off the vehicle the day after it was fitted',
    changes: [['        done: 2026-10-07\n', '        done: 2026-10-10\n']],
    on: '{ do: replace, extent: whole, done: 2026-10-09 }',
  },
  {
    name: 'the inside waxed before the seams were sealed',
    changes: [
      ['part: rail-l, planned: true, done: 2026-10-09', 'part: rail-l, planned: true, done: 2026-10-06'],
    ],
    on: '{ part: rail-l',
  },
  {
    name: 'the underbody coated before the rail was in',
    changes: [['  sealer: {', '  underbody: { planned: true, done: 2026-10-03 }\n  sealer: {']],
    on: 'underbody:',
  },
  {
    name: 'the flange released after the structure was',
    changes: [
      ['structural_release: { done: 2026-10-07T16:00', 'structural_release: { done: 2026-10-04T16:00'],
    ],
    on: 'structural_release:',
  },
];

const hold = { plan: wholeJob, severity: 'hold' } as const;
const radar =
  "disturbed: bumper, kind: static, result: passed, done: 2026-10-12T09:00, cite: { reference: assist, at: p. 9 }, conditions: { load: 'Nobody inside, nothing loaded', tyre_pressures: Set to the plate, floor: 'Bay 4, last levelled 2026-08-17' }, report: R-2224-2";
const caster = (side: string): string =>
  wholeJob.split('\n').find((line) => line.includes(`of: caster, at: front ${side}`)) ?? 'no such line';

/** Found by a reader who knows the trade and not the code. What is a fault is common practice. */
export const faultsOfDays: readonly Fault[] = [
  ...early.map((one): Fault => ({ ...hold, rule: 'out-of-order', ...one })),
  {
    ...hold,
    plan: batteryOut,
    name: 'by its step the sill comes first, by its hour the skin over it',
    changes: [['done: 2026-09-15T15:00\n\n  - id: sill-l', 'done: 2026-09-16T15:00\n\n  - id: sill-l']],
    rule: 'step-against-its-day',
    on: 'step: 20',
  },
  {
    ...hold,
    name: 'the fire watch dated after the signature',
    changes: [['fire: { planned: true, done: 2026-10-02', 'fire: { planned: true, done: 2026-10-14']],
    rule: 'signed-before-last-step',
    on: 'sign_off:',
  },
  {
    ...hold,
    plan: batteryOut,
    name: 'a pillar 8 mm out that comes back by itself',
    changes: [['before: [1010.2 mm, 689.4 mm', 'before: [1010.2 mm, 681.4 mm']],
    rule: 'point-off-on-sound-part',
    on: 'before: [1010.2 mm, 681.4 mm',
  },
  {
    ...hold,
    name: 'the caster of the wheel that was hit is left out',
    changes: [[`${caster('left')}\n`, '']],
    rule: 'alignment-values-one-sided',
    on: '    values:\n',
  },
  {
    ...hold,
    name: 'the caster of both wheels of the axle that was hit is left out',
    changes: [
      [`${caster('left')}\n`, ''],
      [`${caster('right')}\n`, ''],
    ],
    rule: 'alignment-values-one-sided',
    on: '    values:\n',
  },
  {
    ...hold,
    name: 'an alignment not required, with its values beside it',
    changes: [['result: within range\n', 'result: not required\n']],
    rule: 'check-not-required-and-made',
    on: 'result: not required',
  },
  {
    ...hold,
    name: 'a camber range of three degrees, in which the bent strut stands right',
    changes: [
      ["tolerance: 0°30', before: -1°50', after: -0°35'", "tolerance: 3°00', before: -1°50', after: -1°50'"],
    ],
    rule: 'alignment-range-wide',
    on: '    values:\n',
  },
  {
    ...hold,
    name: 'a radar set on a sloping yard',
    changes: [["floor: 'Bay 4, last levelled 2026-08-17'", "floor: 'Yard, slopes 2 %'"]],
    rule: 'calibration-condition-unfit',
    on: 'sensor: front radar',
  },
  {
    ...hold,
    name: 'the page of the sensors looked up the day after they were set',
    changes: [
      [
        'looked_up: 2026-09-29, for_job: K-2224 }\n\nmake_safe',
        'looked_up: 2026-10-13, for_job: K-2224 }\n\nmake_safe',
      ],
    ],
    rule: 'looked-up-after-the-work',
    on: 'id: assist',
  },
  {
    ...hold,
    name: 'a radar not disturbed behind a new cover',
    changes: [[radar, 'disturbed: not disturbed, kind: not required, cite: { reference: assist, at: p. 9 }']],
    rule: 'sensor-disturbed-after-all',
    on: 'sensor: front radar',
  },
  {
    ...hold,
    plan: wholeJob.replaceAll(/nominal: (\[[^\]]*\])(.*)after: \[[^\]]*\]/gu, 'nominal: $1$2after: $1'),
    name: 'six readings after the repair are those of the data sheet',
    changes: [],
    rule: 'readings-after-from-data-sheet',
    on: '  points:',
  },
];
