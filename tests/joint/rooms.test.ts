import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { eurocodeShear } from '../../src/joint/eurocode-spot.ts';
import { governingThickness, thicknessRatio } from '../../src/joint/governing-thickness.ts';
import { margin } from '../../src/joint/margin.ts';
import { holeOff } from '../../src/joint/plug.ts';
import { outsideGrip, rivetBearing } from '../../src/joint/rivet.ts';
import { rootGapOff } from '../../src/joint/root-gap.ts';
import { rowRatio, rowShear } from '../../src/joint/row.ts';
import { leastOverlap, leastPitch } from '../../src/joint/spot-spacing.ts';
import { crossTension, shearFormA, shearFormB } from '../../src/joint/spot-strength.ts';
import type { WeldWindow } from '../../src/joint/weld-window.ts';
import { offWindow, windowsFor } from '../../src/joint/weld-window.ts';

const sheet = fc.double({ min: 0.5, max: 3, noNaN: true });

describe('nothing is computed from what is no sheet', () => {
  test.each([Number.NaN, -1, 0, 1e308, Number.POSITIVE_INFINITY])('%f', (mm) => {
    expect(governingThickness([1.2, mm]).ok).toBe(false);
    expect(thicknessRatio([1.2, mm]).ok).toBe(false);
    expect(leastPitch(mm, 2).ok).toBe(false);
    expect(leastOverlap(mm).ok).toBe(false);
    expect(crossTension(mm).ok).toBe(false);
    expect(shearFormA(590, mm).ok).toBe(false);
    expect(shearFormB(590, mm).ok).toBe(false);
    expect(shearFormB(mm, 1.2).ok).toBe(false);
    expect(holeOff(8, mm).ok).toBe(false);
    expect(eurocodeShear({ thinnerMm: mm, thickerMm: 2, fusedMm: 6, tensileMpa: 590 }).ok).toBe(false);
    expect(rivetBearing({ thinnerMm: 1, thickerMm: 1, shankMm: mm, tensileMpa: 200 }).ok).toBe(false);
    expect(outsideGrip(mm, 2, 4)).toMatchObject({ ok: mm > 0 });
    const row = { governingMm: 1.2, thinnerMm: 1.2, thickerMm: 1.2, tensileMpa: 590 };
    expect(rowShear({ count: mm === 0 ? 0.5 : mm, kind: 'spot' }, row).ok).toBe(mm === 1e308);
  });

  test('one sheet, four sheets, no row, a range that ends before it begins', () => {
    expect(governingThickness([1.2])).toMatchObject({ reason: 'A joint has two sheets at least.' });
    expect(governingThickness([1, 1, 1, 1])).toMatchObject({ reason: expect.stringMatching(/four sheets/u) });
    const row = { governingMm: 1, thinnerMm: 1, thickerMm: 1 };
    expect(rowRatio({ count: 4, kind: 'spot' }, { count: 0, kind: 'spot' }, row).ok).toBe(false);
    expect(outsideGrip(3, 4, 2).ok).toBe(false);
    expect(leastPitch(3.3, 2)).toMatchObject({ reason: expect.stringMatching(/ends at 3.2 mm/u) });
  });
});

test('the governing sheet asks no less than any interface of the stack', () => {
  fc.assert(
    fc.property(fc.array(sheet, { minLength: 2, maxLength: 3 }), (stack) => {
      const governing = governingThickness(stack);
      const interfaces = stack.slice(1).map((mm, index) => Math.min(mm, stack[index] ?? mm));
      expect(governing.ok && governing.value >= Math.max(...interfaces)).toBe(true);
    }),
  );
});

test('a thicker sheet asks for no less distance and no less overlap', () => {
  fc.assert(
    fc.property(sheet, sheet, (one, other) => {
      const [thin, thick] = [Math.min(one, other), Math.max(one, other)];
      for (const find of [(mm: number) => leastPitch(mm, 2), leastOverlap]) {
        const [least, most] = [find(thin), find(thick)];
        expect(least.ok && most.ok && least.value <= most.value).toBe(true);
      }
    }),
  );
});

test('half way between two rows of the table the pitch is half way between', () => {
  expect(leastPitch(1.125, 2)).toEqual({ ok: true, value: 21 });
});

test('a stronger sheet makes no spot weaker by form B', () => {
  fc.assert(
    fc.property(fc.integer({ min: 200, max: 2190 }), sheet, (mpa, mm) => {
      const [weak, strong] = [shearFormB(mpa, mm), shearFormB(mpa + 10, mm)];
      expect(weak.ok && strong.ok && strong.value >= weak.value - 1e-9).toBe(true);
    }),
  );
});

test('a joint less or a smaller button makes no row stronger; a larger one than the set-up is credited with no more', () => {
  const stack = { governingMm: 1.2, thinnerMm: 1.2, thickerMm: 1.4, tensileMpa: 590 };
  const load = (count: number, buttonMm: number): number => {
    const answer = rowShear({ count, kind: 'spot', buttonMm }, stack);
    return answer.ok ? answer.value : Number.NaN;
  };
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 80 }), fc.double({ min: 2, max: 9, noNaN: true }), (count, mm) => {
      expect(load(count - 1, mm)).toBeLessThan(load(count, mm));
      expect(load(count, mm * 0.9)).toBeLessThanOrEqual(load(count, mm));
    }),
  );
  expect(load(10, 9)).toBe(load(10, 5 * Math.sqrt(1.2)));
  expect(load(10, 4.38)).toBeLessThan(load(10, 5 * Math.sqrt(1.2)));
});

// Common practice of the trade, handbook, joining, section 2.
test.each([
  [0.8, 5, 0],
  [0.8, 6.5, 0],
  [0.8, 7, 1],
  [0.9, 7.5, 0],
  [1.2, 8, 0],
  [1.2, 7.5, 0],
  [1.2, 7, -1],
  [2, 10, 0],
  [2, 12, 2],
  [3, 8, -2],
])('sheet of %f mm, hole of %f mm: off by %f', (sheetMm, holeMm, off) => {
  expect(holeOff(holeMm, sheetMm)).toEqual({ ok: true, value: off });
});

// Common practice, handbook, joining, section 3.4: with an insert 2 to 3 mm or 1.5 to 2 t, an open butt about 1 t.
test.each([
  ['butt with insert', 1.2, 2, 0],
  ['butt with insert', 1.2, 1.8, 0],
  ['butt with insert', 1.2, 1, 0.8],
  ['butt with insert', 1.2, 3, 0],
  ['butt with insert', 1.2, 3.5, 0.5],
  ['butt with insert', 2, 4, 0],
  ['open butt', 1.2, 1.2, 0],
  ['open butt', 1.2, 0.4, 0.2],
  ['open butt', 1, 2, 0.5],
] as const)('%s of %f mm, gap %f mm: off by %f', (form, sheetMm, gapMm, off) => {
  expect(rootGapOff(gapMm, sheetMm, form)).toBeCloseTo(off, 9);
});

test.each([
  [3, 0],
  [2, 0],
  [4, 0],
  [1.5, 0.5],
  [4.25, 0.25],
])('a stack of %f mm in a rivet for 2 to 4 mm: %f mm outside', (stackMm, outside) => {
  expect(outsideGrip(stackMm, 2, 4)).toEqual({ ok: true, value: outside });
});

describe('windows of settings', () => {
  const window: WeldWindow = {
    coat: 'zinc',
    overMm: 1,
    upToMm: 1.6,
    force: { min: 3, max: 4 },
    current: { min: 10, max: 14 },
    time: { min: 0.2, max: 0.3 },
  };

  test('one is for sheet above its first and up to its second thickness', () => {
    expect([1, 1.01, 1.6, 1.61].map((mm) => windowsFor([window], mm, 'zinc').length)).toEqual([0, 1, 1, 0]);
    expect(windowsFor([window], 1.2, 'bare')).toEqual([]);
  });

  test('a tenth beside its end is no other setting; what is left out is passed over', () => {
    const off = (settings: Parameters<typeof offWindow>[0]): readonly string[] =>
      offWindow(settings, [window]).map(({ what }) => what);
    expect(off({ forceKn: 2.71, currentKa: 15.3, timeS: 0.32 })).toEqual([]);
    expect(off({ forceKn: 2.69, currentKa: 15.5, timeS: 0.34 })).toEqual(['force', 'current', 'time']);
    expect(off({})).toEqual([]);
  });

  test('of several the one that fits best counts; of none nothing is off', () => {
    const soft = { ...window, force: { min: 1.6, max: 2 } };
    expect(offWindow({ forceKn: 1.8, currentKa: 12 }, [window, soft])).toEqual([]);
    expect(offWindow({ forceKn: 99 }, [])).toEqual([]);
  });
});

test('a length in inches is the same length: no margin comes of a change of units', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 4000 }), (hundredths) => {
      const mm = hundredths / 100;
      const again = (mm / 25.4) * 25.4;
      expect(margin(mm, again)).toBe(0);
      expect(rootGapOff((2 / 25.4) * 25.4, 1.4, 'butt with insert')).toBe(0);
      expect(leastPitch((3.2 / 25.4) * 25.4, 2).ok).toBe(true);
    }),
  );
  expect(margin(2, 1.999)).toBeCloseTo(0.001, 12);
});
