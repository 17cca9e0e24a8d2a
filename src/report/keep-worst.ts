import type { Severity } from '../judge/finding.ts';
import type { PlacedFinding } from './plan-report.ts';

export interface KeptFindings {
  /** In the order in which they were given. */
  readonly kept: readonly PlacedFinding[];
  readonly left: Readonly<Record<Severity, number>>;
}

/** The worst `most` of a plan's findings: no note is shown in place of a stop, wherever the parts stand. 0 keeps all. */
export function keepWorst(findings: readonly PlacedFinding[], most: number): KeptFindings {
  const left = { stop: 0, hold: 0, note: 0 };
  if (most === 0 || findings.length <= most) return { kept: findings, left };
  const worstFirst = (['stop', 'hold', 'note'] as const).flatMap((severity) =>
    findings.filter(({ finding }) => finding.severity === severity),
  );
  for (const { finding } of worstFirst.slice(most)) left[finding.severity] += 1;
  const kept = new Set(worstFirst.slice(0, most));
  return { kept: findings.filter((one) => kept.has(one)), left };
}

/** `12 more findings are not shown: 2 stops, 10 holds`; undefined where all are shown. */
export function leftText({ left }: KeptFindings): string | undefined {
  const words = (['stop', 'hold', 'note'] as const)
    .filter((severity) => left[severity] > 0)
    .map((severity) => `${String(left[severity])} ${severity}${left[severity] === 1 ? '' : 's'}`);
  if (words.length === 0) return undefined;
  const sum = left.stop + left.hold + left.note;
  return `${String(sum)} more ${sum === 1 ? 'finding is' : 'findings are'} not shown: ${words.join(', ')}.`;
}
