import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { classStatistics, quantile } from '../../src/marking/class-statistics.ts';

describe('quantiles', () => {
  // Hyndman and Fan, The American Statistician 50 (1996), definition 7: p(k) = (k − 1)/(n − 1), and straight lines between. For n = 5
  // the values themselves are the quantiles at 0, 1/4, 1/2, 3/4 and 1.
  test.each([
    [0, 1],
    [0.25, 3],
    [0.5, 7],
    [0.75, 9],
    [1, 12],
  ])('at %d of five values', (share, value) => {
    expect(quantile([1, 3, 7, 9, 12], share)).toBe(value);
  });

  // The worked example in the reference of numpy.percentile, whose default method is the same definition: [10, 7, 4, 3, 2, 1] at
  // 50 % is 3.5.
  it('agree with a published example', () => {
    expect(quantile([1, 2, 3, 4, 7, 10], 0.5)).toBe(3.5);
  });

  // By hand, n = 4: (n − 1)·0.25 = 0.75, so 1 + 0.75·(2 − 1).
  it('lie between values', () => {
    expect(quantile([1, 2, 3, 4], 0.25)).toBeCloseTo(1.75, 12);
    expect(quantile([1, 2, 3, 4], 0.75)).toBeCloseTo(3.25, 12);
  });
});

describe('a class', () => {
  it('of nobody has no statistics', () => {
    expect(classStatistics([])).toBeUndefined();
  });

  // By hand: mean of 0.2, 0.5, 0.5, 0.9, 1 is 3.1/5.
  it('has mean, quartiles and a count for each tenth; all the points lie in the last', () => {
    const answer = classStatistics([1, 0.5, 0.2, 0.9, 0.5]);
    expect(answer).toMatchObject({
      students: 5,
      lowest: 0.2,
      lowerQuartile: 0.5,
      median: 0.5,
      upperQuartile: 0.9,
      highest: 1,
    });
    expect(answer?.mean).toBeCloseTo(0.62, 12);
    expect(answer?.tenths).toEqual([0, 0, 1, 0, 0, 2, 0, 0, 0, 2]);
  });

  it('counts every student once, whatever the points and their order', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1 }), (shares) => {
        const answer = classStatistics(shares);
        expect(answer?.tenths.reduce((total, one) => total + one, 0)).toBe(shares.length);
        expect(classStatistics(shares.toReversed())).toEqual(
          answer === undefined ? undefined : { ...answer, mean: expect.closeTo(answer.mean, 10) },
        );
        expect(answer?.lowest).toBeLessThanOrEqual(answer?.median ?? Number.NaN);
        expect(answer?.median).toBeLessThanOrEqual(answer?.highest ?? Number.NaN);
      }),
    );
  });
});
