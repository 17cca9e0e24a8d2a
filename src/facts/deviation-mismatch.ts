import type { PlanDeviationsItem } from '../generated/plan-types.ts';
import { nearestWords } from '../plan/nearest-word.ts';
import type { Fact } from './fact.ts';
import { computedOr } from './make-fact.ts';

/** What a mismatch is told from: a finding, without its words. */
export interface FoundOn {
  readonly rule: string;
  readonly severity: 'stop' | 'hold' | 'note';
  readonly part?: string;
  readonly operation?: string;
}

/** In what a permit departs from the finding that it most likely means, to stand behind a colon. */
export function mismatchFact(
  deviation: PlanDeviationsItem,
  found: readonly FoundOn[],
  isRuleInForce: boolean,
  at: string,
): Fact {
  const note =
    isRuleInForce && deviation.rule !== undefined ? mismatch(deviation, deviation.rule, found) : undefined;
  return computedOr(note, at, 'It matches a finding, names no rule, or no finding is near it.');
}

function mismatch(
  { part, operation }: PlanDeviationsItem,
  rule: string,
  found: readonly FoundOn[],
): string | undefined {
  const same = found.filter((one) => one.rule === rule);
  if (same.length === 0) return nearestFinding(rule, part, found);
  const onPart = same.filter((one) => one.part === part);
  if (onPart.length > 0) {
    const words = distinct(onPart.map((one) => one.operation));
    return `the finding is on ${words.length === 0 ? 'no operation' : `the operation ${quoted(words)}`}, not on “${operation ?? ''}”`;
  }
  const parts = distinct(same.map((one) => one.part));
  if (parts.length === 0) return 'that finding is on no part; leave `part` out';
  const where = `that finding is on ${quoted(parts)}`;
  return part === undefined ? `it names no part, and ${where}` : `it is for \`${part}\`, and ${where}`;
}

/** Nothing was found by that rule: what else could have been meant, on the same part. */
function nearestFinding(
  rule: string,
  part: string | undefined,
  found: readonly FoundOn[],
): string | undefined {
  const holds = found.filter((one) => one.severity === 'hold' && one.part === part);
  const near = nearestWords(rule, distinct(holds.map((one) => one.rule)));
  if (near.length === 0) return undefined;
  return `nothing is found by that rule; the nearest hold there is ${quoted(near)}`;
}

const mostNamed = 4;

function quoted(words: readonly string[]): string {
  const shown = words.slice(0, mostNamed).map((word) => `\`${word}\``);
  const more = words.length - shown.length;
  return more > 0 ? `${shown.join(', ')} and ${String(more)} more` : shown.join(', ');
}

function distinct(words: readonly (string | undefined)[]): readonly string[] {
  return [...new Set(words.filter((word) => word !== undefined))];
}
