/** One value of a row of cells. Past either end it is NaN, so that a wrong index spoils the answer visibly. */
export function cell(row: Float64Array | readonly number[], index: number): number {
  return row[index] ?? Number.NaN;
}
