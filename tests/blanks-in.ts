import { builtInPacks } from '../src/generated/built-in-packs.ts';
import { factsOf, readTemplate } from '../src/packs/message-template.ts';
import type { PlanReport } from '../src/report/plan-report.ts';

const rules = new Map(builtInPacks().flatMap(({ rules }) => rules.map((rule) => [rule.id, rule] as const)));

/** Facts that a finding's sentences name outside of square brackets and that were not known: there the reader meets a blank. */
export function blanksIn(report: PlanReport): readonly string[] {
  return report.findings.flatMap(({ finding }) => {
    const rule = rules.get(finding.rule);
    if (rule === undefined || finding.asksUnknown) return [];
    const named = new Set([...neededIn(rule.message), ...neededIn(rule.instead)]);
    return finding.facts
      .filter(({ name, from }) => from === 'unknown' && named.has(name))
      .map(({ name }) => `${finding.rule}: ${name}`);
  });
}

function neededIn(text: string): readonly string[] {
  const template = readTemplate(text);
  if (!template.ok) throw new Error(template.sentence);
  return factsOf(template.segments.filter(({ kind }) => kind !== 'optional'));
}
