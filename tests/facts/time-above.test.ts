import { describe, expect, test } from 'vitest';
import { solveHeldSheet } from '../../src/heat/sheet/held-sheet.ts';
import type { HeldSheet } from '../../src/heat/sheet/held-sheet.ts';
import { factsOf } from './facts-of.ts';

const strip: HeldSheet = { sourceCelsius: 620, holdSeconds: 5, times: 1, thicknessMm: 1.2, metal: 'steel' };

function secondsOf(sheet: HeldSheet, celsius: number): number {
  const solved = solveHeldSheet(sheet);
  const place = solved.ok ? solved.history.at(10) : solved;
  if (!place.ok) throw new Error(place.reason);
  return place.point.secondsAbove(celsius);
}

describe('the time above a temperature of several heatings', () => {
  // Heatings far apart are each one alone, so ten of them are ten times one.
  test('is never less than that of as many heatings, each on cold sheet', () => {
    for (const [holdSeconds, times] of [
      [5, 10],
      [30, 2],
      [60, 5],
    ] as const)
      for (const celsius of [60, 100, 150, 200, 250]) {
        const apart = times * secondsOf({ ...strip, holdSeconds }, celsius);
        const told = secondsOf({ ...strip, holdSeconds, times }, celsius);
        expect([holdSeconds, times, celsius, told >= apart]).toEqual([holdSeconds, times, celsius, true]);
      }
  });

  test('is never less than that of one hold of the whole time', () => {
    for (const celsius of [60, 120, 200])
      expect(secondsOf({ ...strip, times: 10 }, celsius)).toBeGreaterThanOrEqual(
        secondsOf({ ...strip, holdSeconds: 50 }, celsius),
      );
  });

  test('one heating is as long as ever', () => {
    const both = [secondsOf({ ...strip, holdSeconds: 50 }, 120), secondsOf({ ...strip, times: 10 }, 120)];
    expect(both[1]).toBeCloseTo(10 * Number(both[0]), 6);
  });
});

const adhesive = 'item: structural adhesive, part: n';
const heat = (hold: string, distance: string, startsBelow = ''): string =>
  `{ do: heat, source: induction, temperature: 600 °C, hold: ${hold}, times: 1, measured_by: { means: contact probe }, free_end: runs on, ${startsBelow} near: [{ ${adhesive}, distance: ${distance}, path: same sheet }] }`;
const seam = (settings: string): string =>
  `{ do: weld, starts_below: 20 °C, free_end: runs on, joints: [{ method: arc seam, form: open butt, settings: { heat_input: 0.2 kJ/mm${settings} } }], near: [{ ${adhesive}, distance: 30 mm, path: same sheet }] }`;

/** Seconds that the adhesive at a pillar is above its 80 °C, as the first of the operations tells it. */
function time(...operations: readonly string[]): number {
  const derived = factsOf(`parts:
  - { id: h, grade: HC340LA, thickness: 1.2 mm, operations: [${operations.join(', ')}] }
  - { id: n, grade: HC340LA, thickness: 1.4 mm }`);
  const sheets = derived.all('exposure').filter(({ facts }) => {
    const victim = facts['exposure.victim'];
    return victim?.known === true && victim.value === 'structural adhesive';
  });
  const fact = sheets[0]?.facts['exposure.time_above_limit'];
  if (fact?.known !== true || typeof fact.value !== 'number') throw new Error('the time is not known');
  return fact.value;
}

describe('the time above the limit beside several heats and seams', () => {
  const cold = 'starts_below: 20 °C,';
  test('adds up over operations that reach one neighbour', () => {
    const [one, other] = [heat('60 s', '40 mm', cold), heat('20 s', '30 mm', cold)];
    expect(time(one, other)).toBeCloseTo(time(one) + time(other), 6);
    expect(time(other, one)).toBeCloseTo(time(one, other), 6);
  });

  test('adds up between a seam and a heat, and over the passes of a seam', () => {
    const [one, other] = [heat('60 s', '40 mm', cold), seam('')];
    // Of a seam no history is computed: 300 s are taken for each pass (method note of the heat room).
    expect(time(other)).toBe(300);
    expect(time(seam(', passes: 3, interpass: 60 °C'))).toBe(900);
    expect(time(other, one)).toBeCloseTo(time(one) + 300, 6);
    expect(time(one, other)).toBeCloseTo(time(one) + 300, 6);
  });

  // Two rises that meet: the place is above 80 °C whenever one alone is above 50 °C (20 + 60/2) and the other as warm.
  test('without a pause is at least that of the rises on top of each other', () => {
    const derived = (more: string): number => time(heat('60 s', '60 mm'), more);
    const apart = time(heat('60 s', '60 mm', cold), heat('60 s', '60 mm', cold));
    expect(derived(heat('60 s', '60 mm', 'at: elsewhere,'))).toBeGreaterThan(apart);
  });

  test('on sheet not quite cold is longer', () => {
    const warm = heat('60 s', '40 mm', 'starts_below: 50 °C,');
    const early = heat('20 s', '40 mm', cold);
    expect(time(warm, early)).toBeGreaterThan(time(heat('60 s', '40 mm', cold), early));
  });
});
