import type { Finding } from '../../src/judge/finding.ts';
import type { PlacedFinding, PlanReport, RunHead, RunTail } from '../../src/report/plan-report.ts';
import { finding } from '../judge/invented-finding.ts';

export const head: RunHead = {
  planish: '9.8.7',
  packs: [
    { pack: 'general', version: '1.0.0', digest: `sha256:${'a'.repeat(64)}`, released: false },
    { pack: 'corvane-tarn', version: '2026.2.0', digest: `sha256:${'b'.repeat(64)}`, released: true },
  ],
  factSchema: 1,
  asOf: '2026-10-21',
};

export function tail(
  verdict: RunTail['verdict'],
  plans: number,
  verdicts: Partial<RunTail['verdicts']>,
): RunTail {
  return { verdict, plans, verdicts: { cleared: 0, held: 0, stopped: 0, 'not judged': 0, ...verdicts } };
}

export function placed(
  given: Partial<Finding> & Pick<Finding, 'rule' | 'severity'>,
  line = 7,
  column = 5,
): PlacedFinding {
  return { finding: finding(given), place: { line, column, endLine: line, endColumn: column + 4 } };
}

export function planReport(given: Partial<PlanReport> = {}): PlanReport {
  const counts = { stop: 0, hold: 0, note: 0, accepted: 0 };
  for (const { finding: one } of given.findings ?? []) {
    counts[one.severity] += 1;
    if (one.deviation !== undefined) counts.accepted += 1;
  }
  return {
    file: 'jobs/K-1.yaml',
    stage: 'start',
    digest: `sha256:${'c'.repeat(64)}`,
    title: 'Corvane Tarn, job K-1',
    verdict: 'cleared',
    counts,
    lifted: [],
    notJudged: [],
    findings: [],
    ...given,
  };
}
