import type { Dimension } from '../quantity/dimension.ts';
import { readDate, readMoment } from '../quantity/iso-date.ts';
import { readQuantity } from '../quantity/read-quantity.ts';
import { readSignedLength } from '../quantity/read-signed-length.ts';
import { readSignedVoltage } from '../quantity/read-signed-voltage.ts';

/** The number that a checked plan's quantity stands for, in the canonical unit; undefined when it is left out. */
export function quantityOf(text: string | undefined, dimension: Dimension): number | undefined {
  if (text === undefined) return undefined;
  const reading = readQuantity(text, dimension);
  return reading.ok ? reading.value : undefined;
}

export function signedLengthOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const reading = readSignedLength(text);
  return reading.ok ? reading.value : undefined;
}

/** What a voltmeter shows, without its sign, V: -390 V is as live as 390 V. */
export function voltsOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const reading = readSignedVoltage(text);
  return reading.ok ? Math.abs(reading.value) : undefined;
}

/** Days since 1970-01-01. */
export function dayOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const reading = readDate(text);
  return reading.ok ? reading.day : undefined;
}

/** A day, and the minute of the day where it is written. */
export interface When {
  readonly day: number;
  readonly minute?: number;
}

export function whenOf(text: string | undefined): When | undefined {
  if (text === undefined) return undefined;
  const reading = readMoment(text);
  if (!reading.ok) return undefined;
  return reading.minute === undefined ? { day: reading.day } : { day: reading.day, minute: reading.minute };
}

/**
 * Whether `first` lies before `second` or with it. On one day it takes the minutes of both to tell; without them the order
 * is not known.
 */
export function notAfter(first: When, second: When): boolean | undefined {
  if (first.day !== second.day) return first.day < second.day;
  if (first.minute === undefined || second.minute === undefined) return undefined;
  return first.minute <= second.minute;
}

/** Whatever was written as one entry or as a list, as a list. */
export function listOf<T>(value: T | readonly T[] | undefined): readonly T[] {
  if (value === undefined) return [];
  return isList(value) ? value : [value];
}

function isList<T>(value: T | readonly T[]): value is readonly T[] {
  return Array.isArray(value);
}
