import type { Finding } from './finding.ts';

export const verdicts = ['cleared', 'held', 'stopped', 'not judged'] as const;
export type Verdict = (typeof verdicts)[number];

/**
 * The verdict of one plan. A hold that a deviation accepts does not hold; a stop stops with or without one. When part of
 * the judging itself failed, nothing is known of what it would have found: not judged.
 */
export function verdictOf(
  findings: readonly Pick<Finding, 'severity' | 'deviation'>[],
  notJudged: readonly unknown[],
): Verdict {
  if (notJudged.length > 0) return 'not judged';
  if (findings.some((finding) => finding.severity === 'stop')) return 'stopped';
  const holds = findings.some((finding) => finding.severity === 'hold' && finding.deviation === undefined);
  return holds ? 'held' : 'cleared';
}

/** The worst of several; that of no plan at all is undefined, never *cleared*. */
export function worstVerdict(given: readonly Verdict[]): Verdict | undefined {
  return verdicts.findLast((verdict) => given.includes(verdict));
}
