import { joinWords } from './show-facts.ts';

/** A sentence on the rules that cannot be judged as long as something is unknown. */
export function notJudgedWithout(ruleIds: readonly string[]): string {
  return `What cannot be judged without it: ${joinWords(ruleIds)}.`;
}
