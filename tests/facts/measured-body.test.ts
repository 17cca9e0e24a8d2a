import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';
import type { Derived } from './facts-of.ts';

// Four zero points at the corners of a floor of 1800 mm by 1120 mm; readings by hand.
const zero = (reads: readonly string[] = []): string =>
  ['0 mm, 0 mm, 0 mm', '1800 mm, 0 mm, 0 mm', '0 mm, 1120 mm, 0 mm', '1800 mm, 1120 mm, 0 mm']
    .map((place, index) => {
      const name = `Z${String(index + 1)}`;
      return `{ name: ${name}, nominal: [${place}], before: [${place}], after: [${reads[index] ?? place}] }`;
    })
    .join(', ');
const measured = (points: string, more = ''): Derived =>
  factsOf(`measurements: { zero_points: [Z1, Z2, Z3, Z4], ${more}points: [${points}] }`);
const at = (index: number): string => `/measurements/points/${String(index)}`;

describe('a reading is fitted on the zero points', () => {
  test('the whole vehicle 100 mm to the side and turned by a quarter: the point is off by what it is off', () => {
    // (x, y, z) was read at (100 - y, x, z + 5).
    const reads = [
      '100 mm, 0 mm, 5 mm',
      '100 mm, 1800 mm, 5 mm',
      '-1020 mm, 0 mm, 5 mm',
      '-1020 mm, 1800 mm, 5 mm',
    ];
    const derived = measured(
      `${zero(reads)}, { name: A, nominal: [900 mm, -700 mm, 600 mm], after: [796 mm, 900 mm, 607 mm] }`,
    );
    // At nominal it would be (800, 900, 605): 4 mm in its -x, which is y of the sheet, and 2 mm in z.
    expect(derived.value('point.deviation_after', at(4))).toBeCloseTo(4, 6);
    expect(derived.value('point.axes_after', at(4))).toBe('x 0.0, y +4.0, z +2.0 mm');
    expect(derived.value('point.over_tolerance', at(4))).toBeCloseTo(1, 6);
    expect(derived.fact('point.deviation_after', at(4))).toMatchObject({
      from: 'computed',
      note: expect.stringContaining('Z1, Z2, Z3, Z4'),
    });
  });

  test('without three zero points it is as written, and says so', () => {
    const derived = factsOf(
      'measurements: { zero_points: [Z1, Z2, Z3], points: [{ name: Z1, nominal: [0 mm, 0 mm, 0 mm], after: [0 mm, 0 mm, 0 mm] }, { name: Z2, nominal: [1 m, 0 mm, 0 mm] }, { name: Z3, nominal: [0 mm, 1 m, 0 mm], after: [0 mm, 1001 mm, 0 mm] }] }',
    );
    expect(derived.value('point.deviation_after', at(2))).toBe(1);
    expect(derived.fact('point.deviation_after', at(2))).toMatchObject({
      note: 'As written: the zero points carry no fit.',
    });
    expect(derived.value('measurement.datum_fault_after')).toBe(
      'only two of the zero points bear a nominal place and a reading after the repair',
    );
    expect(derived.fact('measurement.datum_fault_before').known).toBe(false);
  });
});

describe('a zero point that moved', () => {
  test('7 mm along the body, by its whole way, and by name', () => {
    const derived = measured(zero(['7 mm, 0 mm, 0 mm']));
    expect(derived.value('measurement.datum_error_after')).toBeCloseTo(7, 1);
    expect(derived.value('measurement.datum_over_after')).toBeCloseTo(4, 1);
    expect(derived.value('measurement.datum_suspect_after')).toBe('Z1');
    expect(derived.value('measurement.datum_over_before')).toBeCloseTo(-3, 6);
    expect(derived.fact('measurement.datum_suspect_before').known).toBe(false);
  });

  test('7 mm up: one of the four', () => {
    expect(measured(zero(['0 mm, 0 mm, 7 mm'])).value('measurement.datum_suspect_after')).toBe(
      'one of Z1, Z2, Z3, Z4',
    );
  });

  test('a wider tolerance of its own word does not excuse it, a tighter one counts', () => {
    const derived = measured(zero(['4 mm, 0 mm, 0 mm']), 'tolerance: 9 mm, ');
    expect(derived.value('measurement.datum_over_after')).toBeCloseTo(1, 1);
    expect(
      measured(zero(['4 mm, 0 mm, 0 mm']), 'tolerance: 1 mm, ').value('measurement.datum_over_after'),
    ).toBeCloseTo(3, 1);
  });
});

describe('uncertainty', () => {
  const a = '{ name: A, nominal: [900 mm, 560 mm, 100 mm], after: [902.8 mm, 560 mm, 100 mm] }';

  test('is added to the deviation; nothing is without one', () => {
    expect(
      measured(`${zero()}, ${a}`, 'uncertainty: 0.5 mm, ').value('point.over_with_uncertainty', at(4)),
    ).toBeCloseTo(0.3, 6);
    for (const more of ['', 'uncertainty: 0 mm, ']) {
      expect(measured(`${zero()}, ${a}`, more).value('point.over_with_uncertainty', at(4))).toBe(
        more === ''
          ? '? The measuring uncertainty is not stated.'
          : '? What the plan writes there cannot be read.',
      );
    }
  });
});

describe('left and right', () => {
  const sides = (left: string, right: string): Derived =>
    measured(
      `${zero()}, { name: L, nominal: [900 mm, 60 mm, 0 mm], after: [${left}] }, { name: R, other_side: L, nominal: [900 mm, 1060 mm, 0 mm], after: [${right}] }`,
    );

  test('one to the front, one to the rear: twice, told at the later', () => {
    const derived = sides('902 mm, 60 mm, 0 mm', '898 mm, 1060 mm, 0 mm');
    expect(derived.value('point.asymmetry_after', at(5))).toBeCloseTo(4, 6);
    expect(derived.fact('point.asymmetry_after', at(4)).known).toBe(false);
    expect(derived.value('point.other_side', at(4))).toBe('R');
  });

  test('both outwards alike: nothing', () => {
    expect(
      sides('900 mm, 58 mm, 1 mm', '900 mm, 1062 mm, 1 mm').value('point.asymmetry_after', at(5)),
    ).toBeCloseTo(0, 6);
  });
});

describe('an opening', () => {
  const corners = 'openings: [{ name: floor, corners: [Z1, Z2, Z4, Z3] }], ';

  test('by its corners: the diagonal that is longer', () => {
    const derived = measured(zero(['-5 mm, 0 mm, 0 mm']), corners);
    // Z1 and Z4 lie √(1805² + 1120²) apart in place of √(1800² + 1120²).
    expect(derived.value('opening.difference_after')).toBeCloseTo(Math.hypot(1805, 1120) - 2120, 6);
    expect(derived.value('opening.deformation_after')).toBeCloseTo(5, 6);
    expect(derived.value('opening.difference_before')).toBeCloseTo(0, 6);
  });

  test('a tape that says less does not lift the points, one that says more counts', () => {
    const tape = (mm: number): Derived =>
      measured(
        zero(['-5 mm, 0 mm, 0 mm']),
        `openings: [{ corners: [Z1, Z2, Z4, Z3], nominal: [2120 mm, 2120 mm], diagonals_after: [${String(2120 + mm)} mm, 2120 mm] }], `,
      );
    expect(tape(0).value('opening.difference_after')).toBeCloseTo(Math.hypot(1805, 1120) - 2120, 6);
    expect(tape(9).value('opening.difference_after')).toBeCloseTo(9, 6);
  });

  test('a door is compared with the door of the other side, and not with itself', () => {
    const doors = (mm: number): Derived =>
      factsOf(
        `measurements: { openings: [{ name: left, other_side: right, diagonals_after: [1200 mm, ${String(1350 + mm)} mm] }, { name: right, diagonals_after: [1201 mm, 1350 mm], nominal: [1200 mm, 1350 mm] }] }`,
      );
    expect(doors(2).value('opening.difference_after')).toBe(2);
    expect(doors(0).value('opening.difference_after')).toBe(0);
  });

  test('a door whose other side is not there has nothing to be compared with', () => {
    const derived = factsOf(
      'measurements: { openings: [{ name: left, other_side: right, diagonals_after: [1200 mm, 1350 mm] }] }',
    );
    expect(derived.fact('opening.over_tolerance').known).toBe(false);
  });
});

test('no tolerance, in plan or pack, is not known', () => {
  const derived = factsOf(
    'measurements: { points: [{ nominal: [0 mm, 0 mm, 0 mm], after: [5 mm, 0 mm, 0 mm] }] }',
    { tolerances: new Map() },
  );
  expect(derived.value('point.tolerance')).toBe('? No tolerance is stated, in the plan or in a pack.');
  expect(derived.fact('point.over_tolerance').known).toBe(false);
});
