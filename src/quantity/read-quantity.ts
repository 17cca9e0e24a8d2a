import { canonicalUnit } from './dimension.ts';
import type { Dimension } from './dimension.ts';
import { findUnit } from './find-unit.ts';
import { explainRefusal } from './explain-refusal.ts';
import { sense, senseFault } from './sense.ts';
import type { Sense } from './sense.ts';

export type QuantityReading =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly reason: string };

const longestQuantity = 40;

/**
 * Reads a quantity as a plan writes it: one decimal number with a point, an optional blank, one unit.
 * `value` is in `canonicalUnit[dimension]`, unrounded. Whatever can be read in two ways is refused, never guessed;
 * `reason` is one sentence that says what to write instead.
 */
export function readQuantity(text: string, dimension: Dimension): QuantityReading {
  return readWithin(text, dimension, sense[dimension]);
}

/** The same with other ends of what can be meant; for what shares the units of a dimension but not its sense. */
export function readWithin(text: string, dimension: Dimension, limits: Sense): QuantityReading {
  if (text.length > longestQuantity) {
    const reason = `This has ${text.length} characters; a quantity is one number and one unit, at most ${longestQuantity} characters.`;
    return { ok: false, reason };
  }
  const trimmed = text.trim();
  const numberEnd = endOfNumber(trimmed);
  if (numberEnd === 0) return { ok: false, reason: explainRefusal(trimmed, dimension) };

  let unitStart = numberEnd;
  while (isBlank(trimmed.charCodeAt(unitStart))) unitStart += 1;
  const unit = findUnit(trimmed.slice(unitStart), dimension);
  if (unit === undefined || unit === 'unclear') {
    return { ok: false, reason: explainRefusal(trimmed, dimension) };
  }

  const number = trimmed.slice(0, numberEnd);
  if (unit.coarse === true && looksGrouped(number)) {
    const after = trimmed.slice(numberEnd);
    const reason = `"${trimmed}" can be read with a thousands point or with a decimal point: write ${number.replace('.', '')}${after} or ${Number(number)}${after}.`;
    return { ok: false, reason };
  }
  const written = trimmed.charCodeAt(0) === minus ? -Number(number.slice(1)) : Number(number);
  // The added zero turns -0 into 0, which would otherwise show as "-0 mm".
  const value = ((written + (unit.before ?? 0)) * (unit.times ?? 1)) / (unit.over ?? 1) + 0;
  const reason = senseFault(value, limits, canonicalUnit[dimension], trimmed);
  return reason === undefined ? { ok: true, value } : { ok: false, reason };
}

const minus = 0x2212;

/**
 * Where a plain decimal number at the start of `text` ends; 0 when there is none. `.055` is one (US drawings write
 * it so), `5.` and `055` are none: there a point or a digit may have been lost.
 */
function endOfNumber(text: string): number {
  let at = 0;
  const first = text.charCodeAt(0);
  if (first === 0x2b || first === 0x2d || first === minus) at = 1;
  const start = at;
  while (isDigit(text.charCodeAt(at))) at += 1;
  const whole = at - start;
  if (whole > 1 && text.charCodeAt(start) === 0x30) return 0;
  if (text.charCodeAt(at) === 0x2e) {
    const pointAt = at;
    at += 1;
    while (isDigit(text.charCodeAt(at))) at += 1;
    if (at === pointAt + 1) return 0;
  } else if (whole === 0) {
    return 0;
  }
  return at;
}

/**
 * Three decimals that are more likely a group of thousands: `1.500`, `217.000`. A converted value such as 648.889
 * has more digits before the point or no zero at its end and stays a decimal number.
 */
function looksGrouped(number: string): boolean {
  if (number.charCodeAt(number.length - 4) !== 0x2e) return false;
  return /^[1-9](?:\.\d{3}|\d{1,2}\.\d\d0)$/u.test(number);
}

function isDigit(code: number): boolean {
  return code >= 0x30 && code <= 0x39;
}

/** Space, tab, and the no-break and thin spaces that typeset documents put before a unit. */
function isBlank(code: number): boolean {
  return code === 0x20 || code === 0x09 || code === 0xa0 || code === 0x2009 || code === 0x202f;
}
