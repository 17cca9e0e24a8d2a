import { describe, expect, test } from 'vitest';
import { adamsPeakCelsius, adamsWidthMm } from '../../src/heat/weld/adams.ts';
import type { AdamsCase, AdamsPass } from '../../src/heat/weld/adams.ts';
import { arcEnergy, assumedHeatInput, heatInput, powerHeatInput } from '../../src/heat/weld/arc.ts';
import type { HeatInput } from '../../src/heat/weld/arc.ts';

const joules = (answer: HeatInput): number => (answer.ok ? answer.joulePerMm : Number.NaN);

function width(weld: AdamsPass, celsius: number): number {
  const answer = adamsWidthMm({ ...weld, celsius });
  return answer.ok ? answer.widthMm : Number.NaN;
}

function peak(weld: AdamsCase): number {
  const answer = adamsPeakCelsius(weld);
  return answer.ok ? answer.peakCelsius : Number.NaN;
}

// Arc energy U·I/v (ISO/TR 18491, from memory) and efficiency, EN 1011-1:2009 table 1; worked by hand.
describe('heat input', () => {
  test.each([
    [17, 90, 8, 'MIG or MAG', 191.25, 153],
    [16, 60, 8, 'MIG brazing', 120, 96],
    [19, 140, 7, 'MIG or MAG', 380, 304],
    [11, 60, 2.5, 'TIG', 264, 158.4],
    [20, 200, 5, 'submerged arc', 800, 800],
  ] as const)('%d V %d A %d mm/s %s', (volts, amperes, speedMmPerSecond, process, energy, net) => {
    const pass = { volts, amperes, speedMmPerSecond };
    expect(joules(arcEnergy(pass))).toBeCloseTo(energy, 2);
    expect(joules(heatInput({ ...pass, process }))).toBeCloseTo(net, 1);
  });

  // Mean instantaneous power IP/v, ISO/TR 18491 (from memory): 20 V × 200 A as power, the same pass as above.
  test('by power: the same as by voltage and current; of a laser everything', () => {
    const pass = { watts: 4000, speedMmPerSecond: 5 };
    expect(joules(powerHeatInput({ ...pass, process: 'MIG or MAG' }))).toBeCloseTo(640, 9);
    expect(joules(powerHeatInput({ ...pass, process: 'TIG' }))).toBeCloseTo(480, 9);
    expect(joules(powerHeatInput({ ...pass, process: 'laser' }))).toBeCloseTo(800, 9);
    for (const watts of [0, -4000, Number.NaN, 4e6]) {
      expect(powerHeatInput({ ...pass, watts, process: 'laser' })).toMatchObject({ ok: false });
    }
  });

  test('a resistance spot has none, a laser none from volts and amperes', () => {
    const pass = { volts: 17, amperes: 90, speedMmPerSecond: 8 };
    expect(heatInput({ ...pass, process: 'resistance spot' })).toMatchObject({ ok: false });
    expect(heatInput({ ...pass, process: 'laser' })).toMatchObject({ ok: false });
    expect(powerHeatInput({ watts: 1500, speedMmPerSecond: 8, process: 'resistance spot' })).toMatchObject({
      ok: false,
      reason: expect.stringContaining('each mm'),
    });
  });

  test('what is assumed when the plan is silent lies above all of these on their sheets', () => {
    for (const [net, thicknessMm] of [
      [96, 0.8],
      [153, 1.2],
      [216, 2],
      [304, 3],
      [158.4, 1],
    ] as const) {
      expect(joules(assumedHeatInput(thicknessMm))).toBeGreaterThan(net);
    }
  });

  test.each([
    { volts: 0, amperes: 90, speedMmPerSecond: 8 },
    { volts: 17, amperes: Number.NaN, speedMmPerSecond: 8 },
    { volts: 17, amperes: 90, speedMmPerSecond: 0 },
    { volts: 17, amperes: 90, speedMmPerSecond: -8 },
    { volts: 17, amperes: 90, speedMmPerSecond: Infinity },
    { volts: 17, amperes: 9000, speedMmPerSecond: 8 },
  ])('no number from %o', (pass) => {
    expect(heatInput({ ...pass, process: 'MIG or MAG' })).toMatchObject({ ok: false });
  });
});

describe('peak beside a pass, Adams', () => {
  // Welding Handbook (American Welding Society), volume 1, heat flow chapter, worked example (from memory).
  const example = { heatInputJPerMm: 720, thicknessMm: 5, metal: 'steel', ambientCelsius: 25 } as const;

  test('worked example: 1184 °C at 1.5 mm, 976 at 3.0 mm, 730 °C reaches 5.9 mm', () => {
    expect(Math.abs(peak({ ...example, distanceMm: 1.5 }) - 1184)).toBeLessThan(1);
    expect(Math.abs(peak({ ...example, distanceMm: 3 }) - 976)).toBeLessThan(1);
    expect(peak({ ...example, distanceMm: 5.85 })).toBeGreaterThan(730);
    expect(peak({ ...example, distanceMm: 5.95 })).toBeLessThan(730);
    expect(Math.abs(width(example, 730) - 5.9)).toBeLessThan(0.05);
  });

  // The same formula with 1510 °C, 20 °C and 0.0044 J/(mm³·K), worked out in Python by the writer of the cases.
  test.each([
    [0.8, 96, [1046.5, 719.9, 477.4, 290.1], [4.96, 6.95, 12.94, 24.26]],
    [1.2, 153, [1065.6, 742.4, 496.8, 303.8], [5.27, 7.38, 13.75, 25.78]],
    [2, 216, [1012.2, 680.9, 444.7, 267.6], [4.46, 6.25, 11.64, 21.84]],
    [3, 304, [990.8, 657.6, 425.6, 254.7], [4.19, 5.87, 10.92, 20.49]],
  ])('sheet of %d mm with %d J/mm', (thicknessMm, heatInputJPerMm, peaks, widths) => {
    const weld = { thicknessMm, heatInputJPerMm, metal: 'steel' } as const;
    [2, 5, 10, 20].forEach((distanceMm, n) => {
      expect(peak({ ...weld, distanceMm }) / (peaks[n] ?? 0)).toBeCloseTo(1, 3);
    });
    [723, 600, 400, 250].forEach((celsius, n) => {
      expect(peak({ ...weld, distanceMm: widths[n] ?? 0 }) / celsius).toBeCloseTo(1, 2);
      expect(Math.abs(width(weld, celsius) / (widths[n] ?? 0) - 1)).toBeLessThan(0.005);
    });
  });

  // D. Rosenthal's moving line source on 1.2 mm, 1224 W, 8 mm/s: 712.6 and 369.5 °C at 10 and 20 mm from the centre
  // line. Fusion reaches 1510 °C, so the fused half-width is Q/d/(4.1327·ρc·1490) = 4.7 mm; Adams is an upper bound.
  test('is not below the moving line source', () => {
    const weld = { thicknessMm: 1.2, heatInputJPerMm: 153, metal: 'steel' } as const;
    const half = 153 / 1.2 / (4.1327 * 0.0044 * 1490);
    expect(peak({ ...weld, distanceMm: 10 - half })).toBeGreaterThan(712.6);
    expect(peak({ ...weld, distanceMm: 20 - half })).toBeGreaterThan(369.5);
    expect(peak({ ...weld, distanceMm: 20 - half })).toBeLessThan(1.02 * 369.5);
  });
});
