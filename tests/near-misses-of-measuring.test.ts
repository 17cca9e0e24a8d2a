import { describe, expect, test } from 'vitest';
import { judgeText, ruleIds } from './judge-text.ts';
import { measuredRing } from './measured-ring.ts';
import { changed, ring } from './one-change.ts';
import type { Change } from './one-change.ts';

// What a good shop does and must not be held for: each plan here is cleared.

const everyReading = (
  text: string,
  occasion: string,
  read: (place: readonly number[]) => readonly number[],
): string =>
  text.replaceAll(
    new RegExp(`${occasion}: \\[(-?[\\d.]+) mm, (-?[\\d.]+) mm, (-?[\\d.]+) mm\\]`, 'gu'),
    (_whole, ...found: readonly string[]) =>
      `${occasion}: [${read(found.slice(0, 3).map(Number))
        .map((value) => `${value.toFixed(3)} mm`)
        .join(', ')}]`,
  );

describe('cleared', () => {
  test.each<readonly [string, string, readonly Change[]]>([
    [
      'zero points that are each half a millimetre off',
      measuredRing,
      [
        ['before: [0 mm, 0 mm, 0 mm]', 'before: [0.5 mm, -0.5 mm, 0.5 mm]'],
        ['before: [1800.4 mm, 0 mm, 0.2 mm]', 'before: [1799.5 mm, 0.5 mm, -0.5 mm]'],
        ['before: [0.1 mm, 1120.3 mm, 0 mm]', 'before: [-0.5 mm, 1119.5 mm, -0.5 mm]'],
      ],
    ],
    [
      'zero points with a tolerance of 1 mm, read to half a millimetre',
      measuredRing,
      [
        [
          'nominal: [0 mm, 0 mm, 0 mm], before: [0 mm, 0 mm, 0 mm]',
          'tolerance: 1 mm, nominal: [0 mm, 0 mm, 0 mm], before: [0 mm, 0 mm, 0.7 mm]',
        ],
        ['before: [1800.4 mm, 0 mm, 0.2 mm]', 'before: [1800.4 mm, 0 mm, -0.4 mm]'],
      ],
    ],
    [
      'a point that the crash moved by 140 mm, and that came right',
      measuredRing,
      [['before: [1681.2 mm, 66.3 mm, 1099.4 mm]', 'before: [1688 mm, 200.3 mm, 1061.4 mm]']],
    ],
    [
      'a point 2.4 mm off, read to half a millimetre',
      measuredRing,
      [['after: [600.3 mm, -120.4 mm, 100.2 mm]', 'after: [600 mm, -122.3 mm, 100 mm]']],
    ],
    [
      'a point that cannot be reached again, with the reason',
      measuredRing,
      [
        [
          'before: [600.1 mm, 1240.2 mm, 100.1 mm], after: [600.1 mm, 1240.1 mm, 99.9 mm]',
          'before: [600.1 mm, 1240.2 mm, 100.1 mm], dropped_because: under the new sound pad; C2R stands for it',
        ],
      ],
    ],
    [
      'a windscreen with both diagonals alike',
      measuredRing,
      [
        [
          'openings: [{',
          'openings: [{ name: Windscreen, diagonals_before: [1500 mm, 1507 mm], diagonals_after: [1501 mm, 1502 mm] }, {',
        ],
      ],
    ],
    [
      'a door as long as that of the other side',
      measuredRing,
      [
        [
          'openings: [{',
          'openings: [{ name: Rear left, other_side: Rear right, diagonals_after: [1100 mm, 1234 mm] }, { name: Rear right, nominal: [1100 mm, 1235 mm], diagonals_after: [1100 mm, 1235 mm] }, {',
        ],
      ],
    ],
    [
      'a strut tower 2 mm off',
      measuredRing,
      [
        [
          '  - id: floor\n    name: Floor\n    kind: floor',
          '  - { id: tower, name: Strut tower, kind: strut tower, structural: true, grade: HC340LA, thickness: 2 mm, grade_from: { reference: ring, at: p. 4 }, damage: { kind: none, found_by: measured } }\n  - id: floor\n    name: Floor\n    kind: floor',
        ],
        ['name: C1R, on: floor', 'name: C1R, on: tower'],
        ['after: [600.1 mm, 1240.1 mm, 99.9 mm]', 'after: [600.1 mm, 1241.9 mm, 99.9 mm]'],
      ],
    ],
    [
      'three zero points, the third 1 mm high',
      ring,
      [['before: [0.1 mm, 1120.3 mm, 0 mm]', 'before: [0.1 mm, 1120.3 mm, 1 mm]']],
    ],
  ])('%s', (_name, plan, changes) => {
    expect(ruleIds(judgeText(changed(plan, changes)))).toEqual([]);
  });

  test('read in the axes of the bench and not of the data sheet, another way each time', () => {
    const bench = everyReading(
      everyReading(measuredRing, 'before', ([x = 0, y = 0, z = 0]) => [y + 2000, -x + 150, z + 800]),
      'after',
      ([x = 0, y = 0, z = 0]) => [-x, -y - 40, z + 790],
    );
    expect(ruleIds(judgeText(bench))).toEqual([]);
  });

  test('three zero points and a body turned about two of them', () => {
    // A tenth of a radian about the line Z1–Z2; the ring shows that it was the body.
    const [c, s] = [Math.cos(0.1), Math.sin(0.1)];
    const tilted = everyReading(ring, 'before', ([x = 0, y = 0, z = 0]) => [x, c * y - s * z, s * y + c * z]);
    expect(ruleIds(judgeText(tilted))).toEqual([]);
  });
});
