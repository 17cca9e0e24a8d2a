import { InvalidArgumentError } from 'commander';
import { readDate } from '../quantity/iso-date.ts';

// What the text behind an option becomes. Each refuses in one sentence, to which commander adds the option.

/** Of an option that may be given again: all that were given, in their order. */
export function collect(one: string, before: readonly string[] | undefined): readonly string[] {
  return [...(before ?? []), one];
}

/** A day such as 2026-10-05, as the days since 1970-01-01. */
export function dayArgument(text: string): number {
  const reading = readDate(text);
  if (!reading.ok) throw new InvalidArgumentError(reading.reason);
  return reading.day;
}

/** A whole number from 0, of at most nine digits. */
export function countArgument(text: string): number {
  if (!/^\d{1,9}$/u.test(text.trim())) throw new InvalidArgumentError('It takes a whole number from 0.');
  return Number(text);
}
