/** Of a class: shares of the points, 0 to 1. */
export interface ClassStatistics {
  readonly students: number;
  readonly mean: number;
  readonly lowest: number;
  readonly lowerQuartile: number;
  readonly median: number;
  readonly upperQuartile: number;
  readonly highest: number;
  /** Students by tenth of the points; all the points lie in the last. */
  readonly tenths: readonly number[];
}

/** Undefined for a class of nobody. */
export function classStatistics(shares: readonly number[]): ClassStatistics | undefined {
  if (shares.length === 0) return undefined;
  const sorted = shares.toSorted((a, b) => a - b);
  const tenths = Array.from({ length: 10 }, () => 0);
  for (const share of sorted) {
    const tenth = Math.max(0, Math.min(9, Math.floor(share * 10 + 1e-9)));
    tenths[tenth] = (tenths[tenth] ?? 0) + 1;
  }
  return {
    students: sorted.length,
    mean: sorted.reduce((total, share) => total + share, 0) / sorted.length,
    lowest: quantile(sorted, 0),
    lowerQuartile: quantile(sorted, 0.25),
    median: quantile(sorted, 0.5),
    upperQuartile: quantile(sorted, 0.75),
    highest: quantile(sorted, 1),
    tenths,
  };
}

/**
 * The quantile of a sorted list by definition 7 of Hyndman and Fan (The American Statistician 50, 1996), the one that spreadsheets
 * and most statistics packages use: linear between the values on either side of (n − 1)·share. `sorted` has at least one value.
 */
export function quantile(sorted: readonly number[], share: number): number {
  const at = (sorted.length - 1) * share;
  const below = sorted[Math.floor(at)] ?? Number.NaN;
  const above = sorted[Math.ceil(at)] ?? Number.NaN;
  return below + (at - Math.floor(at)) * (above - below);
}
