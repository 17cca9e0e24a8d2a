import fc from 'fast-check';
import { expect, test } from 'vitest';
import { asymmetry, diagonalDifferenceMm, sidePairs } from '../../src/measure/left-right.ts';
import type { SidedPoint } from '../../src/measure/left-right.ts';
import type { Place } from '../../src/measure/place.ts';
import { anyPlace } from './any-body.ts';

const at = (name: string, nominal: Place | undefined, counterpart?: string): SidedPoint => ({
  name,
  nominal,
  counterpart,
});

test('two sides by name, else by the sign of y; each point once', () => {
  expect(sidePairs([at('L', [100, -450, 20]), at('M', [100, 0, 20]), at('R', [100, 450, 20])])).toEqual([
    { one: 0, other: 2 },
  ]);
  // In a sheet whose y does not begin at the middle only the names tell.
  const named = [
    at('L', [100, 0, 0]),
    at('R', [100, 900, 0], 'L'),
    at('Q', [100, 900, 0], 'L'),
    at('S', [0, 5, 0], 'nobody'),
  ];
  expect(sidePairs(named)).toEqual([{ one: 0, other: 1 }]);
  expect(sidePairs([at('L', [100, -450, 20]), at('R', [100, 450, 21])])).toEqual([]);
  expect(sidePairs([at('A', undefined), at('B', [1, 30, 1], 'B')])).toEqual([]);
  expect(sidePairs([at('L', [100, -4, 0]), at('R', [100, 4, 0])])).toEqual([]);
});

test('both sides alike leave nothing; opposite ones leave twice', () => {
  expect(asymmetry([2, -1, 3], [2, 1, 3])).toEqual([0, 0, 0]);
  expect(asymmetry([2.9, 0, 0], [-2.9, 0, 0])).toEqual([5.8, 0, 0]);
  expect(asymmetry([0, 2, 0], [0, 2, 0])).toEqual([0, 4, 0]);
});

test('exchanging left and right mirrors the result', () => {
  fc.assert(
    fc.property(anyPlace, anyPlace, (one, other) => {
      const mirrored = ([x, y, z]: Place): Place => [x, -y, z];
      const [x, y, z] = asymmetry(one, other);
      expect(asymmetry(mirrored(other), mirrored(one))).toEqual([
        expect.closeTo(-x, 9),
        expect.closeTo(-y, 9),
        expect.closeTo(-z, 9),
      ]);
    }),
  );
});

test('diagonals across a frame that is pushed askew', () => {
  // By hand: 3 m by 1 m, the far end 10 mm to the side of y: diagonals √(9 + 1.01²) and √(9 + 0.99²) m.
  const difference = diagonalDifferenceMm({
    one: [0, 0, 0],
    other: [0, 1000, 0],
    farOne: [3000, 10, 0],
    farOther: [3000, 1010, 0],
  });
  expect(difference).toBeCloseTo(Math.hypot(3000, 1010) - Math.hypot(3000, 990), 9);
});
