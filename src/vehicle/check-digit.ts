export interface CheckDigit {
  /** Sum of value times weight over the seventeen places. */
  readonly sum: number;
  /** What the ninth place should hold: 0-9, or X for ten. */
  readonly digit: string;
}

// 49 CFR 565.15, tables of assigned values and weight factors. No letter has the value 0, and I, O, Q have none.
const values: ReadonlyMap<string, number> = new Map(
  ['0', '1AJ', '2BKS', '3CLT', '4DMU', '5ENV', '6FW', '7GPX', '8HY', '9RZ'].flatMap((characters, value) =>
    [...characters].map((character): readonly [string, number] => [character, value]),
  ),
);
const weights: readonly number[] = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];

/**
 * The check digit that belongs to a vehicle identification number in form (see `readVin`), by 49 CFR 565.15; undefined
 * for any other text. That the ninth place agrees proves nothing: seventeen ones agree too.
 */
export function checkDigit(vin: string): CheckDigit | undefined {
  if (vin.length !== weights.length) return undefined;
  let sum = 0;
  for (const [place, weight] of weights.entries()) {
    const value = values.get(vin.charAt(place));
    if (value === undefined) return undefined;
    sum += value * weight;
  }
  const remainder = sum % 11;
  return { sum, digit: remainder === 10 ? 'X' : String(remainder) };
}
