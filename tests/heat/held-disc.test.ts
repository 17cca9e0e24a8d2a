import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solveHeldSheet } from '../../src/heat/sheet/held-sheet.ts';
import type { HeldSheet } from '../../src/heat/sheet/held-sheet.ts';
import type { PointHistory } from '../../src/heat/point-history.ts';

const disc: HeldSheet = {
  sourceCelsius: 600,
  holdSeconds: 60,
  times: 1,
  thicknessMm: 1.2,
  metal: 'steel',
  shape: 'disc',
  radiusMm: 15,
};

function pointAt(sheet: HeldSheet, distanceMm: number): PointHistory {
  const answer = solveHeldSheet(sheet);
  if (!answer.ok) throw new Error(answer.reason);
  const at = answer.history.at(distanceMm);
  if (!at.ok) throw new Error(at.reason);
  return at.point;
}
const peakAt = (sheet: HeldSheet, distanceMm: number): number => pointAt(sheet, distanceMm).peakCelsius;

describe('no disc without its radius, and nothing stated is ignored', () => {
  test.each<readonly [string, Partial<HeldSheet>]>([
    ['radius', { radiusMm: Number.NaN }],
    ['radius', { radiusMm: -15 }],
    ['radius', { radiusMm: 2.9 }],
    ['radius', { radiusMm: 151 }],
    ['zone', { heatedZoneMm: 40 }],
    ['strip', { shape: 'strip' }],
    ['round it', { wetCloth: { fromMm: 20, toMm: 60, waterKgPerM2: 1 } }],
  ])('%s %o', (word, changed) => {
    const answer = solveHeldSheet({ ...disc, ...changed });
    if (answer.ok) throw new Error('answered');
    expect(answer.reason).toContain(word);
  });

  test('absent', () => {
    const { radiusMm: _, ...bare } = disc;
    expect(solveHeldSheet(bare)).toMatchObject({ ok: false, reason: expect.stringContaining('radius') });
  });

  test('the ends of the range are answered', () => {
    for (const radiusMm of [3, 150]) expect(peakAt({ ...disc, radiusMm }, 1)).toBeGreaterThan(20);
  });
});

test('the source and a closed plate: no place hotter than the source, a small plate one lump', () => {
  expect(peakAt(disc, 0)).toBe(600);
  const plate = { ...disc, freeEndMm: 5 };
  expect(peakAt(plate, 5)).toBeGreaterThan(500);
  expect(peakAt(plate, 5)).toBeLessThanOrEqual(600);
});

test('a very wide disc is a strip whose heated zone is as long as the disc is wide', () => {
  const wide = peakAt({ ...disc, radiusMm: 150 }, 20);
  const { radiusMm: _, ...rest } = disc;
  const strip = peakAt({ ...rest, shape: 'strip', heatedZoneMm: 150 }, 20);
  // A ring of 150 mm still widens by an eighth over 20 mm.
  expect(wide).toBeLessThan(strip);
  expect(wide).toBeGreaterThan(20 + 0.85 * (strip - 20));
});

describe('more heat never gives a cooler neighbour', () => {
  // Different time steps of two holds show as up to this much.
  const noise = 0.05;
  const discs = fc.record({
    metal: fc.constantFrom('steel', 'mild steel', 'aluminium', 'stainless'),
    shape: fc.constant('disc'),
    radiusMm: fc.double({ min: 3, max: 75, noNaN: true }),
    sourceCelsius: fc.double({ min: 60, max: 590, noNaN: true }),
    holdSeconds: fc.double({ min: 0.5, max: 1700, noNaN: true }),
    times: fc.integer({ min: 1, max: 2 }),
    thicknessMm: fc.double({ min: 0.4, max: 3.9, noNaN: true }),
    freeEndMm: fc.double({ min: 5, max: 3000, noNaN: true }),
    emissivity: fc.double({ min: 0, max: 1, noNaN: true }),
    convection: fc.double({ min: 3, max: 50, noNaN: true }),
    cooledFaces: fc.constantFrom(1, 2),
  });
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const more = fc.double({ min: 1, max: 2, noNaN: true });
  type Disc = HeldSheet & {
    readonly freeEndMm: number;
    readonly emissivity: number;
    readonly radiusMm: number;
  };
  const never = (change: (sheet: Disc, by: number) => HeldSheet, slack = 0): void => {
    fc.assert(
      fc.property(discs, share, more, (sheet, along, by) => {
        const distance = along * Math.min(sheet.freeEndMm, 300);
        const before = peakAt(sheet, distance);
        // A place still warming at the end is given the last kelvin whole; below it there is nothing to compare.
        fc.pre(before > 21.1);
        expect(peakAt(change(sheet, by), distance)).toBeGreaterThanOrEqual(
          before - noise - slack * (before - 20),
        );
      }),
      { numRuns: 50, seed: 20243 },
    );
  };

  test('hotter', () => {
    never((s, by) => ({
      ...s,
      sourceCelsius: Math.min(s.sourceCelsius * by, s.metal === 'aluminium' ? 600 : 1200),
    }));
  });
  test('longer', () => {
    never((s, by) => ({ ...s, holdSeconds: Math.min(s.holdSeconds * by, 3600 / s.times) }));
  });
  test('more often', () => {
    never((s) => ({
      ...s,
      holdSeconds: s.holdSeconds,
      times: s.holdSeconds * 3 > 3600 ? s.times : s.times + 1,
    }));
  });
  test('thicker', () => {
    never((s, by) => ({ ...s, thicknessMm: Math.min(4, s.thicknessMm * by) }));
  });
  test('wider disc', () => {
    never((s, by) => ({ ...s, radiusMm: s.radiusMm * by }), 0.005);
  });
  test('one cooled face', () => {
    never((s) => ({ ...s, cooledFaces: 1 }));
  });
  test('a strip with a zone of the same width in place of the disc', () => {
    never(({ radiusMm, ...s }) => ({ ...s, shape: 'strip', heatedZoneMm: 2 * radiusMm }));
  });
  test('nearer', () => {
    fc.assert(
      fc.property(discs, share, share, (sheet, one, other) => {
        const reach = Math.min(sheet.freeEndMm, 1000);
        const answer = solveHeldSheet(sheet);
        if (!answer.ok) throw new Error(answer.reason);
        const near = answer.history.at(Math.min(one, other) * reach);
        const far = answer.history.at(Math.max(one, other) * reach);
        if (!near.ok || !far.ok) throw new Error('no answer');
        expect(near.point.peakCelsius).toBeGreaterThanOrEqual(far.point.peakCelsius);
      }),
      { numRuns: 50, seed: 20244 },
    );
  });
});

test('equal sheets written in another order, or asked far end first, answer alike', () => {
  const turned: HeldSheet = {
    radiusMm: 15,
    shape: 'disc',
    metal: 'steel',
    thicknessMm: 1.2,
    times: 1,
    holdSeconds: 60,
    sourceCelsius: 600,
  };
  const one = solveHeldSheet(disc);
  const other = solveHeldSheet(turned);
  if (!one.ok || !other.ok) throw new Error('no answer');
  const near = one.history.at(20);
  const far = one.history.at(80);
  const farFirst = other.history.at(80);
  const nearLast = other.history.at(20);
  if (!near.ok || !far.ok || !farFirst.ok || !nearLast.ok) throw new Error('no answer');
  expect(nearLast.point.celsius).toEqual(near.point.celsius);
  expect(farFirst.point.celsius).toEqual(far.point.celsius);
});
