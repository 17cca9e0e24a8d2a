import type { FactSheet } from '../facts/sheet.ts';
import type { Plan } from '../generated/plan-types.ts';
import type { Finding } from '../judge/finding.ts';
import type { Verdict } from '../judge/verdict.ts';
import type { EntryFault } from '../plan/entry-fault.ts';

/** A student's plan, read and judged, as marking takes it. */
export interface Submission {
  /** As the marks call the student. */
  readonly name: string;
  readonly file: string;
  readonly plan: Plan;
  readonly faults: readonly EntryFault[];
  readonly sheets: readonly FactSheet[];
  readonly findings: readonly Finding[];
  /** Topic of a rule by its id. */
  readonly topics: ReadonlyMap<string, string>;
  readonly verdict: Verdict;
}

/** A submission that could not be judged, with the reason for its student. */
export interface UnreadSubmission {
  readonly name: string;
  readonly file: string;
  readonly reasons: readonly string[];
}
