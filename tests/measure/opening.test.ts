import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openingShape } from '../../src/measure/opening.ts';
import type { Corners } from '../../src/measure/opening.ts';
import type { Place } from '../../src/measure/place.ts';
import { carried, noMotion } from '../../src/measure/rigid-motion.ts';
import { anyMotion } from './any-body.ts';

const door: readonly [Place, Place, Place, Place] = [
  [0, 0, 0],
  [1000, 0, 0],
  [1000, 0, 1000],
  [0, 0, 1000],
];
function read(move: (place: Place, index: number) => Place): Corners {
  const pair = (index: 0 | 1 | 2 | 3): Corners[0] => ({
    nominal: door[index],
    measured: move(door[index], index),
  });
  return [pair(0), pair(1), pair(2), pair(3)];
}

describe('an opening', () => {
  test('turned and shifted keeps its shape', () => {
    const shape = openingShape(
      read(([x, y, z]) => [x + 6, y, z]),
      noMotion,
    );
    expect(shape?.deformationMm).toBeCloseTo(0, 9);
    expect(shape?.turnedDegrees).toBeCloseTo(0, 6);
    expect(shape?.carriedMm).toBeCloseTo(6, 9);
    // A turn of half a degree about the first corner carries the one across by 1414 mm · 0.5° in radians.
    const [c, s] = [Math.cos(Math.PI / 360), Math.sin(Math.PI / 360)];
    const turnedDoor = openingShape(
      read(([x, y, z]) => [c * x - s * z, y, s * x + c * z]),
      noMotion,
    );
    expect(turnedDoor?.deformationMm).toBeCloseTo(0, 9);
    expect(turnedDoor?.turnedDegrees).toBeCloseTo(0.5, 9);
    expect(turnedDoor?.carriedMm).toBeCloseTo(2 * Math.sqrt(2) * 1000 * Math.sin(Math.PI / 720), 6);
  });

  test('racked by 4 mm: one diagonal longer, one shorter, by √½ of it', () => {
    const shape = openingShape(
      read(([x, y, z]) => [x + (z * 4) / 1000, y, z]),
      noMotion,
    );
    const long = Math.hypot(1004, 1000) - Math.hypot(1000, 1000);
    expect(shape?.diagonalsMm[0]).toBeCloseTo(long, 9);
    expect(shape?.diagonalsMm[1]).toBeCloseTo(Math.hypot(996, 1000) - Math.hypot(1000, 1000), 9);
    expect(shape?.deformationMm).toBeCloseTo(long, 2);
  });

  test('stretched evenly: both diagonals alike, and yet not its shape', () => {
    const shape = openingShape(
      read(([x, y, z]) => [x * 1.004, y, z * 1.004]),
      noMotion,
    );
    expect(shape?.deformationMm).toBeCloseTo(0.004 * Math.SQRT2 * 1000, 6);
  });

  test('twisted by 5 mm at one corner: no distance shows it, the diagonals pass each other by half of it', () => {
    const shape = openingShape(
      read(([x, y, z], index) => [x, index === 3 ? y + 5 : y, z]),
      noMotion,
    );
    expect(Math.max(...(shape?.diagonalsMm ?? []).map(Math.abs))).toBeLessThan(0.02);
    expect(shape?.deformationMm).toBeCloseTo(2.5, 2);
  });

  test('its shape does not depend on how it stands', () => {
    const bent = read(([x, y, z], index) => [x + index, y - index * index, z + 2 * index]);
    fc.assert(
      fc.property(anyMotion, (motion) => {
        const move = (pair: Corners[0]): Corners[0] => ({
          ...pair,
          measured: carried(motion, pair.measured),
        });
        const moved: Corners = [move(bent[0]), move(bent[1]), move(bent[2]), move(bent[3])];
        expect(openingShape(moved, noMotion)?.deformationMm).toBeCloseTo(
          openingShape(bent, noMotion)?.deformationMm ?? NaN,
          6,
        );
      }),
    );
  });

  test('on one line it is none', () => {
    const line = (index: number): Corners[0] => ({ nominal: [index, 0, 0], measured: [index, 0, 0] });
    expect(openingShape([line(0), line(1), line(2), line(3)], noMotion)).toBeUndefined();
  });
});
