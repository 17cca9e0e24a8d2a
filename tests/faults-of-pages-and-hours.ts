import { readFileSync } from 'node:fs';
import type { Fault } from './fault.ts';
import { heatedAndPulled, roofAndScreen } from './faults-of-the-outside-read.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { rail } from './one-change.ts';
import type { Change } from './one-change.ts';

/** A frame rail that is pulled with heat at its end; airbags that went off. */
export const framePulled = readFileSync('tests/plans/frame-rail-pulled-hot.yaml', 'utf8');

/** Zero points on the straight stretch of the rail that is bent at its end. */
export const zeroOnTheRail: readonly Change[] = [
  ['{ name: Z3, on: frame-ml', '{ name: Z3, on: frame-l'],
  ['{ name: Z4, on: frame-ml', '{ name: Z4, on: frame-l'],
];

/** The heat and the pull in it, with their hours. */
export const heatedAndPulledAt = (heated: string, pulled: string): readonly Change[] => [
  ...heatedAndPulled,
  ['do: heat\n', `do: heat\n        done: ${heated}\n`],
  ['do: straighten, step: 11,', `do: straighten, step: 11, done: ${pulled},`],
];

/** The page of the rail for vehicles of some build dates alone; this one was built on a day of April 2023. */
export const built = (range: string): readonly Change[] => [
  ['  model_year: 2023\n', '  model_year: 2023\n  build_date: 2023-04-18\n'],
  ['years: 2022-2024 }, looked_up', `years: 2022-2024, built: { ${range} } }, looked_up`],
];

/** Pages that are of another vehicle or another matter, and hours that do not fit. Common practice. */
export const faultsOfPagesAndHours: readonly Fault[] = [
  ...['to: 2023-04-17', 'from: 2023-04-19'].map((range): Fault => ({
    severity: 'stop',
    name: `the page is for other build dates: ${range}`,
    plan: wholeJob,
    changes: built(range),
    rule: 'vehicle-outside-cited-range',
    on: 'cite: { reference: rail, at: p. 8-16 }',
  })),
  {
    severity: 'hold',
    name: 'heated in the morning, pulled "with heat" in the afternoon',
    plan: rail,
    changes: heatedAndPulledAt('2026-10-21T10:00', '2026-10-21T14:00'),
    rule: 'pulled-after-the-heat',
    on: 'do: straighten, step: 11',
  },
  {
    severity: 'stop',
    name: 'a zero point on the bent rail, near its bend',
    plan: framePulled,
    changes: [
      ...zeroOnTheRail,
      ['Z3, on: frame-l, nominal: [800 mm', 'Z3, on: frame-l, nominal: [500 mm'],
      ['before: [800 mm, -400.1', 'before: [500 mm, -400.1'],
    ],
    rule: 'zero-point-in-damage',
    on: 'zero_points:',
  },
  {
    severity: 'stop',
    name: 'all zero points but one on the bent rail',
    plan: framePulled,
    changes: [...zeroOnTheRail, ['{ name: Z1, on: frame-r', '{ name: Z1, on: frame-l']],
    rule: 'zero-point-in-damage',
    on: 'zero_points:',
  },
  {
    severity: 'hold',
    name: 'the restraint control unit reset by the page on the alignment',
    plan: framePulled,
    changes: [
      [
        'control_unit: replaced\n',
        'control_unit: reset\n    control_unit_cite: { reference: axle, at: p. 12 }\n',
      ],
    ],
    rule: 'step-cited-for-another-matter',
    on: 'control_unit_cite:',
  },
  {
    severity: 'hold',
    name: 'restraint wiring repaired by the frame manual',
    plan: framePulled,
    changes: [
      ['wiring: untouched\n', 'wiring: section renewed\n    wiring_cite: { reference: frame, at: p. 30 }\n'],
    ],
    rule: 'step-cited-for-another-matter',
    on: 'wiring_cite:',
  },
  {
    severity: 'hold',
    name: 'how hot the rail may get, from the page on the alignment',
    plan: framePulled,
    changes: [['times: 2, cite: { reference: frame,', 'times: 2, cite: { reference: axle,']],
    rule: 'cited-for-another-matter',
    on: 'limit: {',
  },
  ...[
    'none but a dent in the left sill',
    'none but an old dent in the bed, and the left sill buckled',
    'none but an old dent in the bed and a cracked tower',
  ].map((found): Fault => ({
    severity: 'hold',
    name: `found away from the blow: ${found}`,
    plan: roofAndScreen,
    changes: [['found: none found', `found: '${found}'`]],
    rule: 'indirect-damage-not-listed',
    on: 'indirect: {',
  })),
];
