import { readWithin } from './read-quantity.ts';
import type { QuantityReading } from './read-quantity.ts';

/**
 * Reads what a voltmeter shows, `value` in V. The sign tells only which lead lay where; a voltage that is set, such as that
 * of a welding machine, is read by `readQuantity` and is never negative.
 */
export function readSignedVoltage(text: string): QuantityReading {
  return readWithin(text, 'voltage', {
    article: 'a meter reading',
    lowest: -1_000_000,
    highest: 1_000_000,
  });
}
