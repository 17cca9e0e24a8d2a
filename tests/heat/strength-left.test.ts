import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { oneAfterAnother } from '../../src/heat/heating-sequence.ts';
import { solveHeldSheet } from '../../src/heat/sheet/held-sheet.ts';
import type { TemperatureHistory } from '../../src/heat/point-history.ts';
import { softenedWidthMm } from '../../src/heat/strength/softened-width.ts';
import type { StrengthKind, StrengthLeft } from '../../src/heat/strength/strength-answer.ts';
import { strengthLeft } from '../../src/heat/strength/strength-left.ts';
import { temperingParameterHours } from '../../src/heat/strength/tempering.ts';

const kinds: readonly StrengthKind[] = [
  'press-hardened',
  'martensitic',
  'dual-phase',
  'complex-phase',
  'TRIP',
  'bake-hardened',
  'high-strength low-alloy',
  'mild',
  'aluminium 6xxx T4',
  'aluminium 6xxx T6',
  'aluminium 5xxx O',
  'aluminium 5xxx H',
  'aluminium 7xxx',
];
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const held = (celsius: number, seconds: number): TemperatureHistory => ({
  seconds: [0, seconds],
  celsius: [celsius, celsius],
});

/** Both ends in per cent. Unknown is worse than any number, re-transformed worse still. */
function ends(left: StrengthLeft): readonly [least: number, most: number] {
  if ('leastPercent' in left) return [left.leastPercent, left.mostPercent];
  return left.state === 'unknown' ? [-1, -1] : [-2, -2];
}

function expectNoBetter(worse: StrengthLeft, better: StrengthLeft): void {
  const [least, most] = ends(worse);
  const [wasLeast, wasMost] = ends(better);
  expect(least).toBeLessThanOrEqual(wasLeast + 1e-9);
  expect(most).toBeLessThanOrEqual(wasMost + 1e-9);
}

test.each(kinds)('%s: hotter, longer, more often never leaves more; the ends are in order', (kind) => {
  fc.assert(
    fc.property(
      number(20, 760),
      number(0.05, 5000),
      number(1, 1.5),
      fc.array(fc.tuple(number(20, 700), number(0.1, 1000)), { maxLength: 3 }),
      (celsius, seconds, by, others) => {
        const base = strengthLeft(kind, held(celsius, seconds));
        expectNoBetter(strengthLeft(kind, held(Math.min(1600, celsius * by), seconds)), base);
        expectNoBetter(strengthLeft(kind, held(celsius, seconds * by)), base);
        const more = oneAfterAnother([held(celsius, seconds), ...others.map(([c, s]) => held(c, s))]);
        expectNoBetter(strengthLeft(kind, more), base);
        if ('leastPercent' in base) {
          expect(base.leastPercent).toBeGreaterThan(0);
          expect(base.leastPercent).toBeLessThanOrEqual(base.mostPercent);
          expect(base.mostPercent).toBeLessThanOrEqual(100);
          expect(base.lossPercent).toBeCloseTo(100 - base.leastPercent, 9);
        }
      },
    ),
  );
});

test('weaker steel before is not stronger after', () => {
  fc.assert(
    fc.property(number(20, 700), number(0.1, 3000), number(970, 1690), (celsius, seconds, tensileMpa) => {
      const left = strengthLeft('martensitic', held(celsius, seconds), { tensileMpa });
      const weaker = strengthLeft('martensitic', held(celsius, seconds), { tensileMpa: 0.98 * tensileMpa });
      fc.pre('leastMpa' in left && 'leastMpa' in weaker);
      expect(weaker.leastMpa).toBeLessThanOrEqual((left.leastMpa ?? 0) + 1e-6);
    }),
  );
});

describe('repeated heatings', () => {
  // The bound is worked out on paper: it is the entropy of the two shares, at most log10(2), times the difference.
  test('the order of two matters by log10(2)·ΔT/1000 of the parameter at most, the hotter last being worse', () => {
    fc.assert(
      fc.property(
        number(150, 700),
        number(150, 700),
        number(0.1, 5000),
        number(0.1, 5000),
        (one, other, seconds, otherSeconds) => {
          const [cool, hot] = one <= other ? [one, other] : [other, one];
          const a = held(cool, seconds);
          const b = held(hot, otherSeconds);
          const hotLast = temperingParameterHours(oneAfterAnother([a, b]));
          const coolLast = temperingParameterHours(oneAfterAnother([b, a]));
          // A step counts at the higher of its two temperatures; the change between the two takes no time.
          expect(hotLast - coolLast).toBeGreaterThan(-1e-9);
          expect(hotLast - coolLast).toBeLessThanOrEqual((Math.log10(2) * (hot - cool)) / 1000 + 1e-9);
          const [leastHotLast] = ends(strengthLeft('press-hardened', oneAfterAnother([a, b])));
          const [leastCoolLast] = ends(strengthLeft('press-hardened', oneAfterAnother([b, a])));
          expect(Math.abs(leastHotLast - leastCoolLast)).toBeLessThan(3);
        },
      ),
    );
  });

  test('two of 60 s are one of 120 s; rest between them changes nothing', () => {
    const once = strengthLeft('press-hardened', held(420, 120));
    const twice = oneAfterAnother([held(420, 60), held(20, 86400), held(420, 60)]);
    expect(ends(strengthLeft('press-hardened', twice))[0]).toBeCloseTo(ends(once)[0], 9);
    // Equal times after a start that is not zero.
    const late = { seconds: [1000, 1060], celsius: [420, 420] };
    expect(ends(strengthLeft('press-hardened', oneAfterAnother([late, late])))[0]).toBeCloseTo(
      ends(once)[0],
      9,
    );
  });

  test('limits of time count over all heatings', () => {
    const half = held(210, 700);
    expect(strengthLeft('dual-phase', half).state).toBe('softened');
    expect(strengthLeft('dual-phase', oneAfterAnother([half, held(20, 3600), half])).state).toBe('unknown');
    const hold = held(650, 90);
    expect(strengthLeft('mild', oneAfterAnother([hold, hold])).state).toBe('unchanged');
    expect(strengthLeft('mild', oneAfterAnother([hold, hold, hold])).state).toBe('unknown');
  });
});

describe('no number from nonsense', () => {
  test.each(kinds)('%s', (kind) => {
    for (const history of [
      { seconds: [], celsius: [] },
      { seconds: [0, 1], celsius: [20] },
      { seconds: [0, 1], celsius: [20, Number.NaN] },
      { seconds: [1, 0], celsius: [20, 20] },
      { seconds: [0, 1], celsius: [20, 3000] },
      oneAfterAnother([]),
    ]) {
      expect(strengthLeft(kind, history)).toMatchObject({ state: 'unknown' });
    }
    for (const delivered of [
      { hv: Number.NaN },
      { hv: -480 },
      { tensileMpa: 15 },
      { tensileMpa: Infinity },
      { proofMpa: Number.NaN },
    ]) {
      expect(strengthLeft(kind, held(100, 10), delivered)).toMatchObject({ state: 'unknown' });
    }
  });

  test('martensite harder or softer than the curve was made for', () => {
    for (const delivered of [{ hv: 600 }, { hv: 200 }, { tensileMpa: 1900 }, { tensileMpa: 600 }]) {
      expect(strengthLeft('press-hardened', held(300, 10), delivered)).toMatchObject({ state: 'unknown' });
    }
  });
});

describe('width of the softened zone', () => {
  // 1.2 mm, emissivity 0.7, 8 W/m²K: reaches of a loss of 30, 10, 5 and 1 % on the curve itself, and of 200 °C, worked out by
  // the handbook's own program to 1 mm. The safe end of the range reaches further than the curve.
  test.each([
    [600, 10, 1, 6, 9, 12, 16],
    [600, 60, 5, 14, 19, 26, 30],
    [600, 300, 8, 21, 28, 38, 39],
    [800, 60, 10, 20, 25, 31, 35],
  ])('%d °C for %d s', (sourceCelsius, holdSeconds, thirty, ten, five, one, twoHundred) => {
    const answer = solveHeldSheet({
      sourceCelsius,
      holdSeconds,
      times: 1,
      thicknessMm: 1.2,
      metal: 'steel',
      heatedZoneMm: 0,
      emissivity: 0.7,
    });
    if (!answer.ok) throw new Error(answer.reason);
    const { history } = answer;
    const historyAt = (mm: number) => {
      const at = history.at(mm);
      return at.ok ? { ok: true as const, history: at.point } : at;
    };
    const width = (lossPercent: number) => {
      const found = softenedWidthMm(historyAt, 'press-hardened', { lossPercent, farthestMm: 120 });
      if (!found.ok) throw new Error(found.reason);
      return found.widthMm;
    };
    for (const [lossPercent, reach, farthest] of [
      [30, thirty, ten],
      [10, ten, one],
      [5, five, twoHundred],
    ] as const) {
      expect(width(lossPercent)).toBeGreaterThan(reach - 1);
      expect(width(lossPercent)).toBeLessThan(farthest + 2);
    }
  });

  const falling = (mm: number) => ({ ok: true as const, history: held(500 - 10 * mm, 60) });

  test('the border lies within the tolerance, on its far side', () => {
    const found = softenedWidthMm(falling, 'press-hardened', {
      lossPercent: 5,
      farthestMm: 40,
      toleranceMm: 0.01,
    });
    if (!found.ok) throw new Error(found.reason);
    const lossAt = (mm: number) => 100 - ends(strengthLeft('press-hardened', falling(mm).history))[0];
    expect(lossAt(found.widthMm)).toBeLessThanOrEqual(5);
    expect(lossAt(found.widthMm - 0.01)).toBeGreaterThan(5);
  });

  test('nothing softened is no width; softened all the way, or a history with a reason, is a reason', () => {
    const options = { lossPercent: 5, farthestMm: 40 };
    expect(softenedWidthMm(() => falling(40), 'press-hardened', options)).toEqual({ ok: true, widthMm: 0 });
    expect(softenedWidthMm(() => falling(0), 'press-hardened', options)).toMatchObject({ ok: false });
    // Hotter than dual-phase steel is known to bear counts as softened.
    const dual = softenedWidthMm(falling, 'dual-phase', { lossPercent: 50, farthestMm: 40 });
    if (!dual.ok) throw new Error(dual.reason);
    expect(Math.abs(dual.widthMm - 25)).toBeLessThanOrEqual(0.5);
    expect(softenedWidthMm(() => ({ ok: false, reason: 'no metal' }), 'mild', options)).toEqual({
      ok: false,
      reason: 'no metal',
    });
    for (const wrong of [{ lossPercent: Number.NaN }, { farthestMm: -1 }, { toleranceMm: 0 }]) {
      expect(softenedWidthMm(falling, 'mild', { ...options, ...wrong })).toMatchObject({ ok: false });
    }
  });
});
