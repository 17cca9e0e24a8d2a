import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

/** Peak 10 mm beside a seam in 1.2 mm sheet. */
function peakBeside(joint: string, sheet = 'grade: HC340LA'): number {
  const derived = factsOf(`parts:
  - { id: h, ${sheet}, thickness: 1.2 mm, operations: [{ do: weld, free_end: runs on, joints: [{ form: open butt, ${joint} }], near: [{ item: sealer, distance: 10 mm, path: same sheet }] }] }`);
  return Number(derived.value('exposure.peak'));
}

const settings = 'voltage: 17 V, current: 90 A, travel_speed: 8 mm/s';

describe('the heat beside a seam', () => {
  // Handbook heat.md section 3, computed by the formula of Adams: 1.2 mm, 153 J/mm, 496.8 °C at 10 mm.
  test('is that of the formula for one pass of stated settings', () => {
    expect(peakBeside(`method: arc seam, settings: { ${settings} }`)).toBeCloseTo(496.8, 0);
  });

  // The mean power of a pulsed arc counts before volts and amperes: 0.8 · 1530 W / 8 mm/s is the same 153 J/mm.
  test('takes the mean power of the machine before voltage and current', () => {
    const pulsed =
      'method: arc seam, settings: { power: 1530 W, voltage: 10 V, current: 10 A, travel_speed: 8 mm/s }';
    expect(peakBeside(pulsed)).toBeCloseTo(496.8, 0);
  });

  // All of a laser's beam counts: 1224 W / 8 mm/s = 153 J/mm.
  test('of a laser is made from its power, and from nothing that only an arc has', () => {
    expect(peakBeside('method: laser seam, settings: { power: 1224 W, travel_speed: 8 mm/s }')).toBeCloseTo(
      496.8,
      0,
    );
    const silent = peakBeside('method: laser seam');
    expect(peakBeside(`method: laser seam, settings: { ${settings} }`)).toBe(silent);
    expect(silent).toBeGreaterThan(496.8);
  });

  test('rises with further passes, most where no interpass temperature is stated', () => {
    const passes = (more: string): number =>
      peakBeside(`method: arc seam, settings: { ${settings}, ${more} }`);
    const one = passes('passes: 1');
    const warm = passes('passes: 2, interpass: 100 °C');
    expect(warm).toBeGreaterThan(one);
    expect(passes('passes: 2')).toBeGreaterThan(warm);
    // Twice the rise of one: 20 + 2 · 476.8.
    expect(passes('passes: 2')).toBeCloseTo(973.6, 0);
  });

  test('of stitches is less only with their length, number and pause', () => {
    const stitched = (count: string, more: string): number =>
      peakBeside(`method: arc stitch, ${count}settings: { ${settings}, ${more} }`);
    const whole = stitched('', 'stitch: 20 mm');
    expect(whole).toBeCloseTo(496.8, 0);
    expect(stitched('count: 6, ', 'stitch: 20 mm')).toBe(whole);
    expect(stitched('count: 6, ', 'stitch: 20 mm, pause: 10 min')).toBeLessThan(whole);
  });

  // Less heat capacity for each cubic millimetre (EN 1993-1-2 annex C, from memory): the same seam heats it further.
  test('in stainless sheet is hotter than in steel', () => {
    const steel = peakBeside(`method: arc seam, settings: { ${settings} }`);
    expect(peakBeside(`method: arc seam, settings: { ${settings} }`, 'class: stainless')).toBeGreaterThan(
      steel,
    );
  });
});
