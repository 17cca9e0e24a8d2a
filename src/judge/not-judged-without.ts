import type { CompiledRule } from './compiled-rule.ts';
import { compareSeverities } from './order-findings.ts';
import { joinWords } from './show-facts.ts';

/** On a word that is misspelt thirty rules can hang; after these nobody reads on. */
const mostNamed = 6;

/** The rules that ask, each once, the gravest first. */
export function askersOf(questions: readonly { readonly rule: CompiledRule }[]): readonly CompiledRule[] {
  return [...new Set(questions.map(({ rule }) => rule))].sort(
    (a, b) => compareSeverities(a.rule.severity, b.rule.severity) || a.order - b.order,
  );
}

/** A sentence on the rules that cannot be judged as long as something is unknown. */
export function notJudgedWithout(askers: readonly CompiledRule[]): string {
  const ids = askers.map(({ rule }) => rule.id);
  const more = ids.length - mostNamed;
  const named = more > 1 ? [...ids.slice(0, mostNamed), `${more} more rules`] : ids;
  return `What cannot be judged without it: ${joinWords(named)}.`;
}
