import { builtInPacks } from '../../generated/built-in-packs.ts';
import type { PlanStage } from '../../facts/context.ts';
import { deriveFacts } from '../../facts/derive-facts.ts';
import { explainSheets } from '../../judge/explain-sheets.ts';
import { judgePlan } from '../../judge/judge-plan.ts';
import { readPlanFile } from '../../plan/read-file.ts';
import { placeOf } from '../../plan/source-text.ts';
import { locate } from '../../plan/locate.ts';
import { formatDay } from '../../quantity/format-day.ts';
import { explainJson, explainText } from '../../report/rules/explain-text.ts';
import { complain, refuse } from '../complain.ts';
import { dictionary } from '../dictionary.ts';
import { exitStatus } from '../exit-status.ts';
import { chooseEntry } from './explained-entry.ts';
import { findPlans } from '../plans/find-plans.ts';
import { loadGivenPacks } from '../judging/given-packs.ts';
import { folderOf } from './judge-each.ts';
import { openPlan } from '../judging/judge-source.ts';
import { judgingRun } from '../judging/judging-run.ts';
import { lockFinder } from '../judging/lock-finder.ts';
import { readStandardInput } from '../plans/read-standard-input.ts';
import { writeOut } from '../write-out.ts';

export interface ExplainOptions {
  readonly asOfDay: number;
  readonly stage?: PlanStage;
  readonly rules: readonly string[];
  readonly locked: boolean;
  readonly format: string;
  readonly columns: number;
}

/**
 * `check --explain`: shows of one part or operation of one plan each rule that was asked and what it saw. Gives the status that
 * `check` gives for the plan, so that a stopped plan never leaves 0.
 */
export function explain(args: readonly string[], entry: string, options: ExplainOptions): 0 | 1 | 2 {
  if (options.format !== 'text' && options.format !== 'json') {
    return refuse(['--explain answers as text or json.']);
  }
  const given = loadGivenPacks(options.rules);
  if (!given.ok) return refuse(given.lines);
  const [source, ...more] = findPlans(args, process.cwd());
  if (source === undefined || more.length > 0) return refuse(['--explain takes one plan.']);
  if (source.kind === 'nothing found' || source.kind === 'passed over') return refuse([source.sentence]);
  const file = source.kind === 'file' ? readPlanFile(source.path) : readStandardInput();
  if (!file.ok) return refuse([`${source.shown}: ${file.fault.sentence}`]);
  const run = judgingRun([...builtInPacks(), ...given.packs], options.asOfDay, {
    stage: options.stage,
    lockFor: lockFinder(),
    mustBeLocked: options.locked,
  });
  const opened = openPlan(run, source.shown, file.bytes, true, folderOf(source));
  if (opened.kind !== 'opened') {
    const reasons = opened.kind === 'plan' ? opened.report.notJudged.map(({ sentence }) => sentence) : [];
    return refuse(reasons.map((sentence) => `${source.shown}: ${sentence}`));
  }
  const { plan, context, packs, source: text, root } = opened;
  for (const sentence of opened.drift) complain(sentence);
  const { stage } = context;
  const { sheets, afterwards } = deriveFacts(plan, opened.faults, context);
  const chosen = chooseEntry(plan, sheets, entry);
  if (!chosen.ok) return refuse([`${source.shown}: ${chosen.sentence}`]);
  const { verdict } = judgePlan(sheets, opened.rules(), stage, afterwards);
  const explanation = {
    file: source.shown,
    of: chosen.of,
    ...{ stage, verdict, asOf: formatDay(options.asOfDay) },
    packs: packs.layers.map(({ name, version, digest }) => `${name} ${version}, ${digest}`),
    sheets: explainSheets(chosen.sheets, opened.rules(), stage).map(({ kind, at, rules }) => ({
      ...{ kind, rules },
      place: placeOf(text, locate(root, at)?.value ?? { start: 0, end: 0 }),
    })),
  };
  const form =
    options.format === 'json'
      ? explainJson(explanation, dictionary)
      : explainText(explanation, dictionary, options.columns);
  writeOut(form);
  return exitStatus(verdict, stage === 'draft');
}
