import type { Finding, Severity } from './finding.ts';
import { comparePointers } from './compare-pointers.ts';

const rank: Readonly<Record<Severity, number>> = { stop: 0, hold: 1, note: 2 };

/** Negative when `a` is worse than `b`. */
export function compareSeverities(a: Severity, b: Severity): number {
  return rank[a] - rank[b];
}

/**
 * The order in which findings are reported; a total one, so that two runs give the same bytes:
 * 1. part by part, the part with the worst finding first; of parts alike, what is about no part before the parts in the order of
 *    the plan (`parts`), and part ids that are not in it last;
 * 2. within a part the worst first: stop, hold, note; a hold that a deviation accepts stands among the holds; what only counts the others
 *    follows its like, and makes no part the worst;
 * 3. by place, as pointers compare;
 * 4. by rule id, pack, message and, when all that is equal, the facts looked at.
 */
export function orderFindings<F extends Omit<Finding, 'fingerprint'>>(
  findings: readonly F[],
  parts: readonly string[],
): readonly F[] {
  const places = new Map(parts.map((part, index) => [part, index]));
  const placeOf = (finding: F): number =>
    finding.part === undefined ? -1 : (places.get(finding.part) ?? parts.length);
  const worst = new Map<string | undefined, number>();
  for (const finding of findings) {
    const { part, severity } = finding;
    const weight = countsOthers(finding) === 1 ? rank.note : rank[severity];
    worst.set(part, Math.min(worst.get(part) ?? rank.note, weight));
  }
  const worstOf = ({ part }: F): number => worst.get(part) ?? rank.note;
  return [...findings].sort(
    (a, b) =>
      worstOf(a) - worstOf(b) ||
      placeOf(a) - placeOf(b) ||
      compareTexts(a.part ?? '', b.part ?? '') ||
      compareSeverities(a.severity, b.severity) ||
      countsOthers(a) - countsOthers(b) ||
      comparePointers(a.pointer, b.pointer) ||
      compareTexts(a.rule, b.rule) ||
      compareTexts(a.pack, b.pack) ||
      compareTexts(a.message, b.message) ||
      compareTexts(JSON.stringify(a.facts), JSON.stringify(b.facts)),
  );
}

const counts: ReadonlySet<string> = new Set(['sign-off.open_stops', 'sign-off.open_holds']);

/** 1 for a finding that tells how many others there are, else 0. */
function countsOthers({ facts }: Pick<Finding, 'facts'>): 0 | 1 {
  return facts.some(({ name }) => counts.has(name)) ? 1 : 0;
}

/** By code unit; a comparison by locale would order differently from one machine to the next. */
function compareTexts(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
