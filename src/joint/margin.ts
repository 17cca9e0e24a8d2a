/** A length that was written in another unit differs in the last digits; that is no difference. */
const rounding = 1e-9;

/** `one` minus `other`, 0 where they are the same number but for a change of units. */
export function margin(one: number, other: number): number {
  const difference = one - other;
  const isSame =
    Number.isFinite(difference) &&
    Math.abs(difference) <= rounding * Math.max(Math.abs(one), Math.abs(other));
  return isSame ? 0 : difference;
}
