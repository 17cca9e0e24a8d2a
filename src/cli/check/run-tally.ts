import { worstVerdict } from '../../judge/verdict.ts';
import type { Verdict } from '../../judge/verdict.ts';
import type { PlanReport, RunTail } from '../../report/plan-report.ts';
import { exitStatus } from '../exit-status.ts';

/** Counts the plans of a run and knows what it comes to. */
export interface RunTally {
  readonly add: (plan: PlanReport) => void;
  readonly plans: () => number;
  /** `empty`: the verdict of a run of no plan at all. */
  readonly tail: (empty: Verdict) => RunTail;
  readonly status: (empty: Verdict) => 0 | 1 | 2;
}

export function runTally(): RunTally {
  const verdicts = { cleared: 0, held: 0, stopped: 0, 'not judged': 0 };
  let plans = 0;
  let heldAtDraft = true;
  const worst = (empty: Verdict): Verdict =>
    worstVerdict(
      (['cleared', 'held', 'stopped', 'not judged'] as const).filter((one) => verdicts[one] > 0),
    ) ?? empty;
  return {
    add: ({ verdict, stage }) => {
      plans += 1;
      verdicts[verdict] += 1;
      if (verdict === 'held' && stage !== 'draft') heldAtDraft = false;
    },
    plans: () => plans,
    tail: (empty) => ({ verdict: worst(empty), plans, verdicts }),
    status: (empty) => exitStatus(worst(empty), heldAtDraft),
  };
}
