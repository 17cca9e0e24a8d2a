import type { DraftFinding } from './draft-finding.ts';
import { askersOf, notJudgedWithout } from './not-judged-without.ts';
import type { Question } from './unknown-holds.ts';

/** Holds and stops on entries that cannot be read as they stand, by the place of the entry. */
export type EntryFindings = ReadonlyMap<string, DraftFinding>;

export interface ToldOnce {
  /** Questions that no finding on an entry speaks for. */
  readonly questions: readonly Question[];
  /** Those that hang on a finding on an entry. */
  readonly hanging: ReadonlyMap<DraftFinding, readonly Question[]>;
}

/** One mistake is told once: what is unknown because its entry cannot be read is no question of its own. */
export function tellOnce(questions: readonly Question[], entries: EntryFindings): ToldOnce {
  const hanging = new Map<DraftFinding, Question[]>();
  if (entries.size === 0) return { questions, hanging };
  const others = questions.filter((question) => {
    const entry = question.fact.at === undefined ? undefined : entries.get(question.fact.at);
    if (entry === undefined) return true;
    hanging.set(entry, [...(hanging.get(entry) ?? []), question]);
    return false;
  });
  return { questions: others, hanging };
}

/**
 * The finding on an entry says what hangs on it. It stands for a stop where a stop hangs on it, so that no permit passes the one for
 * the other.
 */
export function withHanging(draft: DraftFinding, questions: readonly Question[] | undefined): DraftFinding {
  if (questions === undefined) return draft;
  return {
    ...draft,
    why: `${draft.why} ${notJudgedWithout(askersOf(questions))}`,
    standsForStop: draft.standsForStop || questions.some(({ rule }) => rule.rule.severity === 'stop'),
  };
}
