import type { DerivationContext, RuleStanding } from './context.ts';
import type { Fact } from './fact.ts';
import { computedOr } from './make-fact.ts';

/** What became of the rule that a deviation names, where it is not in force. */
export function ruleNoteFact(
  { ruleStanding }: DerivationContext,
  rule: string | undefined,
  at: string,
): Fact {
  const note = rule === undefined || ruleStanding === undefined ? undefined : ruleNote(ruleStanding(rule));
  return computedOr(note, at, 'The rule counts, or none is named.');
}

/** What became of a rule that is not in force, to stand behind a colon; nothing for one that is. */
function ruleNote(standing: RuleStanding): string | undefined {
  switch (standing.kind) {
    case 'current':
      return undefined;
    case 'ended':
      return standing.replacedBy === undefined
        ? `the rule ended with ${standing.with}, and none took its place`
        : `the rule ended with ${standing.with}; ${standing.replacedBy} took its place`;
    case 'later':
      return `the rule begins with ${standing.with}, and the plan is judged by an earlier version`;
    case 'no such rule':
      return standing.nearest.length === 0
        ? 'no pack here has such a rule'
        : `no pack here has such a rule; the nearest known is ${standing.nearest.join(' or ')}`;
  }
}
