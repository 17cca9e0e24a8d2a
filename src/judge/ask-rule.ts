import type { Fact } from '../facts/fact.ts';
import type { Line, Rule } from '../packs/pack.ts';
import { truthOf, truthOfAll } from './truth.ts';

/**
 * What a rule says of one sheet. `passed`: a line of `when` is false. `unknown`: no line is false, but those on `facts`
 * are unknown. `lifted`: an exception holds, `by` are its lines.
 */
export type Answer =
  | { readonly kind: 'passed' }
  | { readonly kind: 'found' }
  | { readonly kind: 'unknown'; readonly facts: readonly string[] }
  | { readonly kind: 'lifted'; readonly by: readonly Line[] };

/** One object for the answer that nearly every question gets, so that asking allocates nothing. */
const passed: Answer = { kind: 'passed' };
const found: Answer = { kind: 'found' };

/** Puts a rule to a sheet. Throws TypeError when a fact is of another type than the rule's test. */
export function askRule(rule: Rule, factOf: (name: string) => Fact): Answer {
  const when = truthOfAll(rule.when, factOf);
  return when === 'false' ? passed : settleRule(rule, when === 'unknown', factOf);
}

/** The same for a rule of which no line of `when` is false; `hangs`: one of them is unknown. */
export function settleRule(rule: Rule, hangs: boolean, factOf: (name: string) => Fact): Answer {
  // An exception that holds answers the unknown too: whatever it turns out to be, nothing would be found.
  for (const lines of rule.unless) {
    if (truthOfAll(lines, factOf) === 'true') return { kind: 'lifted', by: lines };
  }
  if (!hangs) return found;
  const unknown = rule.when.filter((line) => truthOf(line.test, factOf(line.fact)) === 'unknown');
  return { kind: 'unknown', facts: unknown.map((line) => line.fact) };
}
