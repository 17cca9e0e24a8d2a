/** What the limits say of one exposure, the gravest first. */
export type ExposureVerdict =
  | 'too near'
  | 'over its stop limit'
  | 'too weak'
  | 'over its limit'
  | 'warm too long'
  | 'not known'
  | 'within its limit'
  | 'far enough'
  | 'no limit set'
  | 'not in reach';

export interface ExposureNumbers {
  /** Undefined: not known whether it is there. */
  readonly stays: boolean | undefined;
  readonly distanceMm: number | undefined;
  readonly keepOffMm: number | undefined;
  /** K and s over the limits; minus infinity where the packs set none, undefined where it cannot be told. */
  readonly overLimit: number | undefined;
  readonly overStopLimit: number | undefined;
  readonly overTime: number | undefined;
  /** %; undefined for what is no hardened steel. */
  readonly tensileLeft: number | undefined;
  readonly leastTensileLeft: number | undefined;
}

/**
 * The gravest of what can be said. The thresholds are those of the pack's rules for neighbours; the verdict on a plan stays with the
 * rules, which also know what the maker permits.
 */
export function exposureVerdict(numbers: ExposureNumbers): ExposureVerdict {
  const { stays, distanceMm, keepOffMm, overLimit, overStopLimit, overTime, tensileLeft, leastTensileLeft } =
    numbers;
  if (stays === false) return 'not in reach';
  if (keepOffMm !== undefined && (distanceMm === undefined || distanceMm < keepOffMm)) return 'too near';
  const margins = [overStopLimit, overLimit, overTime];
  const isOver = (margin: number | undefined): boolean => margin !== undefined && margin > 0;
  if (isOver(overStopLimit)) return 'over its stop limit';
  if (tensileLeft !== undefined && leastTensileLeft !== undefined && tensileLeft < leastTensileLeft)
    return 'too weak';
  if (isOver(overLimit)) return 'over its limit';
  if (isOver(overTime)) return 'warm too long';
  // A margin of infinity below says that no such limit is set, which is no open question.
  const isUnlimited = margins.every((margin) => margin === Number.NEGATIVE_INFINITY);
  if (isUnlimited) return keepOffMm === undefined ? 'no limit set' : 'far enough';
  if (margins.includes(undefined) || stays === undefined) return 'not known';
  return 'within its limit';
}

const settled: ReadonlySet<ExposureVerdict> = new Set<ExposureVerdict>([
  ...(['within its limit', 'far enough', 'no limit set', 'not in reach'] as const),
]);

/** Whether something must be done or answered. */
export function isOpen(verdict: ExposureVerdict): boolean {
  return !settled.has(verdict);
}
