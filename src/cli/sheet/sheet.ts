import path from 'node:path';
import { builtInPacks } from '../../generated/built-in-packs.ts';
import type { PlanStage } from '../../facts/context.ts';
import { planShown } from '../../facts/plan-shown.ts';
import { plannedHeats } from '../../facts/heat/plan-heat.ts';
import { resolvePacks } from '../../packs/layers/resolve-packs.ts';
import { readPlanFile } from '../../plan/read-file.ts';
import { severityCounts } from '../../report/count-words.ts';
import type { PlanReport, RunHead } from '../../report/plan-report.ts';
import { sheetHtml } from '../../report/sheet/sheet-html.ts';
import type { SheetReport } from '../../report/sheet/sheet-report.ts';
import { visibleText } from '../../report/visible-text.ts';
import { complain, refuse } from '../complain.ts';
import { exitStatus } from '../exit-status.ts';
import { faultLine, loadGivenPacks } from '../judging/given-packs.ts';
import { boundsOf } from '../heat/heat.ts';
import { judgeOpened, openPlan } from '../judging/judge-source.ts';
import type { OpenedPlan } from '../judging/judge-source.ts';
import { judgingRun } from '../judging/judging-run.ts';
import { lockFinder } from '../judging/lock-finder.ts';
import { readStandardInput } from '../plans/read-standard-input.ts';
import { runHead } from '../judging/run-head.ts';
import { overwrittenInput } from '../writing/overwritten-input.ts';
import { writeNewFile } from '../writing/write-new-file.ts';
import { writeOut } from '../write-out.ts';

export interface SheetOptions {
  /** `-` for standard output. */
  readonly output: string;
  readonly force: boolean;
  readonly asOfDay: number;
  readonly stage?: PlanStage;
  readonly rules: readonly string[];
  readonly locked: boolean;
}

/** The command `sheet`: writes one plan as a page. The exit status is that of `check` on it; 2 where no page could be written. */
export function sheet(plan: string, options: SheetOptions): 0 | 1 | 2 {
  const given = loadGivenPacks(options.rules);
  if (!given.ok) return refuse(given.lines);
  const packs = [...builtInPacks(), ...given.packs];
  const resolved = resolvePacks(packs, undefined);
  if (!resolved.ok) return refuse([faultLine(resolved.sentence, resolved.place)]);
  if (plan !== '-' && overwrittenInput([options.output], [plan]) !== undefined)
    return refuse([`${plan} is the plan itself; the page needs another name.`]);
  const file = plan === '-' ? readStandardInput() : readPlanFile(plan);
  if (!file.ok) return refuse([`${plan}: ${file.fault.sentence}`]);

  const run = judgingRun(packs, options.asOfDay, {
    stage: options.stage,
    lockFor: lockFinder(),
    mustBeLocked: options.locked,
  });
  const shown = plan === '-' ? '(standard input)' : plan.replaceAll(path.sep, '/');
  const folder = plan === '-' ? process.cwd() : path.dirname(path.resolve(plan));
  const opened = openPlan(run, shown, file.bytes, true, folder);
  if (opened.kind !== 'opened')
    return refuse(opened.kind === 'plan' ? reasons(opened.report) : [`${shown}: not a plan.`]);
  for (const sentence of opened.drift) complain(sentence);

  const answer = sheetReport(opened, runHead(resolved.packs, options.asOfDay));
  return write(sheetHtml(answer), options, answer.report);
}

/** Judges a plan that is open, and gathers what its page shows. */
export function sheetReport(opened: OpenedPlan, head: RunHead): SheetReport {
  const { plan, context, packs } = opened;
  const { report, sheets } = judgeOpened(opened);
  return {
    head,
    report,
    shown: planShown(plan, context, sheets),
    heats: plannedHeats(plan, context, boundsOf(packs.layers)),
  };
}

function write(page: string, { output, force }: SheetOptions, report: PlanReport): 0 | 1 | 2 {
  const status = exitStatus(report.verdict, report.stage === 'draft');
  if (output === '-') {
    writeOut(page);
    return status;
  }
  const fault = writeNewFile(output, page, force);
  if (fault !== undefined) return refuse([fault]);
  writeOut(
    `${visibleText(output)}: written. ${report.verdict.toUpperCase()}: ${severityCounts(report.counts)}.\n`,
  );
  return status;
}

function reasons({ file, notJudged }: PlanReport): readonly string[] {
  return notJudged.map(({ sentence, place }) =>
    place === undefined
      ? `${file}: ${sentence}`
      : `${file}, line ${String(place.line)}, column ${String(place.column)}: ${sentence}`,
  );
}
