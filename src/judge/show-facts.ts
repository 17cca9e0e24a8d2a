import type { FactValue } from '../facts/fact.ts';
import { formatQuantity } from '../quantity/format-quantity.ts';
import type { Bounds } from '../packs/pack.ts';
import { isWithin } from './truth.ts';

/** A known fact that a message shows. */
export interface Shown {
  readonly name: string;
  readonly value: FactValue;
  readonly unit?: string;
  /** What the rule asks of the number, so that rounding does not contradict it. */
  readonly bounds?: Bounds;
}

/** Beyond the usual decimals of a unit, up to this many are shown where fewer would blur a difference. */
const mostDecimals = 6;

/**
 * The texts of the facts of one message. Numbers are rounded as the workshop reads them, but never so far that a number
 * seems to keep a limit that it breaks, or that two numbers that differ read the same.
 */
export function showFacts(facts: readonly Shown[]): ReadonlyMap<string, string> {
  const texts = new Map<string, string>();
  const units = new Set<string>();
  for (const fact of facts) {
    if (typeof fact.value === 'number') units.add(fact.unit ?? '');
    else texts.set(fact.name, textOf(fact.value));
  }
  for (const unit of units) {
    const numbers = facts.filter((fact) => typeof fact.value === 'number' && (fact.unit ?? '') === unit);
    let digits: number | undefined;
    let shown = numbers.map((fact) => numberText(fact, digits));
    while (blurs(numbers, shown) && (digits ?? 0) < mostDecimals) {
      digits = (digits ?? 0) + 1;
      shown = numbers.map((fact) => numberText(fact, digits));
    }
    numbers.forEach((fact, index) => texts.set(fact.name, shown[index] ?? ''));
  }
  return texts;
}

function blurs(numbers: readonly Shown[], shown: readonly string[]): boolean {
  return numbers.some((fact, index) => {
    const text = shown[index] ?? '';
    if (fact.bounds !== undefined && !isWithin(fact.bounds, Number.parseFloat(text))) return true;
    return numbers.some((other, at) => at > index && shown[at] === text && !isSame(fact.value, other.value));
  });
}

function isSame(a: FactValue, b: FactValue): boolean {
  return typeof a === 'number' && typeof b === 'number' && isWithin({ min: b, max: b }, a);
}

function numberText(fact: Shown, digits: number | undefined): string {
  if (typeof fact.value !== 'number') return '';
  if (fact.unit === undefined && Number.isInteger(fact.value)) return String(fact.value);
  const text = formatQuantity(fact.value, fact.unit ?? '', digits).trimEnd();
  if (fact.unit === 'mm') return withMetres(text, fact.value);
  return fact.unit === 's' ? withMinutes(text, fact.value) : text;
}

/** From here on nobody thinks in seconds, s. */
const longSeconds = 120;

/** From here on, of a place and not of a sheet, metres stand behind the millimetres, mm. */
const longMm = 3000;

function withMetres(text: string, mm: number): string {
  return Math.abs(mm) < longMm ? text : `${text} (${formatQuantity(mm / 1000, 'm', 1)})`;
}

/** Seconds stay the unit of every report; of a long time the minutes or hours stand behind them. */
function withMinutes(text: string, seconds: number): string {
  const minutes = seconds / 60;
  if (Math.abs(seconds) < longSeconds) return text;
  return `${text} (${Math.abs(minutes) < 120 ? formatQuantity(minutes, 'min', 0) : formatQuantity(minutes / 60, 'h', 1)})`;
}

function textOf(value: FactValue): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value !== 'object') return String(value);
  if (value.length === 0) return 'none';
  return joinWords(value);
}

/** `a`, `a and b`, `a, b and c`. */
export function joinWords(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
}
