import { readQuantity } from './read-quantity.ts';
import type { QuantityReading } from './read-quantity.ts';

/** A length in mm that something has: a thickness, a diameter, a pitch. Refused like any length, and where it is 0: no thing is so small. */
export function readSize(text: string): QuantityReading {
  const reading = readQuantity(text, 'length');
  if (!reading.ok || reading.value > 0) return reading;
  return {
    ok: false,
    reason: `"${text.trim()}" is no size that a thing can have; what was not measured is left out.`,
  };
}
