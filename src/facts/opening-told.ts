import type { Operation } from '../generated/plan-types.ts';
import { saidInClause } from '../plan/said-in-clause.ts';

/** More than a drill leaves: a hole with two sides, a window, or metal put over it. English alone is read; common practice. */
const opening =
  /\b(?:opening|window|cut-?out)s? of (?:about )?\d+\s?mm\b|\d\s?mm (?:by|x|×) ?\d+\s?mm\b|\b(?:closed|covered|filled) (?:\w+ ){0,2}(?:with|by) (?:a |an |the |new )?(?:\w+ )?(?:plates?|patch(?:es)?)\b/i;

/** The words of a drilling that tell of an opening. */
export function openingTold({ do: word, reason, note, added_metal: added }: Operation): string | undefined {
  if (word !== 'drill') return undefined;
  return [reason, note, added]
    .map((text) => saidInClause(text, opening))
    .find((words) => words !== undefined);
}
