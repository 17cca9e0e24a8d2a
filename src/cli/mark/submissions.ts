import path from 'node:path';
import { deriveFacts } from '../../facts/derive-facts.ts';
import { judgePlan } from '../../judge/judge-plan.ts';
import type { Submission, UnreadSubmission } from '../../marking/submission.ts';
import { readPlanFile } from '../../plan/read-file.ts';
import { findPlans } from '../plans/find-plans.ts';
import { openPlan } from '../judging/judge-source.ts';
import type { JudgingRun } from '../judging/judge-source.ts';
import { filesAmong } from '../plans/plan-source.ts';
import type { PlanSource } from '../plans/plan-source.ts';
import { readStandardInput } from '../plans/read-standard-input.ts';

export type HandedIn =
  | {
      readonly ok: true;
      readonly plans: readonly (Submission | UnreadSubmission)[];
      /** What was named and is not there, each with its reason. */
      readonly leftOut: readonly string[];
      /** How many YAML files of the folders are no plan. */
      readonly notPlans: number;
      /** All that were looked at. */
      readonly files: readonly string[];
    }
  | { readonly ok: false; readonly sentences: readonly string[] };

/** The plans that the arguments name, judged as `check` judges them, each called by its file. */
export function submissionsFrom(
  args: readonly string[],
  run: JudgingRun,
  topics: ReadonlyMap<string, string>,
): HandedIn {
  const plans: (Submission | UnreadSubmission)[] = [];
  const leftOut: string[] = [];
  let notPlans = 0;
  const files = new Map<string, string>();
  const sources = findPlans(args, process.cwd());
  for (const source of sources) {
    if (source.kind === 'nothing found') {
      leftOut.push(`${source.shown}: ${source.sentence}`);
      continue;
    }
    const name = nameOf(source);
    const answer = submission(source, name, run, topics);
    if (answer === 'not a plan') {
      notPlans += 1;
      continue;
    }
    const before = files.get(name);
    if (before !== undefined) {
      const sentence = `${before} and ${source.shown} would both be called ${name}: give each student's file a name of its own.`;
      return { ok: false, sentences: [sentence] };
    }
    files.set(name, source.shown);
    plans.push(answer);
  }
  if (plans.length === 0)
    return {
      ok: false,
      sentences: leftOut.length > 0 ? leftOut : [`No plan was found in: ${args.join(', ')}`],
    };
  return { ok: true, plans, leftOut, notPlans, files: filesAmong(sources) };
}

/** The file's name without its ending; where all files of a class have one name, that of its folder as well. */
function nameOf(source: PlanSource): string {
  const { dir, name } = path.posix.parse(source.shown);
  return /^(?:plan|repair-plan|submission)$/iu.test(name) ? `${path.posix.basename(dir)}/${name}` : name;
}

function submission(
  source: Exclude<PlanSource, { readonly kind: 'nothing found' }>,
  name: string,
  run: JudgingRun,
  topics: ReadonlyMap<string, string>,
): Submission | UnreadSubmission | 'not a plan' {
  const unread = (reasons: readonly string[]): UnreadSubmission => ({ name, file: source.shown, reasons });
  const file = source.kind === 'file' ? readPlanFile(source.path) : readStandardInput();
  if (!file.ok) return unread([file.fault.sentence]);
  try {
    const opened = openPlan(run, source.shown, file.bytes, source.kind !== 'file' || source.named);
    if (opened.kind === 'plan')
      return unread(
        opened.report.notJudged.map(({ sentence, place }) =>
          place === undefined ? sentence : `Line ${String(place.line)}: ${sentence}`,
        ),
      );
    if (opened.kind !== 'opened') return 'not a plan';
    const { sheets, afterwards } = deriveFacts(opened.plan, opened.faults, opened.context);
    const { findings, verdict } = judgePlan(sheets, opened.rules(), opened.context.stage, afterwards);
    return {
      name,
      file: source.shown,
      plan: opened.plan,
      faults: opened.faults,
      sheets,
      findings,
      topics,
      verdict,
    };
  } catch (error) {
    // A defect of planish that one plan brings out must not keep the others from being marked.
    const reason = error instanceof Error ? error.message : String(error);
    return unread([`planish itself failed on this plan: ${reason}.`]);
  }
}
