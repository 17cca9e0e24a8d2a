import { readVin } from './identification-number.ts';

export interface VinRange {
  readonly from: string;
  /** The last number of the range, itself included. */
  readonly to: string;
}

export type VinRangeAnswer = 'inside' | 'outside' | { readonly cannotTell: string };

/**
 * Whether a vehicle identification number lies in a range that a document states, both ends included. Serials are only
 * compared when all before them agrees (the check digit apart, which changes with every number): what a later number
 * of another plant or model year is built like, nobody can count out. `cannotTell` completes "because …".
 */
export function inVinRange(vin: string, range: VinRange): VinRangeAnswer {
  const car = split(vin);
  const from = split(range.from);
  const to = split(range.to);
  if (from === undefined || to === undefined) {
    return { cannotTell: "an end of the reference's VIN range is not in form" };
  }
  if (car === undefined) return { cannotTell: "the vehicle's identification number is not in form" };
  if (from.before !== to.before) {
    return { cannotTell: "the ends of the reference's VIN range differ before the serial" };
  }
  if (from.serial > to.serial) return { cannotTell: "the reference's VIN range begins after it ends" };
  if (car.before !== from.before) {
    return {
      cannotTell:
        "the vehicle's identification number differs from the reference's VIN range before the serial",
    };
  }
  return car.serial >= from.serial && car.serial <= to.serial ? 'inside' : 'outside';
}

interface SplitVin {
  readonly before: string;
  readonly serial: number;
}

function split(text: string): SplitVin | undefined {
  const reading = readVin(text);
  if (!reading.ok) return undefined;
  const { vin } = reading;
  // A maker of few vehicles has 9 in the third place and is told apart by places 12 to 14 (ISO 3780).
  const serialAt = vin.charAt(2) === '9' ? 14 : 11;
  const tail = vin.slice(serialAt);
  // Letters have no place in a count, so the count begins after the last of them.
  const digits = /\d*$/u.exec(tail)?.[0] ?? '';
  if (digits === '') return undefined;
  const letters = tail.slice(0, tail.length - digits.length);
  return { before: `${vin.slice(0, 8)}${vin.slice(9, serialAt)}${letters}`, serial: Number(digits) };
}
