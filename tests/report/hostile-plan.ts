import type { PlanReport } from '../../src/report/plan-report.ts';
import { placed, planReport } from './invented-report.ts';

/** A report with the text in every field that a plan, a path or a pack can fill. */
export function hostilePlan(text: string): PlanReport {
  const deviation = { by: text, role: text, date: text, reason: text, expires: text };
  const about = {
    part: text,
    partName: text,
    operation: text,
    message: text,
    instead: text,
    why: text,
    source: text,
    assumptions: [text],
    facts: [{ name: 'part.name', value: text, from: 'stated' as const, note: text }],
  };
  return planReport({
    file: text,
    title: text,
    verdict: 'not judged',
    notJudged: [{ sentence: text, rule: text, place: { line: 1, column: 1, endLine: 1, endColumn: 2 } }],
    lifted: [{ rule: text, pack: text, part: text, operation: text, pointer: text, by: text }],
    setAside: [{ name: text, version: text, reason: text }],
    findings: [
      placed({ ...about, rule: 'a', pack: 'general', severity: 'stop', fingerprint: '1' }),
      placed({ ...about, rule: text, pack: text, severity: 'hold', fingerprint: '2', deviation }),
      placed({ ...about, rule: 'c', pack: 'general', severity: 'note', fingerprint: '3' }),
    ],
  });
}
