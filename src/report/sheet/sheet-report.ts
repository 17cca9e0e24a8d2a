import type { PlannedHeat } from '../../facts/heat/plan-heat.ts';
import type { PlanShown } from '../../facts/plan-shown.ts';
import type { PlanReport, RunHead } from '../plan-report.ts';

/** What the sheet of one plan is written from. Everything is judged and computed before. */
export interface SheetReport {
  readonly head: RunHead;
  readonly report: PlanReport;
  readonly shown: PlanShown;
  /** In the order of the plan. */
  readonly heats: readonly PlannedHeat[];
}
