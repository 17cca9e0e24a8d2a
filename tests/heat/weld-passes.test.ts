import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { adamsPeakCelsius } from '../../src/heat/weld/adams.ts';
import type { AdamsCase } from '../../src/heat/weld/adams.ts';
import { passesPeakCelsius, shareOfEndless, stitchesPeakCelsius } from '../../src/heat/weld/weld-passes.ts';
import type { PassesPeak } from '../../src/heat/weld/weld-passes.ts';

const seam: AdamsCase = { heatInputJPerMm: 153, thicknessMm: 1.2, distanceMm: 10, metal: 'steel' };

function peak(answer: PassesPeak | ReturnType<typeof adamsPeakCelsius>): number {
  if (!answer.ok) throw new Error(answer.reason);
  return answer.peakCelsius;
}

describe('passes', () => {
  test('one pass is Adams; a stated interpass temperature is the sheet before the pass', () => {
    expect(peak(passesPeakCelsius({ ...seam, passes: 1 }))).toBe(peak(adamsPeakCelsius(seam)));
    expect(peak(passesPeakCelsius({ ...seam, passes: 1, interpassCelsius: 150 }))).toBe(
      peak(adamsPeakCelsius(seam)),
    );
    expect(peak(passesPeakCelsius({ ...seam, passes: 3, interpassCelsius: 150 }))).toBe(
      peak(adamsPeakCelsius({ ...seam, ambientCelsius: 150 })),
    );
  });

  // 496.8 °C for one pass (worked out elsewhere): two without a pause add up to 20 + 2 × 476.8.
  test('without one they add up, and it is said', () => {
    const two = passesPeakCelsius({ ...seam, passes: 2 });
    expect(Math.abs(peak(two) - 973.6)).toBeLessThan(1);
    expect(two).toMatchObject({ assumptions: [expect.stringContaining('interpass')] });
    expect(peak(passesPeakCelsius({ ...seam, passes: 9 }))).toBe(1510);
  });

  test('no number: half a pass, an interpass temperature below the sheet or red hot', () => {
    for (const wrong of [
      { passes: 1.5 },
      { passes: 0 },
      { passes: Number.NaN },
      { passes: 2, interpassCelsius: 0 },
      { passes: 2, interpassCelsius: 600 },
      { passes: 2, interpassCelsius: Number.NaN },
      { passes: 2, thicknessMm: -1 },
    ]) {
      expect(passesPeakCelsius({ ...seam, ...wrong })).toMatchObject({ ok: false });
    }
  });
});

describe('stitches', () => {
  /*
   * Line of length L dropped at once in an endless sheet without loss, by superposing points: rise at distance y from
   * its middle is proportional to ∫ exp(−(x² + y²)/4at)/(4πat) dx. Summed here point by point over time and length.
   */
  test.each([
    [2, 20],
    [20, 20],
    [30, 10],
    [100, 10],
  ])('share of a line of %d mm at %d mm, summed up from points', (length, beside) => {
    let most = 0;
    for (let fourAt = 0.5 * beside ** 2; fourAt < 2.5 * beside ** 2; fourAt += 0.01 * beside ** 2) {
      let sum = 0;
      const dx = length / 400;
      for (let n = 0; n < 400; n++) {
        const x = -length / 2 + (n + 0.5) * dx;
        sum += (Math.exp(-(x * x + beside * beside) / fourAt) / (Math.PI * fourAt)) * dx;
      }
      most = Math.max(most, sum);
    }
    const endless = 1 / (Math.sqrt(2 * Math.PI * Math.E) * beside);
    expect(shareOfEndless(length, beside)).toBeGreaterThanOrEqual(most / endless);
    expect(shareOfEndless(length, beside)).toBeLessThan(most / endless + 0.001);
  });

  test('limits: a point falls like its length, a long line is endless', () => {
    // max of exp(−1/s²)/s² is 1/e; of exp(−1/s²)/s it is exp(−½)/√2.
    const point = (0.1 / 20 / Math.sqrt(Math.PI)) * (Math.exp(-1) / (Math.exp(-0.5) / Math.SQRT2));
    expect(shareOfEndless(0.1, 20)).toBeLessThan(point + 2e-4);
    expect(shareOfEndless(0.1, 20)).toBeGreaterThan(point);
    expect(shareOfEndless(1000, 10)).toBeCloseTo(1, 6);
    expect(shareOfEndless(20, 0)).toBe(1);
  });

  test('no pause: the seam in one go, said when it was not stated', () => {
    const whole = peak(adamsPeakCelsius(seam));
    const silent = stitchesPeakCelsius({ ...seam, stitches: 5, stitchMm: 20 });
    expect(peak(silent)).toBe(whole);
    expect(silent).toMatchObject({ assumptions: [expect.stringContaining('pause')] });
    expect(peak(stitchesPeakCelsius({ ...seam, stitches: 5, stitchMm: 20, pauseSeconds: 0 }))).toBe(whole);
  });

  // Heat of a point in an endless sheet at its own place, Q·L/(4πk·d·t); with 27.3 W/(m·K), by hand: 3060 J, 60 s, 123.9 K.
  test('each earlier stitch leaves its heat: 123.9 K after a minute, half of that after two', () => {
    const weld = { ...seam, distanceMm: 20, stitchMm: 20, pauseSeconds: 60 };
    const [one, two, three] = [1, 2, 3].map((stitches) => peak(stitchesPeakCelsius({ ...weld, stitches })));
    expect(Math.abs((two ?? 0) - (one ?? 0) - 123.9)).toBeLessThan(0.1);
    expect(three).toBe(peak(adamsPeakCelsius(weld)));
    const slow = [2, 3].map((stitches) =>
      peak(stitchesPeakCelsius({ ...weld, stitches, pauseSeconds: 240 })),
    );
    expect(Math.abs((slow[1] ?? 0) - (slow[0] ?? 0) - 123.9 / 8)).toBeLessThan(0.1);
    // A free edge sends the heat that it gets back.
    const edge = [2, 3].map((stitches) =>
      peak(stitchesPeakCelsius({ ...weld, stitches, pauseSeconds: 240, freeEndMm: 25 })),
    );
    expect(Math.abs((edge[1] ?? 0) - (edge[0] ?? 0) - 123.9 / 4)).toBeLessThan(0.2);
  });

  /*
   * Two stitches over each other, worked out as what they are: lines of points in an endless sheet, no loss. With
   * 27.3 W/(m·K) and the heat of an endless line as in Adams' formula, measured from the centre line.
   */
  test('lies above what two stitches at one place do', () => {
    const [length, beside, pause] = [20, 20, 60];
    const diffusivity = 27.3 / 4.4;
    const stitch = (seconds: number) => {
      let sum = 0;
      for (let n = 0; n < 200; n++) {
        const x = ((n + 0.5) / 200 - 0.5) * length;
        sum += Math.exp(-(x * x + beside * beside) / (4 * diffusivity * seconds)) / 200;
      }
      return (sum * 153 * length) / (4 * Math.PI * 0.0273 * 1.2 * seconds);
    };
    let most = 0;
    for (let after = 0.5; after < 200; after += 0.5)
      most = Math.max(most, stitch(after) + stitch(after + pause));
    const bound = stitchesPeakCelsius({
      ...seam,
      distanceMm: beside - 4.7,
      stitches: 2,
      stitchMm: length,
      pauseSeconds: pause,
    });
    expect(peak(bound)).toBeGreaterThan(20 + most);
    expect(peak(bound)).toBeLessThan(20 + 2.5 * most);
  });

  test('never above the whole seam; longer pauses, shorter and fewer stitches never hotter', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        number(3, 60),
        number(1, 600),
        number(1, 60),
        (stitches, stitchMm, pauseSeconds, distanceMm) => {
          const weld = { ...seam, distanceMm, stitches, stitchMm, pauseSeconds };
          const base = peak(stitchesPeakCelsius(weld));
          expect(base).toBeLessThanOrEqual(peak(adamsPeakCelsius(weld)));
          expect(base).toBeGreaterThan(20);
          expect(peak(stitchesPeakCelsius({ ...weld, stitches: stitches + 1 }))).toBeGreaterThanOrEqual(base);
          expect(
            peak(stitchesPeakCelsius({ ...weld, pauseSeconds: 1.5 * pauseSeconds })),
          ).toBeLessThanOrEqual(base);
          // The share is searched in steps, which costs at most 1e-5 of the rise.
          expect(peak(stitchesPeakCelsius({ ...weld, stitchMm: 0.9 * stitchMm + 0.3 }))).toBeLessThanOrEqual(
            base + 0.02,
          );
        },
      ),
    );
  });

  test('no number from nonsense', () => {
    const weld = { ...seam, stitches: 4, stitchMm: 20, pauseSeconds: 30 };
    for (const wrong of [
      { stitches: 2.5 },
      { stitches: 0 },
      { stitchMm: -20 },
      { stitchMm: Number.NaN },
      { pauseSeconds: -1 },
      { pauseSeconds: Infinity },
      { heatInputJPerMm: 0 },
    ]) {
      expect(stitchesPeakCelsius({ ...weld, ...wrong })).toMatchObject({ ok: false });
    }
  });
});
