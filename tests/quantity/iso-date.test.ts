import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDay } from '../../src/quantity/format-day.ts';
import { readDate, readMoment } from '../../src/quantity/iso-date.ts';

function dateReason(text: string): string {
  const reading = readDate(text);
  return reading.ok ? `read as ${reading.day}` : reading.reason;
}

function momentReason(text: string): string {
  const reading = readMoment(text);
  return reading.ok ? `read as ${reading.day}` : reading.reason;
}

describe('readDate', () => {
  it.each([
    ['2026-02-30', /that month has days 01 to 28/u],
    ['2026-04-31', /that month has days 01 to 30/u],
    ['2026-10-00', /that month has days 01 to 31/u],
    ['2026-13-01', /month 13/u],
    ['05/10/2026', /leaves open which number is the month/u],
    ['05.10.2026', /leaves open which number is the month/u],
    ['05-10-26', /leaves open which number is the month/u],
    ['2026/10/05', /leaves open which number is the month/u],
    ['2026-2-3', /write 2026-02-03/u],
    ['20261005', /write 2026-10-05/u],
    ['2O26-10-05', /letter O .* write 2026-10-05/u],
    ['２０２６-10-05', /another script/u],
    ['1899-12-31', /outside 1900 to 2199/u],
    ['2200-01-01', /outside 1900 to 2199/u],
    ['2026-10', /lacks the day/u],
    ['2026-W41-1', /weeks or days/u],
    ['2026-278', /weeks or days/u],
    ['2026-10-05T09:40', /write the date alone, 2026-10-05/u],
    ['5 October 2026', /is no date/u],
    ['', /No date is written/u],
    ['2'.repeat(400), /has 400 characters/u],
  ])('refuses %s', (text, reason) => {
    expect(dateReason(text)).toMatch(reason);
  });

  it.each(['1900-01-01', '2199-12-31', '2026-02-28', '2026-04-30', '2026-10-31'])('reads %s', (text) => {
    expect(readDate(text).ok).toBe(true);
  });

  it('counts one more each day and is undone by formatDay', () => {
    fc.assert(
      fc.property(fc.integer({ min: -25_567, max: 84_003 }), (day) => {
        expect(readDate(formatDay(day))).toEqual({ ok: true, day });
      }),
    );
  });
});

describe('readMoment', () => {
  it.each([
    ['2026-10-06', { ok: true, day: 20_732 }],
    ['2026-10-06T09:40', { ok: true, day: 20_732, minute: 580 }],
    ['2026-10-06 09:40', { ok: true, day: 20_732, minute: 580 }],
    ['2026-10-06T09:40:30', { ok: true, day: 20_732, minute: 580.5 }],
    ['2026-10-06T00:00', { ok: true, day: 20_732, minute: 0 }],
    ['2026-10-06T23:59', { ok: true, day: 20_732, minute: 1439 }],
  ])('reads %s', (text, expected) => {
    expect(readMoment(text)).toEqual(expected);
  });

  it.each([
    ['2026-10-06T09:40Z', /time zone: leave it away, .* only compared with each other/u],
    ['2026-10-06T09:40+02:00', /time zone/u],
    ['2026-10-06T09:40-05', /time zone/u],
    ['2026-10-06T24:00', /write 00:00 with the date of the next day/u],
    ['2026-10-06T25:00', /hours go from 00 to 23/u],
    ['2026-10-06T09:60', /minutes and seconds from 00 to 59/u],
    ['2026-10-06T9:40', /write the time as 09:40/u],
    ['2026-10-06 9:40 pm', /counts to twelve/u],
    ['2026-10-06T0940', /"0940" where a time of day is read/u],
    ['2026-10-06T09:40:30.5', /whole seconds/u],
    ['2026-02-30T09:40', /that month has days 01 to 28/u],
    ['05/10/2026 09:40', /is no date/u],
  ])('refuses %s', (text, reason) => {
    expect(momentReason(text)).toMatch(reason);
  });
});
