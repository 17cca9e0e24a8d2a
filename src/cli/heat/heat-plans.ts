import path from 'node:path';
import type { HeatBounds } from '../../facts/heat/heat-limits.ts';
import { plannedHeats } from '../../facts/heat/plan-heat.ts';
import type { Pack } from '../../packs/pack.ts';
import type { Layer } from '../../packs/layers/resolve-packs.ts';
import { nodeAt } from '../../plan/node-at.ts';
import { pointerSteps } from '../../plan/pointer.ts';
import { readPlanFile } from '../../plan/read-file.ts';
import { placeOf } from '../../plan/source-text.ts';
import type { HeatPlanReport } from '../../report/heat/heat-report.ts';
import { findPlans } from '../plans/find-plans.ts';
import { openPlan } from '../judging/judge-source.ts';
import type { JudgingRun, OpenedPlan } from '../judging/judge-source.ts';
import { judgingRun } from '../judging/judging-run.ts';
import { lockFinder } from '../judging/lock-finder.ts';
import type { PlanSource } from '../plans/plan-source.ts';
import { readStandardInput } from '../plans/read-standard-input.ts';

export interface HeatsOfPlans {
  readonly plans: readonly HeatPlanReport[];
  readonly complaints: readonly string[];
}

/** The heats of every plan that the arguments name, found and opened as `check` does. */
export function heatsOfPlans(
  args: readonly string[],
  packs: readonly Pack[],
  asOfDay: number,
  boundsOf: (layers: readonly Layer[]) => HeatBounds,
): HeatsOfPlans {
  const run = judgingRun(packs, asOfDay, { lockFor: lockFinder() });
  const plans: HeatPlanReport[] = [];
  const complaints: string[] = [];
  for (const source of findPlans(args, process.cwd())) {
    const answer = heatsOf(run, source, boundsOf);
    if (typeof answer === 'string') complaints.push(answer);
    else plans.push(answer);
  }
  if (plans.length === 0) complaints.push(`No plan was found in: ${args.join(', ')}`);
  return { plans, complaints };
}

function heatsOf(
  run: JudgingRun,
  source: PlanSource,
  boundsOf: (layers: readonly Layer[]) => HeatBounds,
): HeatPlanReport | string {
  const unread = (sentence: string): HeatPlanReport => ({
    file: source.shown,
    heats: [],
    notJudged: [{ sentence }],
  });
  if (source.kind === 'nothing found') return unread(source.sentence);
  if (source.kind === 'passed over') return `${source.shown}: ${source.sentence}`;
  const file = source.kind === 'file' ? readPlanFile(source.path) : readStandardInput();
  if (!file.ok) return unread(file.fault.sentence);
  try {
    const isNamed = source.kind !== 'file' || source.named;
    const folder = source.kind === 'file' ? path.dirname(source.path) : process.cwd();
    const opened = openPlan(run, source.shown, file.bytes, isNamed, folder);
    switch (opened.kind) {
      case 'opened':
        return shown(opened, source.shown, boundsOf);
      case 'plan':
        return { file: source.shown, heats: [], notJudged: opened.report.notJudged };
      case 'skipped':
        return `${source.shown}: skipped, a rule pack or a scenario.`;
      case 'not a plan':
        return `${source.shown}: not a plan.`;
    }
  } catch (error) {
    // A defect of planish that one plan brings out must not keep the others from being shown.
    const reason = error instanceof Error ? error.message : String(error);
    return unread(`planish itself failed on this plan: ${reason}.`);
  }
}

function shown(
  { plan, context, packs, root, source, title }: OpenedPlan,
  file: string,
  boundsOf: (layers: readonly Layer[]) => HeatBounds,
): HeatPlanReport {
  const heats = plannedHeats(plan, context, boundsOf(packs.layers)).map((heat) => {
    const start = nodeAt(root, pointerSteps(heat.at))?.range.start ?? 0;
    return { heat, line: placeOf(source, { start, end: start }).line };
  });
  return { file, ...(title === undefined ? {} : { title }), heats, notJudged: [] };
}
