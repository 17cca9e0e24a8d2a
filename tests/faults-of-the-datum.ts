import type { Fault } from './fault.ts';
import { measuredRing } from './measured-ring.ts';
import { ring } from './one-change.ts';

const hold = { severity: 'hold', plan: measuredRing } as const;
const stop = { severity: 'stop', plan: measuredRing } as const;

/** The same change at every reading of one occasion. */
const everyReading = (
  occasion: 'before' | 'after',
  read: (place: readonly number[]) => readonly number[],
): string =>
  measuredRing.replaceAll(
    new RegExp(`${occasion}: \\[(-?[\\d.]+) mm, (-?[\\d.]+) mm, (-?[\\d.]+) mm\\]`, 'gu'),
    (_whole, ...found: readonly string[]) =>
      `${occasion}: [${read(found.slice(0, 3).map(Number))
        .map((value) => `${value.toFixed(2)} mm`)
        .join(', ')}]`,
  );

/** Readings that are none: of another hand or unit, exchanged, copied; a datum that moved, stands at one end or is missing. */
export const faultsOfTheDatum: readonly Fault[] = [
  {
    ...hold,
    name: 'a zero point that the crash moved by 5 mm',
    changes: [['before: [1800.3 mm, 1120.2 mm', 'before: [1800.3 mm, 1125.2 mm']],
    rule: 'zero-points-disagree-before',
    on: '  zero_points:',
  },
  {
    ...hold,
    name: 'a zero point lifted by 5 mm out of the plane of the others',
    changes: [['before: [1800.3 mm, 1120.2 mm, -0.1 mm]', 'before: [1800.3 mm, 1120.2 mm, 5.1 mm]']],
    rule: 'zero-points-disagree-before',
    on: '  zero_points:',
  },
  {
    ...hold,
    name: 'the third of three zero points lifted, with nothing but zero points to tell',
    plan: ring.replace(/ {4}- \{ name: A1.*\n/u, ''),
    changes: [['before: [0.1 mm, 1120.3 mm, 0 mm]', 'before: [0.1 mm, 1120.3 mm, 40 mm]']],
    rule: 'zero-points-disagree-before',
    on: '  zero_points:',
  },
  {
    ...hold,
    name: 'a zero point that the pull moved',
    changes: [['after: [1800.2 mm, 1120 mm', 'after: [1800.2 mm, 1126 mm']],
    rule: 'zero-points-disagree-after',
    on: '  zero_points:',
  },
  {
    ...stop,
    name: 'a zero point that the crash moved far',
    changes: [['before: [1800.3 mm, 1120.2 mm', 'before: [1800.3 mm, 1137.2 mm']],
    rule: 'zero-point-off',
    on: 'name: Z4',
  },
  {
    ...hold,
    name: 'zero points not read again after the repair',
    changes: [
      ['before: [0 mm, 0 mm, 0 mm], after: [0 mm, 0 mm, 0 mm]', 'before: [0 mm, 0 mm, 0 mm]'],
      [', after: [1800 mm, 0 mm, 0 mm] }', ' }'],
      [', after: [0 mm, 1120 mm, 0 mm] }', ' }'],
      [', after: [1800.2 mm, 1120 mm, 0.1 mm] }', ' }'],
    ],
    rule: 'datum-not-fitted-after',
    on: '  zero_points:',
  },
  {
    ...hold,
    name: 'all zero points at one end',
    changes: [
      [
        'nominal: [1800 mm, 0 mm, 0 mm], before: [1800.4 mm, 0 mm',
        'nominal: [150 mm, 0 mm, 0 mm], before: [150.4 mm, 0 mm',
      ],
      ['after: [1800 mm, 0 mm, 0 mm]', 'after: [150 mm, 0 mm, 0 mm]'],
      [
        'nominal: [1800 mm, 1120 mm, 0 mm], before: [1800.3 mm',
        'nominal: [150 mm, 1120 mm, 0 mm], before: [150.3 mm',
      ],
      ['after: [1800.2 mm, 1120 mm', 'after: [150.2 mm, 1120 mm'],
    ],
    rule: 'zero-points-at-one-end',
    on: '  zero_points:',
  },
  {
    ...stop,
    name: 'left and right exchanged in the whole reading before',
    plan: everyReading('before', ([x = 0, y = 0, z = 0]) => [x, -y, z]),
    changes: [],
    rule: 'readings-misread-before',
    on: '  points:',
  },
  {
    ...stop,
    name: 'the whole reading after the repair in inches',
    plan: everyReading('after', (place) => place.map((value) => value / 25.4)),
    changes: [],
    rule: 'readings-misread-after',
    on: '  points:',
  },
  {
    ...hold,
    name: 'one reading in inches among millimetres',
    changes: [['before: [1681.2 mm, 66.3 mm, 1099.4 mm]', 'before: [66.2 mm, 2.6 mm, 43.3 mm]']],
    rule: 'point-misread-before',
    on: 'name: C3',
  },
  {
    ...stop,
    name: 'two points taken for each other after the repair',
    changes: [
      ['after: [600.3 mm, -120.4 mm, 100.2 mm]', 'after: [1700.2 mm, -120.6 mm, 120 mm]'],
      ['after: [1700.2 mm, -120.6 mm, 120.1 mm]', 'after: [600.3 mm, -120.4 mm, 100.2 mm]'],
    ],
    rule: 'points-exchanged-after',
    on: 'name: C1, on',
  },
  {
    ...hold,
    name: 'two zero points in each other’s rows before the repair',
    changes: [
      ['before: [0.1 mm, 1120.3 mm, 0 mm]', 'before: [1800.3 mm, 1120.2 mm, -0.1 mm]'],
      [
        'nominal: [1800 mm, 1120 mm, 0 mm], before: [1800.3 mm, 1120.2 mm, -0.1 mm]',
        'nominal: [1800 mm, 1120 mm, 0 mm], before: [0.1 mm, 1120.3 mm, 0 mm]',
      ],
    ],
    rule: 'points-exchanged-before',
    on: 'name: Z3',
  },
  {
    ...stop,
    name: 'two zero points in each other’s rows after the repair',
    changes: [
      ['after: [0 mm, 0 mm, 0 mm]', 'after: [1800 mm, 0.1 mm, 0 mm]'],
      ['after: [1800 mm, 0 mm, 0 mm]', 'after: [0 mm, 0 mm, 0 mm]'],
    ],
    rule: 'points-exchanged-after',
    on: 'name: Z1',
  },
  {
    ...stop,
    name: 'a body that is 13 mm off, under two zero points in each other’s rows',
    changes: [
      ['after: [0 mm, 0 mm, 0 mm]', 'after: [1800 mm, 0.1 mm, 0 mm]'],
      ['after: [1800 mm, 0 mm, 0 mm]', 'after: [0 mm, 0 mm, 0 mm]'],
      ['after: [1412.2 mm, -701.6 mm, 611 mm]', 'after: [1412.2 mm, -688.6 mm, 611 mm]'],
    ],
    rule: 'point-out-of-tolerance',
    on: 'name: A1',
  },
  {
    ...hold,
    name: 'the readings before copied down as those after',
    plan: measuredRing
      .replaceAll(/before: (\[[^\]]*\]), after: \[[^\]]*\]/gu, 'before: $1, after: $1')
      .replace(
        'before: [1412.8 mm, -688.2 mm, 611.1 mm], tolerance: 3 mm, after: [1412.2 mm, -701.6 mm, 611 mm]',
        'before: [1412.2 mm, -701.6 mm, 611 mm], tolerance: 3 mm, after: [1412.2 mm, -701.6 mm, 611 mm]',
      ),
    changes: [],
    rule: 'readings-after-copied',
    on: '  points:',
  },
  {
    ...hold,
    name: 'one point under two names',
    changes: [
      [
        'name: C3, on: ring-l, nominal: [1680 mm, 60 mm, 1100 mm]',
        'name: C3, on: ring-l, nominal: [700 mm, 60 mm, 1120 mm]',
      ],
    ],
    rule: 'points-in-one-place',
    on: '  points:',
  },
  {
    ...hold,
    name: 'a name borne by two points',
    changes: [['name: C1R,', 'name: C2R,']],
    rule: 'entry-repeated-id',
    on: 'name: C2R, on: floor, other_side: C2,',
  },
  {
    ...hold,
    name: 'a corner that is no point',
    changes: [['corners: [C1, C2, C3, C4]', 'corners: [C1, C2, C3, C9]']],
    rule: 'entry-points-nowhere',
    on: 'corners:',
  },
  {
    ...hold,
    name: 'a point whose limit lies within the uncertainty',
    changes: [['after: [600.3 mm, -120.4 mm, 100.2 mm]', 'after: [600.3 mm, -122.8 mm, 100.2 mm]']],
    rule: 'point-not-proven',
    on: 'name: C1, on',
  },
  {
    ...stop,
    name: 'a point over its tolerance, by less than the uncertainty',
    changes: [['after: [600.3 mm, -120.4 mm, 100.2 mm]', 'after: [600.3 mm, -123.3 mm, 100.2 mm]']],
    rule: 'point-out-of-tolerance',
    on: 'name: C1, on',
  },
  {
    ...stop,
    name: 'a door opening 6 mm out of square, each corner by 2 mm',
    changes: [
      ['after: [600.3 mm, -120.4 mm, 100.2 mm]', 'after: [597.8 mm, -120 mm, 97.8 mm]'],
      ['after: [1680.5 mm, 60.8 mm, 1100.2 mm]', 'after: [1682.3 mm, 60 mm, 1102.3 mm]'],
    ],
    rule: 'opening-out-of-tolerance',
    on: 'openings:',
  },
  {
    ...hold,
    name: 'a door opening twisted, which its diagonals do not show',
    changes: [
      ['after: [600.3 mm, -120.4 mm, 100.2 mm]', 'after: [600 mm, -122.2 mm, 100 mm]'],
      ['after: [1700.2 mm, -120.6 mm, 120.1 mm]', 'after: [1700 mm, -117.8 mm, 120 mm]'],
      ['after: [1680.5 mm, 60.8 mm, 1100.2 mm]', 'after: [1680 mm, 57.8 mm, 1100 mm]'],
      ['after: [700.4 mm, 60.3 mm, 1120.1 mm]', 'after: [700 mm, 62.2 mm, 1120 mm]'],
    ],
    rule: 'opening-deformed',
    on: 'corners:',
  },
  {
    ...hold,
    name: 'a point that was off, left out with a reason',
    changes: [
      [
        'before: [1681.2 mm, 66.3 mm, 1099.4 mm], after: [1680.5 mm, 60.8 mm, 1100.2 mm]',
        'before: [1681.2 mm, 66.3 mm, 1099.4 mm], dropped_because: under the new sound pad',
      ],
    ],
    rule: 'point-out-of-tolerance',
    on: 'name: C3',
  },
  {
    ...hold,
    name: 'an opening measured before and not after',
    changes: [['openings: [{', 'openings: [{ name: Windscreen, diagonals_before: [1500 mm, 1501 mm] }, {']],
    rule: 'opening-dropped',
    on: 'openings:',
  },
  {
    ...hold,
    name: 'the data sheet copied down as the readings after the repair',
    plan: measuredRing.replaceAll(/nominal: (\[[^\]]*\])(.*)after: \[[^\]]*\]/gu, 'nominal: $1$2after: $1'),
    changes: [],
    rule: 'readings-after-from-data-sheet',
    on: '  points:',
  },
  {
    ...hold,
    name: 'the data sheet copied down as the readings before it',
    plan: measuredRing.replaceAll(/nominal: (\[[^\]]*\])(.*)before: \[[^\]]*\]/gu, 'nominal: $1$2before: $1'),
    changes: [],
    rule: 'readings-before-from-data-sheet',
    on: '  points:',
  },
  {
    ...hold,
    name: 'one point at two corners of an opening',
    changes: [['corners: [C1, C2, C3, C4]', 'corners: [C1, C2, C3, C3]']],
    rule: 'opening-corner-twice',
    on: 'corners:',
  },
  {
    ...hold,
    name: 'an uncertainty of a hundredth',
    changes: [['uncertainty: 0.5 mm', 'uncertainty: 0.01 mm']],
    rule: 'uncertainty-not-credible',
    on: 'uncertainty:',
  },
];
