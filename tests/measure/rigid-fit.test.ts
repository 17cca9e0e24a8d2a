import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Place } from '../../src/measure/place.ts';
import { deviationOf, fitRigid } from '../../src/measure/rigid-fit.ts';
import type { FittedMotion, PointPair } from '../../src/measure/rigid-fit.ts';
import { angleDegrees, carried } from '../../src/measure/rigid-motion.ts';
import { anyBody, anyMotion, floor, noiseOf, pairsOf, repeatable } from './any-body.ts';

function fitted(pairs: readonly PointPair[]): FittedMotion {
  const fit = fitRigid(pairs);
  if (!fit.ok) throw new Error(fit.why);
  return fit;
}

describe('a known motion is taken back exactly', () => {
  test('any turn, any shift: to a millionth of a micrometre on three metres', () => {
    fc.assert(
      fc.property(anyBody, anyMotion, (nominal, motion) => {
        const fit = fitted(pairsOf(nominal, (place) => carried(motion, place)));
        for (const residual of fit.residuals) {
          for (const value of residual) expect(Math.abs(value)).toBeLessThan(1e-9);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('a quarter turn about z, by hand', () => {
    const fit = fitted(pairsOf(floor, ([x, y, z]) => [-y + 5, x - 7, z + 9]));
    expect(angleDegrees(fit.motion.rotation)).toBeCloseTo(90, 9);
    expect(carried(fit.motion, [5, -7, 9])).toEqual([
      expect.closeTo(0, 9),
      expect.closeTo(0, 9),
      expect.closeTo(0, 9),
    ]);
  });

  test('the inverse of a fit is the fit of the inverse', () => {
    fc.assert(
      fc.property(anyBody, anyMotion, (nominal, motion) => {
        const there = fitted(pairsOf(nominal, (place) => carried(motion, place)));
        const back = fitted(nominal.map((place) => ({ nominal: carried(motion, place), measured: place })));
        for (const place of nominal) {
          const again = carried(there.motion, carried(back.motion, place));
          again.forEach((value, axis) => {
            expect(Math.abs(value - (place[axis] ?? NaN))).toBeLessThan(1e-8);
          });
        }
      }),
    );
  });
});

describe('a coordinate that is next to nothing changes nothing', () => {
  // Down to the smallest double there is: the decomposition once divided by it, and the turn stretched by 2 in 10 000.
  test.each([0, 5e-324, 1e-320, 1e-310, 1e-200, 1e-160, 1e-100, 1e-30, 1e-17, 1e-12, 1e-9])(
    '%d mm',
    (speck) => {
      const bodies: readonly Place[][] = [
        [...floor, [0, -speck, speck]],
        [...floor.map(([x, y]): Place => [x, y, speck]), [speck, speck, -speck]],
      ];
      const turns: readonly ((place: Place) => Place)[] = [
        (place) => place,
        ([x, y, z]) => [-x, y, -z],
        ([x, y, z]) => [x, -y, -z],
        ([x, y, z]) => [z, x, y],
      ];
      for (const body of bodies) {
        for (const turn of turns) {
          for (const residual of fitted(pairsOf(body, turn)).residuals) {
            for (const value of residual) expect(Math.abs(value)).toBeLessThan(1e-9);
          }
        }
      }
    },
  );
});

describe('a fit never mirrors', () => {
  const solid: readonly Place[] = [...floor, [900, 0, 700]];
  const mirrored = pairsOf(solid, ([x, y, z]) => [x, -y, z]);

  test('a mirrored set leaves a misfit, and the asked-for mirroring none', () => {
    expect(fitted(mirrored).rmsMm).toBeGreaterThan(100);
    const other = fitRigid(mirrored, 'mirrored');
    expect(other.ok && other.rmsMm).toBeLessThan(1e-9);
  });

  test('the determinant of every fitted turn is one', () => {
    fc.assert(
      fc.property(anyBody, anyBody, (nominal, other) => {
        const pairs = nominal.map((place, index) => ({ nominal: place, measured: other[index] ?? place }));
        const [[a, b, c], [d, e, f], [g, h, i]] = fitted(pairs).motion.rotation;
        expect(a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('noise', () => {
  // Of a least-squares fit the sum of squares over the variance is chi-square with as many degrees of freedom as readings less unknowns:
  // mean n, variance 2 n (any textbook of adjustment). Means of 1500 runs, held to four standard errors.
  test.each([3, 4, 10])('%i points scatter by the degrees of freedom', (count) => {
    const [sigma, runs] = [0.5, 1500];
    const noise = noiseOf(repeatable(20_261_125 + count), sigma);
    const extra: readonly Place[] = [
      [400, 100, 900],
      [-700, 300, 400],
      [2600, -200, 500],
      [900, 650, 250],
      [1200, -640, 1300],
      [300, 0, -150],
    ];
    const nominal = [...floor, ...extra].slice(0, count);
    let sum = 0;
    for (let run = 0; run < runs; run += 1) {
      const fit = fitted(pairsOf(nominal, ([x, y, z]) => [x + noise(), y + noise(), z + noise()]));
      expect(fit.degreesOfFreedom).toBe(3 * count - 6);
      sum += fit.scatterMm ** 2;
    }
    const standardError = sigma ** 2 * Math.sqrt(2 / (3 * count - 6) / runs);
    expect(Math.abs(sum / runs - sigma ** 2)).toBeLessThan(4 * standardError);
  });

  test('no motion nearby fits better', () => {
    const noise = noiseOf(repeatable(7), 2);
    const pairs = pairsOf(floor, ([x, y, z]) => [x + noise(), y + noise(), z + noise()]);
    const fit = fitted(pairs);
    fc.assert(
      fc.property(anyMotion, fc.constantFrom(1e-5, 1e-3), ({ shift: [a, b, c] }, share) => {
        // A little turn and a little shift after the fitted ones.
        const turn = fitted(
          pairsOf(floor, ([x, y, z]) => [x - (c * y * share) / 1e3, y + (c * x * share) / 1e3, z]),
        );
        const nudged = pairs.map(({ nominal, measured }): PointPair => {
          const [x, y, z] = carried(turn.motion, carried(fit.motion, measured));
          return { nominal, measured: [x + a * share, y + b * share, z + c * share] };
        });
        const worse = nudged.reduce(
          (total, { nominal, measured }) =>
            total + measured.reduce((sum, value, axis) => sum + (value - (nominal[axis] ?? NaN)) ** 2, 0),
          0,
        );
        expect(Math.sqrt(worse / pairs.length)).toBeGreaterThanOrEqual(fit.rmsMm - 1e-12);
      }),
    );
  });
});

describe('moving all readings together changes nothing', () => {
  test('deviations after any motion', () => {
    const noise = noiseOf(repeatable(11), 3);
    fc.assert(
      fc.property(anyBody, anyMotion, (nominal, motion) => {
        const pairs = pairsOf(nominal, ([x, y, z]) => [x + noise(), y + noise(), z + noise()]);
        const moved = pairs.map((pair) => ({ ...pair, measured: carried(motion, pair.measured) }));
        const [before, after] = [fitted(pairs.slice(0, 4)), fitted(moved.slice(0, 4))];
        pairs.forEach((pair, index) => {
          const other = moved[index] ?? pair;
          const [one, two] = [deviationOf(before.motion, pair), deviationOf(after.motion, other)];
          one.forEach((value, axis) => {
            expect(Math.abs(value - (two[axis] ?? NaN))).toBeLessThan(1e-8);
          });
        });
      }),
    );
  });
});

describe('what cannot be fitted says so', () => {
  const why = (places: readonly Place[]): unknown => {
    const fit = fitRigid(places.map((place) => ({ nominal: place, measured: place })));
    return fit.ok ? 'fitted' : fit.why;
  };

  test('two, one line, one place, no number', () => {
    expect(why([])).toBe('fewer than three');
    expect(why(floor.slice(0, 2))).toBe('fewer than three');
    expect(
      why([
        [0, 0, 0],
        [1, 2, 3],
        [2, 4, 6],
        [-3, -6, -9],
      ]),
    ).toBe('on one line');
    expect(why(Array.from({ length: 1000 }, (): Place => [1412, -702, 611]))).toBe('on one line');
    expect(why([...floor, [NaN, 0, 0]])).toBe('no place');
    expect(why([...floor, [Infinity, 0, 0]])).toBe('no place');
    expect(why([...floor, [1e308, 0, 0]])).toBe('no place');
    expect(why(floor.slice(0, 3))).toBe('fitted');
  });

  test('a line that is bent by a centimetre on two metres is a plane, however poor', () => {
    expect(
      why([
        [0, 0, 0],
        [1000, 10, 0],
        [2000, 0, 0],
      ]),
    ).toBe('fitted');
    expect(
      why([
        [0, 0, 0],
        [1000, 1e-6, 0],
        [2000, 0, 0],
      ]),
    ).toBe('on one line');
  });

  test('readings on one line, though the data sheet has a triangle', () => {
    const fit = fitRigid(
      floor.slice(0, 3).map((nominal, index) => ({ nominal, measured: [index * 900, 0, 0] })),
    );
    expect(fit.ok ? 'fitted' : fit.why).toBe('on one line');
  });
});
