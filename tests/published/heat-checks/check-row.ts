/** How far a computed value may lie from the expected one. At least one of the two; the wider counts. */
export interface Allowed {
  /** In the unit of the value. */
  readonly absolute?: number;
  /** Share of the expected value, or of `rise` where that is given. */
  readonly share?: number;
  /** Share by which it may be low, where that is less. */
  readonly lowShare?: number;
}

export interface CheckRow {
  readonly what: string;
  readonly source: string;
  readonly unit: string;
  /** By the source that is named: a standard, a handbook, finite elements, or another's program. */
  readonly expected: number;
  readonly computed: number;
  /** What a share is a share of; the expected value when absent. */
  readonly base?: number;
  readonly allowed: Allowed;
}

export interface Judged extends CheckRow {
  readonly error: number;
  readonly least: number;
  readonly most: number;
  readonly ok: boolean;
}

/** NaN is never inside. */
export function judged(row: CheckRow): Judged {
  const base = Math.abs(row.base ?? row.expected);
  const { absolute = 0, share = 0, lowShare = share } = row.allowed;
  const error = row.computed - row.expected;
  const most = Math.max(absolute, share * base);
  const least = -Math.max(absolute, lowShare * base);
  return { ...row, error, least, most, ok: error >= least && error <= most };
}
