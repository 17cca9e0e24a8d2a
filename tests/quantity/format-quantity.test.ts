import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalUnit, dimensions } from '../../src/quantity/dimension.ts';
import { formatQuantity } from '../../src/quantity/format-quantity.ts';
import { readQuantity } from '../../src/quantity/read-quantity.ts';

describe('formatQuantity', () => {
  it.each([
    [648.888, '°C', '649 °C'],
    [166.67, 'K', '167 K'],
    [1.4, 'mm', '1.4 mm'],
    [0.65, 'mm', '0.65 mm'],
    [40, 'mm', '40 mm'],
    [1203.46, 'mm', '1203.5 mm'],
    [0.24, 's', '0.24 s'],
    [4.25, 's', '4.3 s'],
    [30.2, 's', '30 s'],
    [1496.16, 'MPa', '1496 MPa'],
    [3.5, 'kN', '3.5 kN'],
    [0.005, 'Ω', '0.005 Ω'],
    [12.5, '°', '12.5°'],
    [85, '%', '85 %'],
    [-0.2, '°C', '0 °C'],
    [-2.5, 'mm', '-2.5 mm'],
    [217_557, 'MPa', '217557 MPa'],
    [100, 'mm', '100 mm'],
    [Number.NaN, 'mm', 'unknown'],
    [Infinity, 'mm', 'unknown'],
  ])('%d in %s is shown as %s', (value, unit, expected) => {
    expect(formatQuantity(value, unit)).toBe(expected);
  });

  it('shows more decimals when asked, and no zeros at the end', () => {
    expect(formatQuantity(600.04, '°C')).toBe('600 °C');
    expect(formatQuantity(600.04, '°C', 2)).toBe('600.04 °C');
    expect(formatQuantity(600, '°C', 2)).toBe('600 °C');
  });

  it('shows what a plan may write: with enough decimals the value is read back', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...dimensions),
        fc.integer({ min: 1, max: 99_999 }),
        (dimension, hundredths) => {
          const value = hundredths / 100;
          fc.pre(dimension !== 'angle' || value <= 360);
          const shown = formatQuantity(value, canonicalUnit[dimension], 2);
          expect(readQuantity(shown, dimension)).toEqual({ ok: true, value });
        },
      ),
    );
  });
});
