import { describe, expect, test } from 'vitest';
import { dayOf, listOf, notAfter, quantityOf, signedLengthOf, whenOf } from '../../src/facts/quantity-of.ts';

describe('numbers of a checked plan, in the unit of all that is right of it', () => {
  test('quantities come in °C, mm, s and MPa', () => {
    expect(quantityOf('1200 °F', 'temperature')).toBeCloseTo(648.889, 3);
    expect(quantityOf('0.5 in', 'length')).toBeCloseTo(12.7, 9);
    expect(quantityOf('2 min', 'time')).toBe(120);
    expect(quantityOf('1 GPa', 'stress')).toBe(1000);
  });

  test('what is left out or cannot be read is no number', () => {
    expect(quantityOf(undefined, 'length')).toBeUndefined();
    expect(quantityOf('ten', 'length')).toBeUndefined();
    expect(signedLengthOf(undefined)).toBeUndefined();
    expect(signedLengthOf('-70.2 cm')).toBe(-702);
  });

  test('days are counted from 1970-01-01', () => {
    expect(dayOf('1970-01-01')).toBe(0);
    expect(dayOf('2000-03-01')).toBe(11017);
    expect(dayOf('2026-02-30')).toBeUndefined();
    expect(whenOf('1970-01-02T01:30')).toEqual({ day: 1, minute: 90 });
    expect(whenOf('1970-01-02')).toEqual({ day: 1 });
    expect(whenOf(undefined)).toBeUndefined();
  });
});

describe('order of two moments', () => {
  test.each([
    ['2026-10-05', '2026-10-06', true],
    ['2026-10-06', '2026-10-05', false],
    ['2026-10-05T09:00', '2026-10-05T09:01', true],
    ['2026-10-05T09:00', '2026-10-05T09:00', true],
    ['2026-10-05T09:01', '2026-10-05T09:00', false],
    ['2026-10-05', '2026-10-05T09:00', undefined],
    ['2026-10-05T09:00', '2026-10-05', undefined],
    ['2026-10-05T23:59', '2026-10-06', true],
  ])('%s not after %s: %s', (first, second, answer) => {
    const [a, b] = [whenOf(first), whenOf(second)];
    expect(a !== undefined && b !== undefined && notAfter(a, b)).toBe(answer);
  });
});

test('one or several come as a list', () => {
  expect(listOf(undefined)).toEqual([]);
  expect(listOf('a')).toEqual(['a']);
  expect(listOf(['a', 'b'])).toEqual(['a', 'b']);
});
