/** What a reading proves about a limit. */
export type Decision = 'conforms' | 'does not conform' | 'not proven';

/** A deviation held against its limit. */
export interface Margins {
  /** Deviation less tolerance, mm; above nothing it is over. */
  readonly overMm: number;
  /** The same with the uncertainty counted against the body; undefined when no uncertainty is stated. */
  readonly overWithUncertaintyMm: number | undefined;
  /** Undefined when no uncertainty is stated. */
  readonly decision: Decision | undefined;
}

/**
 * The decision rule of ISO 14253-1 (text seen in summaries, not in the standard itself): conformance is proven when the deviation
 * with the expanded uncertainty added keeps the limit, non-conformance when it breaks the limit with the uncertainty taken off; in
 * between neither is. All in mm, none below nothing: a deviation without its sign, its tolerance, and the uncertainty of it
 * at two standard deviations.
 */
export function heldAgainst(
  deviationMm: number,
  toleranceMm: number,
  uncertaintyMm: number | undefined,
): Margins {
  const overMm = sharp(deviationMm - toleranceMm);
  if (uncertaintyMm === undefined) return { overMm, overWithUncertaintyMm: undefined, decision: undefined };
  const overWithUncertaintyMm = sharp(overMm + uncertaintyMm);
  return { overMm, overWithUncertaintyMm, decision: decided(overMm, uncertaintyMm, overWithUncertaintyMm) };
}

function decided(overMm: number, uncertaintyMm: number, overWithUncertaintyMm: number): Decision {
  if (overWithUncertaintyMm <= 0) return 'conforms';
  return sharp(overMm - uncertaintyMm) > 0 ? 'does not conform' : 'not proven';
}

/** Room for the last digits of a sum: 1203.0 mm from 1200.0 mm is exactly 3 mm. A nanometre, as the fit leaves it. */
const slackMm = 1e-6;

function sharp(mm: number): number {
  return Math.abs(mm) < slackMm ? 0 : mm;
}
