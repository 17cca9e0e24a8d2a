import { explainDateRefusal, explainTimeRefusal } from './explain-date-refusal.ts';

export type DateReading =
  | {
      readonly ok: true;
      /** Whole days since 1970-01-01. */
      readonly day: number;
    }
  | { readonly ok: false; readonly reason: string };

export type MomentReading =
  | {
      readonly ok: true;
      readonly day: number;
      /** Minutes since midnight, seconds as a fraction; absent when only a date was written. */
      readonly minute?: number;
    }
  | { readonly ok: false; readonly reason: string };

const firstYear = 1900;
const lastYear = 2199;

/**
 * Reads a calendar date in the complete extended form of ISO 8601, `2026-10-05`, of the years 1900 to 2199. Nothing else
 * is guessed at: 05/10/2026 is May to one reader and October to another.
 */
export function readDate(text: string): DateReading {
  const trimmed = text.trim();
  const match = /^(\d{4})-(\d\d)-(\d\d)$/u.exec(trimmed);
  if (match === null) return { ok: false, reason: explainDateRefusal(trimmed) };
  const [year, month, dayOfMonth] = [Number(match[1]), Number(match[2]), Number(match[3])];

  if (year < firstYear || year > lastYear) {
    return { ok: false, reason: `"${trimmed}" has a year outside ${firstYear} to ${lastYear}.` };
  }
  if (month < 1 || month > 12) {
    return {
      ok: false,
      reason: `"${trimmed}" names month ${month}: write year-month-day, with a month from 01 to 12.`,
    };
  }
  const days = daysInMonth(year, month);
  if (dayOfMonth < 1 || dayOfMonth > days) {
    return {
      ok: false,
      reason: `"${trimmed}" is no day of the calendar: that month has days 01 to ${days}.`,
    };
  }
  return { ok: true, day: dayNumber(year, month, dayOfMonth) };
}

/**
 * Reads a date with an optional time of day, `2026-10-06T09:40` or `2026-10-06 09:40:30`. Times are the shop's own and
 * are only compared with each other, so a time zone is refused: two zones in one plan could turn an order of steps
 * round. The night in which clocks change is not corrected for.
 */
export function readMoment(text: string): MomentReading {
  const trimmed = text.trim();
  const match = /^(\d{4}-\d\d-\d\d)(?:T| +)(.+)$/su.exec(trimmed);
  if (match === null) return readDate(trimmed);
  const [, dateText = '', timeText = ''] = match;
  const date = readDate(dateText);
  if (!date.ok) return date;

  const time = /^(\d\d):(\d\d)(?::(\d\d))?$/u.exec(timeText);
  const [hour, minute, second] = [Number(time?.[1]), Number(time?.[2]), Number(time?.[3] ?? 0)];
  if (time === null || hour > 23 || minute > 59 || second > 59) {
    return { ok: false, reason: explainTimeRefusal(trimmed, timeText) };
  }
  return { ok: true, day: date.day, minute: hour * 60 + minute + second / 60 };
}

function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeapYear(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

function isLeapYear(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

function dayNumber(year: number, month: number, dayOfMonth: number): number {
  let day = 365 * (year - 1970) + leapDaysBefore(year) - leapDaysBefore(1970) + dayOfMonth - 1;
  for (let earlier = 1; earlier < month; earlier += 1) day += daysInMonth(year, earlier);
  return day;
}

function leapDaysBefore(year: number): number {
  const last = year - 1;
  return Math.floor(last / 4) - Math.floor(last / 100) + Math.floor(last / 400);
}
