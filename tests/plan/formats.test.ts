import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { formatFaults, formats } from '../../src/plan/formats.ts';

describe('the formats of the plan’s schema', () => {
  test('each one that the schema names can be read', () => {
    const schema = readFileSync('schemas/plan.schema.json', 'utf8');
    const named = new Set([...schema.matchAll(/"format":\s*"([^"]+)"/gu)].map(([, name]) => name ?? ''));
    expect(named.size).toBeGreaterThan(10);
    expect([...named].filter((name) => formats[name] === undefined)).toEqual([]);
  });

  test.each([
    ['temperature', '1200 °F', '1200 MPa'],
    ['length', '0.055 in', '0.055'],
    ['time', '20 min', '20 mm'],
    ['stress', '217 ksi', '217 psf'],
    ['force', '3.2 kN', '3.2 mm'],
    ['current', '9.5 kA', '9.5 kV'],
    ['voltage', '400 V', '400 A'],
    ['speed', '8 mm/s', '8 mm'],
    ['power', '2 kW', '2 kJ'],
    ['mass', '200 g', '200 mm'],
    ['energy-per-length', '0.2 kJ/mm', '0.2 kJ'],
    ['insulation', '500 Ω/V', '500 V'],
    ['percent', '65 %', '65'],
    ['size', '0.1 mm', '0 mm'],
    ['signed-length', '-702 mm', '-702'],
    ['calendar-date', '2024-02-29', '2023-02-29'],
    ['moment', '2026-10-05T10:30', '2026-10-05T24:30'],
    ['moment', '2026-10-05', '5 October 2026'],
    ['years', '2020-2022', '2022-2020'],
    ['years', '2021', '21'],
  ])('%s takes `%s` and not `%s`', (name, good, bad) => {
    expect(formats[name]?.(good)).toBe(true);
    expect(formatFaults[name]?.(good)).toBeUndefined();
    expect(formats[name]?.(bad)).toBe(false);
    expect(formatFaults[name]?.(bad)).toMatch(/\S.*[.:]/u);
  });

  test('a size cannot be nothing, a distance can', () => {
    expect(formats['size']?.('0.0 in')).toBe(false);
    expect(formats['length']?.('0 mm')).toBe(true);
  });

  test('a length cannot be negative, a coordinate can', () => {
    expect(formats['length']?.('-5 mm')).toBe(false);
    expect(formats['signed-length']?.('-5 mm')).toBe(true);
  });
});
