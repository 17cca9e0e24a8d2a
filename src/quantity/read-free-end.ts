import { readQuantity } from './read-quantity.ts';
import type { QuantityReading } from './read-quantity.ts';

export type FreeEndReading = { readonly ok: true; readonly runsOn: true } | QuantityReading;

/** A length in mm, or the words `runs on` for sheet that does not end near the work. Anything else is refused with a reason. */
export function readFreeEnd(text: string): FreeEndReading {
  return runsOn(text) ? { ok: true, runsOn: true } : readQuantity(text, 'length');
}

/** Whether a text, where there is one, says that the sheet goes on. */
export function runsOn(text: string | undefined): boolean {
  return text !== undefined && /^\s*runs\s+on\s*$/iu.test(text);
}
