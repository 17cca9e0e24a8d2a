import { formatQuantity } from '../quantity/format-quantity.ts';
import type { FactThen } from './moved-facts.ts';

/** The most decimals that a small difference is followed to. */
const mostDecimals = 6;

/** A fact as a person reads it: `437 °C`, `yes`, `unknown`. */
export function factText(fact: FactThen | undefined, decimals?: number): string {
  if (fact === undefined) return 'no such fact';
  const { value, unit, from } = fact;
  if (value === undefined) return from === 'unknown' ? 'unknown' : 'without end';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return formatQuantity(value, unit ?? '', decimals).trimEnd();
  if (typeof value === 'string') return value;
  return value.length === 0 ? 'none' : value.join(', ');
}

/** Both, with as many decimals as it takes to tell them apart. */
export function factTexts(then: FactThen, now: FactThen | undefined): readonly [string, string] {
  let decimals: number | undefined;
  let texts: readonly [string, string] = [factText(then), factText(now)];
  while (texts[0] === texts[1] && (decimals ?? 0) < mostDecimals) {
    decimals = (decimals ?? 0) + 1;
    texts = [factText(then, decimals), factText(now, decimals)];
  }
  return texts;
}
