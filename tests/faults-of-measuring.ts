import type { Fault } from './fault.ts';
import { ring } from './one-change.ts';
import { releasedRing } from './released-ring.ts';

const hold = { severity: 'hold' } as const;

/** Measured at the wrong time, from the wrong points, in the wrong place, or against a number of one's own. */
export const faultsOfMeasuring: readonly Fault[] = [
  {
    ...hold,
    name: 'a measurement that has not been taken yet',
    plan: ring,
    changes: [['  before: 2026-10-06\n', '  before: 2026-12-06\n']],
    rule: 'entry-dated-ahead',
    on: 'before: 2026-12-06',
  },
  {
    ...hold,
    name: 'measured before the repair, after the ring was welded in',
    plan: releasedRing,
    changes: [['  before: 2026-10-06\n', '  before: 2026-10-12\n']],
    rule: 'measured-before-too-late',
    on: 'before: 2026-10-12',
  },
  {
    ...hold,
    name: 'measured after the repair, before the work',
    plan: releasedRing,
    changes: [['  after: 2026-10-13\n', '  after: 2026-10-08\n']],
    rule: 'measured-after-too-early',
    on: 'after: 2026-10-08',
  },
  {
    ...hold,
    name: 'the day of the measurement after the repair left out',
    plan: releasedRing,
    changes: [['  after: 2026-10-13\n', '']],
    rule: 'measured-after-too-early',
    on: 'measurements:',
  },
  {
    ...hold,
    name: 'the floor measured after the repair and not the ring',
    plan: releasedRing,
    changes: [['name: A1, on: ring-l', 'name: A1, on: floor']],
    rule: 'worked-part-not-measured',
    on: '  points:',
  },
  {
    ...hold,
    name: 'a tolerance made to fit a point',
    plan: releasedRing,
    changes: [
      ['tolerance: 3 mm, after: [1412.2 mm, -701.6 mm', 'tolerance: 20 mm, after: [1412.2 mm, -688 mm'],
    ],
    rule: 'tolerance-by-own-word',
    on: 'name: A1',
  },
  {
    ...hold,
    name: 'a tolerance made to fit an opening',
    plan: releasedRing,
    changes: [
      [
        '  after: 2026-10-13\n',
        '  after: 2026-10-13\n  openings: [{ name: Front left door, diagonals_after: [1200 mm, 1230 mm], tolerance: 40 mm }]\n',
      ],
    ],
    rule: 'opening-tolerance-by-own-word',
    on: 'openings:',
  },
  {
    name: 'a zero point that is off itself',
    plan: ring,
    changes: [['before: [0 mm, 0 mm, 0 mm]', 'before: [40 mm, 0 mm, 0 mm]']],
    rule: 'zero-point-off',
    severity: 'stop',
    on: 'name: Z1',
  },
  {
    name: 'three zero points on one line',
    plan: ring,
    changes: [
      [
        'nominal: [0 mm, 1120 mm, 0 mm], before: [0.1 mm, 1120.3 mm, 0 mm]',
        'nominal: [900 mm, 0 mm, 0 mm], before: [900 mm, 0 mm, 0 mm]',
      ],
    ],
    rule: 'zero-points-on-one-line',
    severity: 'stop',
    on: 'zero_points:',
  },
  {
    ...hold,
    name: 'three zero points close together',
    plan: ring,
    changes: [
      ['[1800 mm, 0 mm, 0 mm], before: [1800.4 mm, 0 mm', '[300 mm, 0 mm, 0 mm], before: [300.4 mm, 0 mm'],
      [
        '[0 mm, 1120 mm, 0 mm], before: [0.1 mm, 1120.3 mm',
        '[0 mm, 300 mm, 0 mm], before: [0.1 mm, 300.3 mm',
      ],
    ],
    rule: 'zero-points-close-together',
    on: 'zero_points:',
  },
  {
    ...hold,
    name: 'a measuring data sheet without number and revision',
    plan: ring,
    changes: [['document: MDS-TRN-21, revision: A, ', '']],
    rule: 'measuring-data-unidentified',
    on: 'data_sheet:',
  },
];
