import { describe, expect, test } from 'vitest';
import { hardnessOfTensile, tensileOfHardness } from '../../src/heat/strength/hardness-to-tensile.ts';
import type { StrengthKind, StrengthLeft, StrengthRange } from '../../src/heat/strength/strength-answer.ts';
import { strengthLeft } from '../../src/heat/strength/strength-left.ts';
import { temperedRange } from '../../src/heat/strength/tempered-range.ts';
import { temperingParameterHours } from '../../src/heat/strength/tempering.ts';
import { weldSoftening } from '../../src/heat/strength/weld-softening.ts';
import { heldOut, scatterOf } from './tempering-holdout.ts';

const held = (celsius: number, seconds: number) => ({ seconds: [0, seconds], celsius: [celsius, celsius] });

function range(left: StrengthLeft): StrengthRange {
  if (!('leastPercent' in left)) throw new Error(JSON.stringify(left));
  return left;
}

// Published hardness of tempered 0.25 and 0.31 % C steel; see tempering-holdout.ts for what this proves and what not.
describe('measured tempering', () => {
  const points = heldOut();

  test('84 points, their parameters as published', () => {
    expect(points).toHaveLength(84);
    for (const { celsius, seconds, parameterHours } of points) {
      expect(Math.abs(temperingParameterHours(held(celsius, seconds)) - parameterHours)).toBeLessThan(0.002);
    }
  });

  test('curve: RMS no more than 25 HV in all and in each set, worst unsafe error no more than 33 HV', () => {
    const sets = new Set(points.map(({ set }) => set));
    expect(sets.size).toBe(2);
    for (const some of [points, ...[...sets].map((set) => points.filter((point) => point.set === set))]) {
      const scatter = scatterOf(some);
      expect(scatter.rmsHv).toBeLessThan(25);
      expect(Math.abs(scatter.meanHv)).toBeLessThan(10);
      expect(scatter.worstUnsafeHv).toBeLessThan(33);
    }
  });

  test('the least covers 95 % of what was tempered harder than paint baking', () => {
    const tempered = points.filter(({ parameterHours }) => parameterHours >= 8.652 && parameterHours <= 20);
    expect(tempered.length).toBeGreaterThan(60);
    expect(scatterOf(tempered).covered).toBeGreaterThanOrEqual(0.95);
    // Cooler points scatter from 458 to 498 HV without being tempered at all: nine in ten of everything.
    expect(scatterOf(points).covered).toBeGreaterThanOrEqual(0.9);
    // A bound that gives away everything would be no bound.
    expect(Math.max(...points.map(({ likelyHv, leastHv }) => likelyHv - leastHv))).toBeLessThanOrEqual(30);
  });
});

// Beside spot welds of 1500 MPa press-hardened sheet, 480 HV falls to 307 to 341 (hj.hwi.com.cn, 20210624002). The most
// is set by these very welds for holds below 10 s; the least is not.
test.each([650, 700, 719])('softened zone of a spot weld, 0.2 s at %d °C', (celsius) => {
  const at = temperedRange(held(celsius, 0.2));
  if (at.state !== 'tempered') throw new Error(at.state);
  expect(at.leastHv).toBeLessThan(307);
  if (celsius <= 700) expect(at.mostHv).toBeGreaterThan(341);
  expect(at.mostHv).toBeGreaterThan(307);
});

// Limits of common practice: 200 °C for 20 min passes, above 250 °C stops; 95 % is the least tensile strength left.
test('press-hardened: paint baking takes nothing, 200 °C for 20 min leaves 95 %, 250 °C for 60 s does not', () => {
  expect(strengthLeft('press-hardened', held(170, 1200))).toMatchObject({
    state: 'unchanged',
    leastPercent: 100,
    leastMpa: 1555,
  });
  const limit = range(strengthLeft('press-hardened', held(200, 1200)));
  expect(limit.leastPercent).toBeGreaterThanOrEqual(95);
  expect(limit.leastPercent).toBeLessThan(98);
  expect(range(strengthLeft('press-hardened', held(250, 60))).leastPercent).toBeLessThan(95);
});

/*
 * Loss on the curve itself by the writer of the handbook table, per cent; it must lie within the range, and the range
 * spans at least the 5 % of the conversion where a fifth or more of the hardness is gone.
 */
test.each([
  [300, 60, 8],
  [400, 60, 20],
  [500, 60, 35],
  [600, 60, 48],
  [400, 600, 26],
  [350, 10, 10],
])('%d °C for %d s: about %d %% lost', (celsius, seconds, loss) => {
  const left = range(strengthLeft('press-hardened', held(celsius, seconds)));
  expect(left.lossPercent).toBeGreaterThan(loss);
  expect(100 - left.mostPercent).toBeLessThan(loss + 1);
  expect(left.leastMpa).toBeCloseTo((1555 * left.leastPercent) / 100, 6);
  if (loss > 20) expect(left.mostPercent / left.leastPercent).toBeGreaterThan(1.1);
});

// ISO 18265 is good to 5 %: counted in full once a fifth of the hardness is gone, half of it at a tenth.
test('the doubt of hardness to tensile is in the ends', () => {
  const hot = temperedRange(held(600, 60));
  if (hot.state !== 'tempered') throw new Error(hot.state);
  const left = range(strengthLeft('press-hardened', held(600, 60)));
  expect(left.leastMpa).toBeCloseTo(0.95 * (tensileOfHardness(hot.leastHv) ?? 0), 6);
  expect(left.mostMpa).toBeCloseTo(1.05 * (tensileOfHardness(hot.mostHv) ?? 0), 6);
  const warm = temperedRange(held(260, 60));
  if (warm.state !== 'tempered') throw new Error(warm.state);
  const lost = 1 - warm.leastHv / 480;
  expect(lost).toBeGreaterThan(0.05);
  expect(lost).toBeLessThan(0.15);
  expect(range(strengthLeft('press-hardened', held(260, 60))).leastMpa).toBeCloseTo(
    (1 - lost / 4) * (tensileOfHardness(warm.leastHv) ?? 0),
    6,
  );
});

test('the stated strength before is what the megapascals are of', () => {
  const left = range(strengthLeft('martensitic', held(400, 60), { tensileMpa: 1290 }));
  expect(left.mostMpa).toBeCloseTo(12.9 * left.mostPercent, 6);
  expect(range(strengthLeft('martensitic', held(170, 1200), { hv: 400 })).leastMpa).toBe(1290);
});

describe('multi-phase steel', () => {
  test.each(['dual-phase', 'complex-phase', 'TRIP'] as const)('%s', (kind) => {
    expect(range(strengthLeft(kind, held(170, 1200))).state).toBe('unchanged');
    // Tempered at 200 °C, tensile strength did not fall in published trials.
    expect(range(strengthLeft(kind, held(200, 1200)))).toMatchObject({ mostPercent: 100 });
    expect(range(strengthLeft(kind, held(250, 1200), { tensileMpa: 780 })).leastMpa).toBeLessThan(741);
    expect(strengthLeft(kind, held(250.1, 1))).toMatchObject({ state: 'unknown' });
    expect(strengthLeft(kind, held(201, 1201))).toMatchObject({ state: 'unknown' });
    expect(strengthLeft(kind, held(730, 1))).toMatchObject({ state: 're-transformed' });
  });
});

// BH2 of EN 10268 and EN 10346 at least 35 and 30 MPa; printed gains 27 to 55 MPa; softest grade 180 MPa.
test('bake-hardened: the oven is harmless, a flame costs more than the least gain and no more than the greatest', () => {
  expect(range(strengthLeft('bake-hardened', held(170, 1200))).state).toBe('unchanged');
  expect(range(strengthLeft('bake-hardened', held(200, 1200))).state).toBe('unchanged');
  // Hotter than any oven, be it for a moment.
  expect(range(strengthLeft('bake-hardened', held(280, 0.5))).state).toBe('softened');
  for (const proofMpa of [180, 220, 300]) {
    const left = range(strengthLeft('bake-hardened', held(600, 60), { proofMpa }));
    expect(left.of).toBe('proof strength');
    expect(left.leastMpa).toBeCloseTo(proofMpa, 9);
    const gain = (left.mostMpa ?? 0) - (left.leastMpa ?? 0);
    expect(gain).toBeGreaterThanOrEqual(35);
    expect(gain).toBeLessThanOrEqual(55);
  }
  expect(range(strengthLeft('bake-hardened', held(600, 60))).leastPercent).toBeLessThan(
    range(strengthLeft('bake-hardened', held(600, 60), { proofMpa: 220 })).leastPercent,
  );
  expect(strengthLeft('bake-hardened', held(651, 1))).toMatchObject({ state: 'unknown' });
});

// 650 °C, 90 s, twice: a repairability study of the steel industry, from memory.
test.each(['mild', 'high-strength low-alloy'] as const)('%s steel', (kind) => {
  expect(range(strengthLeft(kind, held(650, 180))).state).toBe('unchanged');
  for (const [celsius, seconds] of [
    [650, 210],
    [655, 1],
    [600, 36000],
  ] as const) {
    expect(strengthLeft(kind, held(celsius, seconds)), `${celsius}`).toMatchObject({ state: 'unknown' });
  }
  expect(strengthLeft(kind, held(750, 1))).toMatchObject({ state: 're-transformed' });
});

// Thresholds of common practice; 6xxx-T6: a strong alloy fell below its minimum in 30 min at 218 °C, 2 h at 199 °C.
test.each<readonly [StrengthKind, number]>([
  ['aluminium 6xxx T6', 150],
  ['aluminium 6xxx T4', 150],
  ['aluminium 5xxx O', 200],
  ['aluminium 5xxx H', 150],
  ['aluminium 7xxx', 120],
])('%s up to %d °C', (kind, celsius) => {
  expect(strengthLeft(kind, held(celsius, 7200), { tensileMpa: 250 })).toMatchObject({
    state: 'unchanged',
    leastMpa: 250,
  });
  expect(strengthLeft(kind, held(celsius + 0.1, 1))).toMatchObject({ state: 'unknown' });
  expect(strengthLeft(kind, held(celsius, 100000))).toMatchObject({ state: 'unknown' });
  expect(strengthLeft(kind, held(218, 1800))).toMatchObject({ state: 'unknown' });
});

// Spot welds, hj.hwi.com.cn 20210624002; EN 1999-1-1 table 3.2b read in a public copy (6061-T6 0.67, T4 0.83; 5083-O 1).
describe('beside a weld', () => {
  test.each<readonly [StrengthKind, number | undefined, number, number]>([
    ['press-hardened', 1500, 64, 71],
    ['dual-phase', 980, 75, 83],
    ['dual-phase', 780, 83, 100],
    ['dual-phase', 1180, 64, 75],
    ['dual-phase', undefined, 64, 100],
    ['aluminium 6xxx T4', undefined, 83, 83],
    ['aluminium 5xxx O', undefined, 100, 100],
  ])('%s, %s MPa', (kind, tensileMpa, leastPercent, mostPercent) => {
    expect(weldSoftening(kind, tensileMpa)).toMatchObject({ ok: true, leastPercent, mostPercent });
  });

  test('480 HV leaves 307 to 341', () => {
    const left = weldSoftening('press-hardened');
    if (!left.ok) throw new Error(left.reason);
    expect(Math.abs(4.8 * left.leastPercent - 307)).toBeLessThan(1);
    expect(Math.abs(4.8 * left.mostPercent - 341)).toBeLessThan(1);
  });

  test('a reason where nothing was measured', () => {
    for (const kind of ['TRIP', 'bake-hardened', 'aluminium 7xxx'] as const)
      expect(weldSoftening(kind).ok).toBe(false);
    expect(weldSoftening('dual-phase', Number.NaN).ok).toBe(false);
  });
});

// ISO 18265 table A.1, the same rows read backwards.
test('hardness of a tensile strength is the table turned round', () => {
  for (const hv of [150, 200, 250, 300, 360, 480, 520]) {
    expect(hardnessOfTensile(tensileOfHardness(hv) ?? 0)).toBe(hv);
  }
  expect(hardnessOfTensile(1520)).toBe(470);
  for (const mpa of [Number.NaN, 479, 1701, -1]) expect(hardnessOfTensile(mpa)).toBeUndefined();
});
