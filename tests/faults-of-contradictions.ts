import type { Fault } from './fault.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';

const of = (plan: string): Pick<Fault, 'plan' | 'severity'> => ({ plan, severity: 'hold' });

const emptyLoad = `load: 'Nobody inside, nothing loaded'`;
const floor = `floor: 'Bay 4, last levelled 2026-08-17'`;
const wheels = `      - { of: thrust angle, specified: 0°00', tolerance: 0°10', before: 0°02', after: 0°02' }\n`;
const rearToes = (left: string, right: string): string =>
  [
    `      - { of: toe, at: rear left, specified: 0°08', tolerance: 0°12', before: ${left}, after: ${left} }\n`,
    `      - { of: toe, at: rear right, specified: 0°08', tolerance: 0°12', before: ${right}, after: ${right} }\n`,
  ].join('');

/** Plans that say two things which cannot both be true, of points, wheels, rows, loads or records. Common practice of the trade. */
export const faultsOfContradictions: readonly Fault[] = [
  {
    ...of(bondedRail),
    name: 'measuring: the rail of the right side measured for that of the left',
    changes: [
      [
        'nominal: [-880 mm, -430 mm, 205 mm], before: [-872 mm, -427.5 mm, 207 mm], after: [-880.5 mm, -430.3 mm',
        'nominal: [-880 mm, 430 mm, 205 mm], before: [-880.2 mm, 430.1 mm, 205 mm], after: [-880.5 mm, 430.3 mm',
      ],
    ],
    rule: 'points-on-the-wrong-side',
    on: 'name: R1',
  },
  {
    ...of(wholeJob),
    name: 'measuring: the floor of the zero points was found buckled',
    changes: [
      ['battery tray], found: none found', 'battery tray], found: floor buckled under the left front seat'],
    ],
    rule: 'zero-point-damaged-by-words',
    on: '  zero_points:',
  },
  {
    ...of(wholeJob),
    name: 'wheels: the sign of a camber is lost, in the range and in the value',
    changes: [
      [
        `front left, specified: -0°30', tolerance: 0°30', before: -1°50', after: -0°35'`,
        `front left, specified: 0°30', tolerance: 0°30', before: -1°50', after: 0°25'`,
      ],
    ],
    rule: 'alignment-wheels-unlike',
    on: 'of: camber, at: front left',
  },
  {
    ...of(wholeJob),
    name: 'wheels: the caster of one side is specified 2° less',
    changes: [
      [
        `specified: 7°20', tolerance: 0°30', before: 6°05', after: 7°10'`,
        `specified: 5°20', tolerance: 0°30', before: 6°05', after: 5°10'`,
      ],
    ],
    rule: 'alignment-wheels-unlike',
    on: 'of: caster, at: front left',
  },
  {
    ...of(wholeJob),
    name: 'wheels: camber of the two front wheels 53 minutes apart, each within its range',
    changes: [
      ["before: -1°50', after: -0°35'", "before: -1°50', after: -0°03'"],
      ["before: -0°40', after: -0°40'", "before: -0°40', after: -0°56'"],
    ],
    rule: 'alignment-wheels-apart',
    on: 'of: camber, at: front left',
  },
  {
    ...of(wholeJob),
    name: 'wheels: a rear wheel that stood 1°10 crooked and came right by itself',
    changes: [["before: -1°30', after: -1°30'", "before: -2°40', after: -1°30'"]],
    rule: 'alignment-wheel-came-right-unexplained',
    on: 'of: camber, at: rear left',
  },
  {
    ...of(wholeJob),
    name: 'wheels: the thrust angle specified where it stands',
    changes: [
      [
        `specified: 0°00', tolerance: 0°10', before: 0°02', after: 0°02'`,
        `specified: 0°30', tolerance: 0°10', before: 0°35', after: 0°35'`,
      ],
    ],
    rule: 'alignment-thrust-off-centre',
    on: 'of: thrust angle',
  },
  {
    ...of(wholeJob),
    name: 'wheels: a range of the thrust angle to one side',
    changes: [
      [
        `specified: 0°00', tolerance: 0°10', before: 0°02', after: 0°02'`,
        `from: 0°00', to: 0°40', before: 0°35', after: 0°35'`,
      ],
    ],
    rule: 'alignment-thrust-off-centre',
    on: 'of: thrust angle',
  },
  {
    ...of(wholeJob),
    name: 'wheels: total toe is not the sum of its wheels',
    changes: [
      [
        wheels,
        `      - { of: total toe, at: front axle, specified: 0°10', tolerance: 0°10', before: -0°19', after: 0°19' }\n${wheels}`,
      ],
    ],
    rule: 'alignment-values-contradict',
    on: 'of: total toe, at: front axle',
  },
  {
    ...of(wholeJob),
    name: 'wheels: the thrust angle is not half the difference of the rear toes',
    changes: [[wheels, `${rearToes(`0°16'`, `-0°02'`)}${wheels}`]],
    rule: 'alignment-values-contradict',
    on: 'of: thrust angle',
  },
  {
    ...of(wholeJob),
    name: 'calibration: a tool chest in the boot',
    changes: [[emptyLoad, `load: 'Tool chest in the boot, tank full'`]],
    rule: 'calibration-load-not-told',
    on: 'sensor: front radar',
  },
  {
    ...of(wholeJob),
    name: 'calibration: a load in the boot, and the tank by the page',
    changes: [[emptyLoad, `load: '40 kg of parts in the boot, tank as the page says'`]],
    rule: 'calibration-load-not-told',
    on: 'sensor: front radar',
  },
  {
    ...of(wholeJob),
    name: 'calibration: nobody inside and 40 kg of parts',
    changes: [[emptyLoad, `load: 'Nobody inside and 40 kg of parts in the boot'`]],
    rule: 'calibration-load-not-told',
    on: 'sensor: front radar',
  },
  {
    ...of(wholeJob),
    name: 'calibration: empty but for the apprentice',
    changes: [[emptyLoad, `load: 'Empty except for the apprentice on the brake'`]],
    rule: 'calibration-load-not-told',
    on: 'sensor: front radar',
  },
  {
    ...of(wholeJob),
    name: 'calibration: the floor levelled the day after',
    changes: [[floor, `floor: 'Bay 4, last levelled 2026-10-13'`]],
    rule: 'floor-levelled-after-calibration',
    on: 'sensor: front radar',
  },
  {
    ...of(wholeJob),
    name: 'calibration: low pressures that were not brought to the plate',
    changes: [
      ['tyre_pressures: Set to the plate', `tyre_pressures: 'Low by 0.3 bar, not brought to the plate'`],
    ],
    rule: 'calibration-condition-unfit',
    on: 'sensor: front radar',
  },
  {
    ...of(batteryOut),
    name: 'records: one number for the joints of skin and sill',
    changes: [['record: W-2231-2', 'record: W-2231-1']],
    rule: 'joint-record-shared',
    on: 'record: W-2231-1\n            done: 2026-09-15T15:00',
  },
  {
    ...of(wholeJob),
    name: 'wheels: the range of the hit wheel is stretched to where it stands',
    changes: [
      [
        "at: front left, specified: -0°30', tolerance: 0°30', before: -1°50', after: -0°35'",
        "at: front left, specified: -0°30', tolerance: 1°30', before: -1°50', after: -1°50'",
      ],
    ],
    rule: 'alignment-wheels-unlike',
    on: "after: -1°50'",
  },
  {
    ...of(wholeJob),
    severity: 'stop',
    name: 'fluids: refrigerant let off in the yard',
    changes: [
      [
        'watch: 40 min }',
        'watch: 40 min, fluids: [{ item: refrigerant line, treatment: emptied, place: Let off in the yard }] }',
      ],
    ],
    rule: 'refrigerant-vented',
    on: 'Let off in the yard',
  },
];
