import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cell } from '../../src/heat/cell.ts';
import { conductLap } from '../../src/heat/sheet/conduct-lap.ts';
import type { LapTask } from '../../src/heat/sheet/conduct-lap.ts';
import { carbonSteel } from '../../src/heat/metal/carbon-steel.ts';
import { copper } from '../../src/heat/metal/copper.ts';
import { solveHeldLap } from '../../src/heat/sheet/held-lap.ts';
import type { HeldLap } from '../../src/heat/sheet/held-lap.ts';
import { solveHeldSheet, usualSteps } from '../../src/heat/sheet/held-sheet.ts';
import { lapGrid } from '../../src/heat/sheet/lap-grid.ts';
import type { SheetHistory } from '../../src/heat/sheet/sheet-answer.ts';

function peakOf(history: SheetHistory, distanceMm: number): number {
  const at = history.at(distanceMm);
  if (!at.ok) throw new Error(at.reason);
  return at.point.peakCelsius;
}

function solvedLap(lap: HeldLap): Extract<ReturnType<typeof solveHeldLap>, { readonly ok: true }> {
  const answer = solveHeldLap(lap);
  if (!answer.ok) throw new Error(answer.reason);
  return answer;
}

const flange: HeldLap = {
  sourceCelsius: 600,
  holdSeconds: 60,
  times: 1,
  heated: { metal: 'steel', thicknessMm: 1.2, freeEndMm: 35 },
  other: { metal: 'steel', thicknessMm: 1.5, fromMm: 20 },
};

describe('heat balance of two sheets', () => {
  const task: LapTask = {
    grid: lapGrid({ heatedEndM: 0.2, otherFromM: 0.02, otherEndM: 0.06 }, 5e-4, 1.06),
    heated: { properties: carbonSteel, thicknessM: 1.2e-3, cooledFaces: 2 },
    other: { properties: copper, thicknessM: 8e-3, cooledFaces: 1 },
    contact: 800,
    zoneM2: 0.02,
    convection: 8,
    emissivity: 0.6,
    ambientCelsius: 20,
    sourceCelsius: 900,
    holdSeconds: 40,
    endRiseKelvin: 1,
    coolSeconds: 1e6,
    steps: usualSteps(40),
  };
  const { heated, other } = conductLap(task);
  const { grid } = task;
  const loss = (celsius: number): number =>
    8 * (celsius - 20) + 0.6 * 5.670374e-8 * ((celsius + 273.15) ** 4 - 293.15 ** 4);
  const area = (i: number): number => cell(grid.heated.areasM2, i) + (i === 0 ? task.zoneM2 : 0);
  const storedAt = (n: number): number => {
    let sum = 0;
    heated.celsius[n]?.forEach((celsius, i) => {
      sum += 7850 * 1.2e-3 * area(i) * (carbonSteel.enthalpy(celsius) - carbonSteel.enthalpy(20));
      sum += 8930 * 8e-3 * cell(grid.other.areasM2, i) * 385 * (cell(other.celsius[n] ?? [], i) - 20);
    });
    return sum;
  };
  const lostIn = (n: number): number => {
    let watts = 0;
    heated.celsius[n]?.forEach((celsius, i) => {
      const lap = cell(grid.contactM2, i);
      watts += (2 * area(i) - lap) * loss(celsius);
      watts += Math.max(0, cell(grid.other.areasM2, i) - lap) * loss(cell(other.celsius[n] ?? [], i));
    });
    return watts * (cell(heated.seconds, n) - cell(heated.seconds, n - 1));
  };

  test('after release, what is lost is what went out through the faces, to 0.1 %', () => {
    const released = heated.seconds.findIndex((seconds) => seconds >= 40);
    const last = heated.seconds.length - 1;
    let lost = 0;
    for (let n = released + 1; n <= last; n++) lost += lostIn(n);
    expect(Math.abs(lost / (storedAt(released) - storedAt(last)) - 1)).toBeLessThan(1e-3);
  });

  test('while held, what the root gives is stored or lost, to 0.1 %', () => {
    const released = heated.seconds.findIndex((seconds) => seconds >= 40);
    let given = 0;
    let lost = 0;
    for (let n = 1; n <= released; n++) {
      const row = heated.celsius[n] ?? new Float64Array(0);
      const [root, next] = [cell(row, 0), cell(row, 1)];
      const k = (carbonSteel.conductivity(root) + carbonSteel.conductivity(next)) / 2;
      const dt = cell(heated.seconds, n) - cell(heated.seconds, n - 1);
      given += k * 1.2e-3 * cell(grid.heated.facesByGap, 0) * (root - next) * dt;
      lost += lostIn(n) - 2 * area(0) * loss(root) * dt;
    }
    const root = 7850 * 1.2e-3 * area(0) * (carbonSteel.enthalpy(900) - carbonSteel.enthalpy(20));
    expect(Math.abs((storedAt(released) - root + lost) / given - 1)).toBeLessThan(1e-3);
  });
});

test('two equal sheets in full contact from the root on are one sheet of twice the thickness', () => {
  const whole = { ...flange, heatedZoneMm: 0, contact: { kind: 'full' } } as const;
  const layers = solvedLap({
    ...whole,
    heated: { metal: 'steel', thicknessMm: 1.2 },
    other: { metal: 'steel', thicknessMm: 1.2, fromMm: 0 },
  });
  const one = solveHeldSheet({ ...flange, thicknessMm: 2.4, metal: 'steel', heatedZoneMm: 0 });
  if (!one.ok) throw new Error(one.reason);
  for (const mm of [10, 20, 40, 80]) {
    const expected = peakOf(one.history, mm) - 20;
    expect(Math.abs(peakOf(layers.heated, mm) - 20 - expected) / expected).toBeLessThan(0.005);
    expect(Math.abs(peakOf(layers.other, mm) - 20 - expected) / expected).toBeLessThan(0.005);
  }
});

describe('what contact is worst', () => {
  test('nothing passes without contact, and spots lie between nothing and full contact', () => {
    const at40 = (contact: HeldLap['contact'] & object): number =>
      peakOf(solvedLap({ ...flange, contact }).other, 40);
    expect(at40({ kind: 'stated', wattPerM2K: 0 })).toBeCloseTo(20, 6);
    const spots = { kind: 'spots', diameterMm: 5, betweenWattPerM2K: 0 } as const;
    const wide = at40({ ...spots, pitchMm: 60 });
    const close = at40({ ...spots, pitchMm: 30 });
    expect(wide).toBeGreaterThan(60);
    expect(close).toBeGreaterThan(wide);
    expect(at40({ kind: 'spots', diameterMm: 5, pitchMm: 30 })).toBeGreaterThan(close);
    expect(at40({ kind: 'full' })).toBeGreaterThan(at40({ kind: 'spots', diameterMm: 5, pitchMm: 30 }));
  });

  // By hand: k·A/d = 53.3·19.6e-6/1.35e-3 = 0.775 W/K a spot, over 30 mm by 15 mm: 1723 W/m²K.
  test('5 mm spots every 30 mm on a flange of 15 mm are worth 1723 W/m²K', () => {
    const spots = solvedLap({
      ...flange,
      contact: { kind: 'spots', diameterMm: 5, pitchMm: 30, betweenWattPerM2K: 0 },
    });
    const stated = solvedLap({ ...flange, contact: { kind: 'stated', wattPerM2K: 1723 } });
    expect(peakOf(spots.other, 40)).toBeCloseTo(peakOf(stated.other, 40), 1);
  });

  const laps = fc.record({
    metal: fc.constantFrom('steel', 'mild steel', 'aluminium', 'stainless'),
    second: fc.constantFrom('steel', 'mild steel', 'aluminium', 'stainless'),
    sourceCelsius: fc.double({ min: 100, max: 590, noNaN: true }),
    holdSeconds: fc.double({ min: 0.5, max: 600, noNaN: true }),
    cooledFaces: fc.constantFrom(1, 2),
    thicknessMm: fc.double({ min: 0.6, max: 3, noNaN: true }),
    otherMm: fc.double({ min: 0.6, max: 3, noNaN: true }),
    fromMm: fc.double({ min: 0, max: 60, noNaN: true }),
    lapMm: fc.double({ min: 8, max: 50, noNaN: true }),
    kind: fc.constantFrom('flange', 'patch', 'layer'),
  });
  type Drawn = typeof laps extends fc.Arbitrary<infer T> ? T : never;
  const lapOf = (d: Drawn): HeldLap => ({
    sourceCelsius: d.sourceCelsius,
    holdSeconds: d.holdSeconds,
    times: 1,
    cooledFaces: d.cooledFaces,
    heated: {
      metal: d.metal,
      thicknessMm: d.thicknessMm,
      ...(d.kind === 'flange' ? { freeEndMm: d.fromMm + d.lapMm } : {}),
    },
    other: {
      metal: d.second,
      thicknessMm: d.otherMm,
      fromMm: d.fromMm,
      ...(d.kind === 'patch' ? { freeEndMm: d.fromMm + d.lapMm } : {}),
    },
  });
  const share = fc.double({ min: 0, max: 1, noNaN: true });

  test('unstated contact is never cooler than any stated, on either sheet', () => {
    fc.assert(
      fc.property(laps, share, fc.double({ min: 1, max: 5, noNaN: true }), (drawn, along, power) => {
        const lap = lapOf(drawn);
        const unstated = solvedLap(lap);
        const stated = solvedLap({ ...lap, contact: { kind: 'stated', wattPerM2K: 10 ** power } });
        const end = drawn.fromMm + drawn.lapMm;
        const onOther = drawn.fromMm + along * (drawn.lapMm + (drawn.kind === 'patch' ? 0 : 60));
        const onHeated = along * (end + (drawn.kind === 'flange' ? 0 : 60));
        expect(peakOf(unstated.other, onOther)).toBeGreaterThan(peakOf(stated.other, onOther) - 0.1);
        expect(peakOf(unstated.heated, onHeated)).toBeGreaterThan(peakOf(stated.heated, onHeated) - 0.1);
      }),
      { numRuns: 20, seed: 20246 },
    );
  }, 30_000);

  test('hotter, longer or nearer is never cooler', () => {
    fc.assert(
      fc.property(laps, share, fc.double({ min: 1, max: 1.5, noNaN: true }), (drawn, along, by) => {
        const lap = lapOf(drawn);
        const place = drawn.fromMm + along * drawn.lapMm;
        const { other } = solvedLap(lap);
        const before = peakOf(other, place);
        fc.pre(before > 21.2);
        const hotter = solvedLap({ ...lap, sourceCelsius: Math.min(600, lap.sourceCelsius * by) });
        const longer = solvedLap({ ...lap, holdSeconds: lap.holdSeconds * by });
        expect(peakOf(hotter.other, place)).toBeGreaterThan(before - 0.1);
        expect(peakOf(longer.other, place)).toBeGreaterThan(before - 0.1);
        const nearer = drawn.fromMm + (along / by) * drawn.lapMm;
        expect(peakOf(other, nearer)).toBeGreaterThan(before - 0.1);
      }),
      { numRuns: 12, seed: 20247 },
    );
  }, 30_000);
});

describe('no number where none can be had', () => {
  test.each<readonly [string, Partial<HeldLap>]>([
    ['source', { sourceCelsius: 1300 }],
    ['hold', { holdSeconds: Number.NaN }],
    ['thickness', { heated: { metal: 'steel', thicknessMm: 12 } }],
    ['thickness', { other: { metal: 'steel', thicknessMm: Number.NaN, fromMm: 20 } }],
    ['lap', { other: { metal: 'steel', thicknessMm: 1, fromMm: 33 } }],
    ['lap', { other: { metal: 'steel', thicknessMm: 1, fromMm: 50 } }],
    ['second sheet', { other: { metal: 'steel', thicknessMm: 1, fromMm: -1 } }],
    ['second sheet', { other: { metal: 'steel', thicknessMm: 1, fromMm: Number.NaN } }],
    ['contact', { contact: { kind: 'stated', wattPerM2K: -1 } }],
    ['contact', { contact: { kind: 'stated', wattPerM2K: Number.NaN } }],
    ['diameter', { contact: { kind: 'spots', diameterMm: 0, pitchMm: 30 } }],
    ['pitch', { contact: { kind: 'spots', diameterMm: 5, pitchMm: 4 } }],
    ['aluminium', { other: { metal: 'aluminium', thicknessMm: 1, fromMm: 20 }, sourceCelsius: 700 }],
  ])('%s %o', (word, changed) => {
    const answer = solveHeldLap({ ...flange, ...changed });
    if (answer.ok) throw new Error('answered');
    expect(answer.reason).toContain(word);
  });

  test('places where a sheet has no metal', () => {
    const { heated, other } = solvedLap(flange);
    expect(heated.at(36)).toMatchObject({ ok: false });
    expect(other.at(19)).toMatchObject({ ok: false });
    expect(other.at(20)).toMatchObject({ ok: true });
    expect(other.at(Number.NaN)).toMatchObject({ ok: false });
  });
});

describe('a copper bar as a stated measure', () => {
  const bar = { fromMm: 20, toMm: 60, thicknessMm: 10, contactWattPerM2K: 500 } as const;
  const at = (
    distance: number,
    copperBar?: typeof bar | (Omit<typeof bar, 'thicknessMm'> & { thicknessMm: number }),
  ): number => {
    const answer = solveHeldSheet({
      ...{ sourceCelsius: 600, holdSeconds: 60, times: 1, thicknessMm: 1.2, metal: 'steel' },
      ...(copperBar ? { copperBar } : {}),
    });
    if (!answer.ok) throw new Error(answer.reason);
    return peakOf(answer.history, distance);
  };

  test('takes heat on its way, and more of it the thicker it is', () => {
    expect(at(80, bar)).toBeLessThan(at(80) - 20);
    expect(at(80, { ...bar, thicknessMm: 3 })).toBeGreaterThan(at(80, bar));
    expect(at(80, bar)).toBeGreaterThan(20);
  });

  test.each([
    ['contact', { contactWattPerM2K: 10 }],
    ['contact', { contactWattPerM2K: 1e5 }],
    ['thickness of the copper bar', { thicknessMm: Number.NaN }],
    ['10 mm', { toMm: 25 }],
    ['beyond the free end', { toMm: 120 }],
  ])('no number from %s %o', (word, changed) => {
    const answer = solveHeldSheet({
      ...{ sourceCelsius: 600, holdSeconds: 60, times: 1, thicknessMm: 1.2, metal: 'steel', freeEndMm: 100 },
      copperBar: { ...bar, ...changed },
    });
    if (answer.ok) throw new Error('answered');
    expect(answer.reason).toContain(word);
  });
});
