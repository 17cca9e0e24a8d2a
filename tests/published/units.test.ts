import { describe, expect, it } from 'vitest';
import type { Dimension } from '../../src/quantity/dimension.ts';
import { readQuantity } from '../../src/quantity/read-quantity.ts';

function valueOf(text: string, dimension: Dimension): number {
  const reading = readQuantity(text, dimension);
  return reading.ok ? reading.value : Number.NaN;
}

// NIST Special Publication 811 (2008), appendix B.8: factor times unit gives the SI unit. Restated from memory, as printed
// there to seven figures; those marked exact are exact by definition. Each row states the same in canonical units.
describe('conversion factors of NIST SP 811, appendix B.8', () => {
  const sevenFigures: readonly (readonly [string, Dimension, number])[] = [
    ['1 psi', 'stress', 6.894757e-3], // 6.894757 E+03 Pa
    ['1 ksi', 'stress', 6.894757], // 6.894757 E+06 Pa
    ['1 lbf', 'force', 4.448222e-3], // 4.448222 E+00 N
    ['1 lb', 'mass', 0.4535924], // 4.535924 E-01 kg
    ['1 °F', 'temperature difference', 0.5555556], // 5.555556 E-01 K
  ];
  it.each(sevenFigures)('%s as %s is %d', (text, dimension, expected) => {
    expect(Math.abs(valueOf(text, dimension) / expected - 1)).toBeLessThan(1e-7);
  });

  const exact: readonly (readonly [string, Dimension, number])[] = [
    ['1 in', 'length', 25.4], // 2.54 E-02 m, exact
    ['1 kgf', 'force', 9.80665e-3], // 9.80665 E+00 N, exact
    ['1 day', 'time', 86_400],
    ['1 h', 'time', 3600],
    ['1 min', 'time', 60],
    ['1 kWh', 'energy', 3.6e6], // 3.6 E+06 J, exact
    ['1 lb', 'mass', 0.45359237], // exact, footnote to the pound
    ['1 lbf', 'force', 4.4482216152605e-3], // exact: pound times standard gravity
  ];
  it.each(exact)('%s as %s is %d, exactly', (text, dimension, expected) => {
    expect(Math.abs(valueOf(text, dimension) / expected - 1)).toBeLessThan(1e-14);
  });

  it('derives pounds per square inch from pound-force and inch: 6894.757293168 Pa', () => {
    expect(Math.abs(valueOf('1 psi', 'stress') * 1e6 - 6894.757293168)).toBeLessThan(1e-9);
  });

  // SP 811, B.8, formulas: t/°C = (t/°F - 32)/1.8 and t/°C = T/K - 273.15.
  it.each([
    ['32 °F', 0],
    ['212 °F', 100],
    ['-40 °F', -40],
    ['1112 °F', 600],
    ['1202 °F', 650],
    ['662 °F', 350],
    ['0 K', -273.15],
    ['-459.67 °F', -273.15],
    ['273.15 K', 0],
  ])('%s is %d °C', (text, celsius) => {
    expect(valueOf(text, 'temperature')).toBeCloseTo(celsius, 10);
  });
});

describe('figures worked by hand from those factors', () => {
  it('1500 MPa is 217 557 psi to the nearest pound', () => {
    expect(valueOf('217557 psi', 'stress')).toBeCloseTo(1500, 2);
    expect(Math.round(1500 / valueOf('1 psi', 'stress'))).toBe(217_557);
  });
  // Common practice, no source: the trade writes "about 217,000 psi" for 1500 MPa steel. It is 3.8 MPa less.
  it('217 000 psi and 217 ksi are 1496.16 MPa', () => {
    expect(valueOf('217000 psi', 'stress')).toBeCloseTo(1496.16, 2);
    expect(valueOf('217 ksi', 'stress')).toBeCloseTo(1496.16, 2);
  });
  it.each([
    ['1200 °F', 'temperature', 648.89],
    ['280 °F', 'temperature', 137.78],
    ['300 °F', 'temperature', 148.89],
    ['300 °F', 'temperature difference', 166.67],
    ['0.047 in', 'length', 1.19],
  ] as const)('%s as %s is %d', (text, dimension, expected) => {
    expect(valueOf(text, dimension)).toBeCloseTo(expected, 2);
  });
});
