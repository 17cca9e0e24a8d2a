import type { Verdict } from '../judge/verdict.ts';
import { verdicts } from '../judge/verdict.ts';
import type { NotJudgedReason, PlacedFinding, PlanReport } from '../report/plan-report.ts';
import type { MovedFact } from './moved-facts.ts';

/**
 * What became of a plan: `no longer passes` and `passes now` cross the line that the exit status of `check` draws; `worse` and
 * `better` are steps on one side of it.
 */
export type Change = 'no longer passes' | 'worse' | 'passes now' | 'better' | 'same' | 'not judged';

/** One plan, judged by two versions of its rules. */
export interface RecheckedPlan {
  readonly file: string;
  readonly title?: string;
  readonly stage?: PlanReport['stage'];
  readonly digest?: string;
  /** The day as of which both judged, ISO 8601; absent for a plan that could not be read. */
  readonly asOf?: string;
  readonly change: Change;
  /** Absent when it could not be judged. */
  readonly then?: Verdict;
  readonly now?: Verdict;
  /** What makes the verdict worse, or what made it worse then: the findings that weigh more than the better verdict. */
  readonly reasons: readonly PlacedFinding[];
  readonly notJudged: readonly NotJudgedReason[];
  /** What differs between the record of the plan and what this planish computes by the same rules; absent without a record. */
  readonly computing?: Computing;
}

/** A record (an earlier report, or the sign-off) beside what is computed today by the same versions of the rules. */
export interface Computing {
  readonly by: 'report' | 'sign-off';
  /** Absent in a record that does not say it. */
  readonly planish?: string;
  readonly facts?: number;
  /** Whether it was computed by another planish version or fact schema. */
  readonly isOther: boolean;
  readonly verdictThen?: Verdict;
  /** By the same rules, today. */
  readonly verdictAgain?: Verdict;
  readonly moved: readonly MovedFact[];
  /** Findings of the record that are not found again by the same rules, and the other way round. */
  readonly gone: readonly string[];
  readonly come: readonly string[];
  /** Where the record cannot be held against today: other content of the plan or of a pack. */
  readonly remarks: readonly string[];
}

const rank = (verdict: Verdict): number => verdicts.indexOf(verdict);

const weights = { note: 0, hold: 1, stop: 2 } as const;

/** Whether `check` would end with status 0. */
export function passes(verdict: Verdict, stage: PlanReport['stage']): boolean {
  return verdict === 'cleared' || (verdict === 'held' && stage === 'draft');
}

/** The change from one verdict to another, and the findings that make it. Either may stand in for a recorded one. */
export function changeBetween(
  then: Verdict,
  now: Verdict,
  stage: PlanReport['stage'],
  findings: { readonly then: readonly PlacedFinding[]; readonly now: readonly PlacedFinding[] },
): { readonly change: Change; readonly reasons: readonly PlacedFinding[] } {
  if (now === 'not judged') return { change: 'not judged', reasons: [] };
  if (rank(then) === rank(now)) return { change: 'same', reasons: [] };
  if (rank(now) > rank(then)) {
    const lost = passes(then, stage) && !passes(now, stage);
    return { change: lost ? 'no longer passes' : 'worse', reasons: heavierThan(then, findings.now) };
  }
  const won = !passes(then, stage) && passes(now, stage);
  return { change: won ? 'passes now' : 'better', reasons: heavierThan(now, findings.then) };
}

/** What is found about a signature follows from the other findings; it is a reason only where it is the only one. */
function heavierThan(verdict: Verdict, findings: readonly PlacedFinding[]): readonly PlacedFinding[] {
  const heavy = findings.filter(
    ({ finding }) => finding.deviation === undefined && weights[finding.severity] > rank(verdict),
  );
  const causes = heavy.filter(({ finding }) => !finding.pointer.startsWith('/sign_off'));
  return causes.length > 0 ? causes : heavy;
}
