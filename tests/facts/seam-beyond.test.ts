import { describe, expect, test } from 'vitest';
import type { Fact } from '../../src/facts/fact.ts';
import { factsOf } from './facts-of.ts';

interface Case {
  readonly neighbour?: string;
  readonly distanceMm?: number;
  readonly end?: string;
  readonly path?: string;
  readonly near?: string;
  readonly joint?: string;
}

/** A seam of 144 J/mm in 1.2 mm sheet, with a joined part beside it that is none of its own sheets. */
function beside(given: Case): (name: string) => Fact {
  const { neighbour = 'grade: 22MnB5, thickness: 0.8 mm', distanceMm = 30, end = 'runs on' } = given;
  const { path = 'joined', near = 'part: n', joint = 'heat_input: 0.144 kJ/mm' } = given;
  const derived = factsOf(`parts:
  - id: h
    grade: HC340LA
    thickness: 1.2 mm
    operations:
      - do: weld
        free_end: ${end}
        joints: [{ method: arc seam, form: open butt, settings: { ${joint} } }]
        near: [{ ${near}, distance: ${String(distanceMm)} mm, path: ${path} }]
  - { id: n, ${neighbour} }`);
  const sheet = derived.all('exposure').at(-1);
  return (name) => sheet?.facts[name] ?? derived.fact(name);
}

function peakOf(given: Case): number {
  const peak = beside(given)('exposure.peak');
  if (!peak.known || typeof peak.value !== 'number') throw new Error('the peak is not known');
  return peak.value;
}

/** Adams, Welding Handbook vol. 1: steel of 0.0044 J/(mm³·K) that melts at 1510 °C; 144 J/mm in 1.2 mm are 120 J/mm². */
function adamsRise(distanceMm: number): number {
  return 1 / ((Math.sqrt(2 * Math.PI * Math.E) * 0.0044 * distanceMm) / 120 + 1 / 1490);
}

describe('a seam beside a joined part that carries less heat', () => {
  // A plane wave at the border of two bodies (Carslaw and Jaeger, chapter 12): 2·Z1/(Z1 + Z2) of what arrives goes over; of one metal
  // Z is as the thickness: 2·1.2/(1.2 + 0.8) = 1.2, and 2·1.2/(1.2 + 0.4) = 1.5.
  test.each([
    ['0.8 mm', 1.2],
    ['0.4 mm', 1.5],
    ['1.2 mm', 1],
    ['2.0 mm', 1],
  ])('of %s is as much hotter as a wave rises at the border', (thickness, factor) => {
    const peak = peakOf({ neighbour: `grade: HC340LA, thickness: ${thickness}`, distanceMm: 30 });
    expect(peak - 20).toBeCloseTo(factor * adamsRise(30), 6);
  });

  // Hardened steel stands 200 °C (handbook heat.md section 8). 180 K are left by 1.2 times Adams at 37.7 mm, by Adams at 33.6 mm.
  test('is not cleared where only the heated sheet going on would keep the limit', () => {
    const over = (neighbour: string, distanceMm: number): unknown => {
      const fact = beside({ neighbour, distanceMm })('exposure.over_limit');
      return fact.known && typeof fact.value === 'number' && fact.value > 0;
    };
    const at = (1 / 180) * 120;
    const plainMm = (at - 120 / 1490) / (Math.sqrt(2 * Math.PI * Math.E) * 0.0044);
    const thinMm = (at * 1.2 - 120 / 1490) / (Math.sqrt(2 * Math.PI * Math.E) * 0.0044);
    expect(over('grade: 22MnB5, thickness: 1.2 mm', plainMm + 0.1)).toBe(false);
    expect(over('grade: 22MnB5, thickness: 0.8 mm', plainMm + 0.1)).toBe(true);
    expect(over('grade: 22MnB5, thickness: 0.8 mm', thinMm - 0.1)).toBe(true);
    expect(over('grade: 22MnB5, thickness: 0.8 mm', thinMm + 0.1)).toBe(false);
    const clear = beside({})('exposure.stay_clear');
    expect(clear.known && clear.value).toBe(Math.ceil(thinMm));
  });

  test('of a thickness that is not stated is asked about between what is sure and what may be', () => {
    const neighbour = 'grade: 22MnB5';
    // 0.5 mm: 2·1.2/1.7 = 1.412 times.
    const far = beside({ neighbour, distanceMm: 60 })('exposure.peak');
    expect(far).toMatchObject({
      known: true,
      from: 'assumed',
      note: expect.stringContaining('0.5 mm is taken'),
    });
    expect(far.known && far.value).toBeCloseTo(20 + (2.4 / 1.7) * adamsRise(60), 6);
    expect(beside({ neighbour, distanceMm: 40 })('exposure.over_limit')).toMatchObject({
      known: false,
      reason: 'The thickness of n is not stated.',
    });
    const sure = beside({ neighbour, distanceMm: 20 })('exposure.peak');
    expect(sure.known && sure.value).toBeCloseTo(20 + adamsRise(20), 6);
  });

  test('into unknown metal and into composite nothing is taken to run on', () => {
    const unknown = beside({
      neighbour: 'thickness: 2.0 mm',
      near: 'item: structural adhesive, part: n',
      distanceMm: 130,
    });
    expect(unknown('exposure.over_limit')).toMatchObject({
      known: false,
      reason: 'What n is made of is not known.',
    });
    const composite = beside({ neighbour: 'class: composite, thickness: 2.0 mm', distanceMm: 30 });
    const peak = composite('exposure.peak');
    expect(peak.known && peak.value).toBeCloseTo(20 + 2 * adamsRise(30), 6);
  });

  // Effusivity of austenitic steel is less than that of plain steel: √(k·ρc) about 8,000 to 13,900 W·√s/(m²·K) (EN 1993-1-2, annex C).
  test('of stainless sheet as thick as the heated one is hotter, of aluminium it is not', () => {
    const plain = 20 + adamsRise(30);
    expect(peakOf({ neighbour: 'class: stainless, thickness: 1.2 mm' })).toBeGreaterThan(plain * 1.1);
    expect(peakOf({ neighbour: 'grade: EN AW-6016-T4, thickness: 1.2 mm' })).toBeCloseTo(plain, 6);
  });

  test('is never hotter than where the sheet ends', () => {
    const ended = peakOf({ end: '30 mm' });
    expect(ended - 20).toBeCloseTo(2 * adamsRise(30), 6);
    for (const end of ['31 mm', '40 mm', '200 mm', 'runs on'])
      expect([end, peakOf({ end }) <= ended]).toEqual([end, true]);
    // The mirror image stands at its full height, and the border adds a fifth to both.
    expect(peakOf({ end: '60 mm' }) - 20).toBeCloseTo(1.2 * (adamsRise(30) + adamsRise(90)), 6);
  });

  test('counts for what sits at that part, and for one sheet that changes its thickness', () => {
    const hot = 20 + 1.2 * adamsRise(30);
    expect(peakOf({ near: 'item: sealer, part: n' })).toBeCloseTo(hot, 6);
    expect(peakOf({ path: 'same sheet' })).toBeCloseTo(hot, 6);
    expect(peakOf({ path: 'same sheet', neighbour: 'grade: 22MnB5' })).toBeCloseTo(20 + adamsRise(30), 6);
  });

  test('counts for the rise of a pass on warm sheet, not for its warmth', () => {
    const warm = (thickness: string): number =>
      peakOf({
        neighbour: `grade: HC340LA, thickness: ${thickness}`,
        joint: 'heat_input: 0.144 kJ/mm, passes: 2, interpass: 80 °C',
      });
    // The warm sheet is warm on both sides of the border; only the rise of the pass is thrown back.
    expect(warm('0.8 mm') - warm('1.2 mm')).toBeGreaterThan(0);
    expect((warm('0.8 mm') - 80) / (warm('1.2 mm') - 80)).toBeCloseTo(1.2, 6);
  });
});
