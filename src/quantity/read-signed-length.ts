import { readWithin } from './read-quantity.ts';
import type { QuantityReading } from './read-quantity.ts';

/**
 * Reads a coordinate or a deviation, which has the units of a length and a sign; `value` in mm. A length proper, such as
 * a thickness or a distance, is read by `readQuantity` and is never negative.
 */
export function readSignedLength(text: string): QuantityReading {
  return readWithin(text, 'length', {
    article: 'a coordinate or deviation',
    lowest: -1_000_000,
    highest: 1_000_000,
  });
}
