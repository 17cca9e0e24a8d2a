import { describe, expect, it } from 'vitest';
import { formatDay } from '../../src/quantity/format-day.ts';
import { readDate } from '../../src/quantity/iso-date.ts';

function dayOf(text: string): number {
  const reading = readDate(text);
  return reading.ok ? reading.day : Number.NaN;
}

// ISO 8601-1, calendar date, complete representation in extended format; day numbers by the Gregorian rule that it takes
// over. The counts are worked by hand: 365 a year and one more for each leap year between.
describe('calendar dates of ISO 8601', () => {
  it.each([
    ['1970-01-01', 0],
    ['1969-12-31', -1],
    ['1970-12-31', 364],
    ['1972-02-29', 789], // 365 + 365 + 31 + 28
    ['1972-03-01', 790],
    ['2000-02-29', 11_016], // 30 × 365 + 7 leap days + 59
    ['2000-03-01', 11_017],
    ['1900-01-01', -25_567], // 70 × 365 + 17 leap days before
    ['2026-10-05', 20_731], // 56 × 365 + 14 leap days + 277
  ])('%s is day %d', (text, day) => {
    expect(dayOf(text)).toBe(day);
    expect(formatDay(day)).toBe(text);
  });

  // The Gregorian rule: centuries are leap years only when 400 divides them.
  it.each([
    ['1900-02-29', false],
    ['2000-02-29', true],
    ['2100-02-29', false],
    ['2023-02-29', false],
    ['2024-02-29', true],
  ])('%s exists: %s', (text, exists) => {
    expect(readDate(text).ok).toBe(exists);
  });

  it('agrees with the calendar of the language on every day from 1900 to 2199', () => {
    const first = Date.UTC(1900, 0, 1) / 86_400_000;
    const last = Date.UTC(2199, 11, 31) / 86_400_000;
    const wrong: string[] = [];
    for (let day = first; day <= last; day += 1) {
      const text = new Date(day * 86_400_000).toISOString().slice(0, 10);
      if (dayOf(text) !== day || formatDay(day) !== text) wrong.push(text);
    }
    expect(last - first + 1).toBe(109_573); // 300 × 365 + 73: 75 multiples of four, less 1900 and 2100
    expect(wrong).toEqual([]);
  });
});
