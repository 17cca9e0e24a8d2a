import { builtInPacks } from '../../generated/built-in-packs.ts';
import { factSchemaVersion } from '../../generated/fact-names.ts';
import type { PlanStage } from '../../facts/context.ts';
import type { Pack } from '../../packs/pack.ts';
import { resolvePacks } from '../../packs/layers/resolve-packs.ts';
import { readPlanFile } from '../../plan/read-file.ts';
import { formatDay } from '../../quantity/format-day.ts';
import { recheckCsv } from '../../recheck/recheck-csv.ts';
import { recheckJson } from '../../recheck/recheck-json.ts';
import { collectRecheck } from '../../recheck/recheck-report.ts';
import type { RecheckHead, RecheckReport } from '../../recheck/recheck-report.ts';
import { recheckText } from '../../recheck/recheck-text.ts';
import type { UsedPack } from '../../report/plan-report.ts';
import { complain, refuse } from '../complain.ts';
import { readEarlierReport } from './earlier-report.ts';
import { findPlans } from '../plans/find-plans.ts';
import { faultLine, loadGivenPacks } from '../judging/given-packs.ts';
import { judgingRun } from '../judging/judging-run.ts';
import { listenForInterruption } from '../interruption.ts';
import type { Interruption } from '../interruption.ts';
import type { PlanSource } from '../plans/plan-source.ts';
import type { Progress } from '../reporting/progress.ts';
import { readStandardInput } from '../plans/read-standard-input.ts';
import { recheckSource, unjudged } from './recheck-source.ts';
import type { RecheckAnswer, RecheckRun } from './recheck-source.ts';
import { ruleHistories } from './rule-histories.ts';
import { usedPack } from '../judging/used-pack.ts';
import { version } from '../version.ts';
import { writeOut } from '../write-out.ts';
import { walkSources } from '../plans/walk-sources.ts';
import type { Aside } from '../plans/walk-sources.ts';

export type RecheckForm = 'text' | 'json' | 'csv';

export interface RecheckOptions {
  readonly from: readonly string[];
  readonly to: readonly string[];
  /** The day as of which all are judged; without it each has its own. */
  readonly asOfDay?: number;
  readonly today: number;
  readonly stage?: PlanStage;
  readonly rules: readonly string[];
  /** A JSON or NDJSON report of an earlier check. */
  readonly report?: string;
  readonly format: RecheckForm;
  readonly mostPlans: number;
  readonly colour: boolean;
  readonly columns: number;
  readonly progress: (total: number) => Progress;
}

/** The command `recheck`: judges an archive by two versions, tells what changes and why, and gives the exit status. */
export async function recheck(args: readonly string[], options: RecheckOptions): Promise<0 | 1 | 2> {
  const given = loadGivenPacks(options.rules);
  if (!given.ok) return refuse(given.lines);
  const packs: readonly Pack[] = [...builtInPacks(), ...given.packs];
  const from = namedPacks(packs, options.from, '--from');
  const to = namedPacks(packs, options.to, '--to');
  if (!from.ok || !to.ok) return refuse([...(from.ok ? [] : from.lines), ...(to.ok ? [] : to.lines)]);
  const earlier = options.report === undefined ? undefined : readEarlierReport(options.report);
  if (earlier?.ok === false) return refuse(earlier.sentences);

  const run: RecheckRun = {
    ...judgingRun(packs, options.today, { stage: options.stage }),
    from: options.from,
    to: options.to,
    ...(options.asOfDay === undefined ? {} : { givenDay: options.asOfDay }),
    ...(earlier === undefined ? {} : { earlier: earlier.report }),
    sameFacts: new WeakMap(),
  };
  const interruption = listenForInterruption();
  const collector = await judgeAll(run, findPlans(args, process.cwd()), options.progress, interruption);
  const head: RecheckHead = {
    planish: version,
    factSchema: factSchemaVersion,
    from: from.packs,
    to: to.packs,
    ...(options.asOfDay === undefined ? {} : { asOf: formatDay(options.asOfDay) }),
    today: formatDay(options.today),
    ...(options.report === undefined ? {} : { earlier: options.report }),
  };
  const report = collector.report(head, earlier?.report.left() ?? [], ruleHistories(packs));
  if (report.plans === 0) complain(`No plan was found in: ${args.join(', ')}`);
  writeOut(formOf(report, options));
  interruption.obey();
  return collector.status();
}

function formOf(report: RecheckReport, options: RecheckOptions): string {
  switch (options.format) {
    case 'text':
      return recheckText(report, options);
    case 'json':
      return recheckJson(report);
    case 'csv':
      return recheckCsv(report);
  }
}

async function judgeAll(
  run: RecheckRun,
  sources: readonly PlanSource[],
  progressOf: RecheckOptions['progress'],
  interruption: Interruption,
): Promise<ReturnType<typeof collectRecheck>> {
  const collector = collectRecheck();
  await walkSources(sources, {
    progress: progressOf(sources.length),
    interruption,
    take: (source) => {
      const answer = answerTo(run, source);
      if (answer.kind !== 'plan') return answer;
      collector.add(answer.plan);
      return undefined;
    },
    interrupted: (left) => {
      const sentence = `The run was interrupted: ${left} were not looked at.`;
      collector.add(unjudged({ file: '(interrupted)', notJudged: [{ sentence }] }));
    },
  });
  return collector;
}

type Answer = RecheckAnswer | Aside;

function answerTo(run: RecheckRun, source: PlanSource): Answer {
  if (source.kind === 'passed over')
    return { kind: 'remark', sentence: `${source.shown}: ${source.sentence}` };
  if (source.kind === 'nothing found') return cannot(source.shown, source.sentence);
  const file = source.kind === 'file' ? readPlanFile(source.path) : readStandardInput();
  if (!file.ok) return cannot(source.shown, file.fault.sentence);
  try {
    return recheckSource(run, source.shown, file.bytes, source.kind !== 'file' || source.named);
  } catch (error) {
    // A defect of planish that one plan brings out must not keep the others from being judged.
    const reason = error instanceof Error ? error.message : String(error);
    return cannot(source.shown, `planish itself failed on this plan: ${reason}.`);
  }
}

function cannot(file: string, sentence: string): Answer {
  return { kind: 'plan', plan: unjudged({ file, notJudged: [{ sentence }] }) };
}

type Named =
  | { readonly ok: true; readonly packs: readonly UsedPack[] }
  | { readonly ok: false; readonly lines: readonly string[] };

/** The versions that the pins of an option choose, so that a slip in them is told before any plan is read. */
function namedPacks(packs: readonly Pack[], pins: readonly string[], option: string): Named {
  const resolved = resolvePacks(packs, pins);
  if (!resolved.ok) {
    const sentence = resolved.sentence.replace(/^The plan asks for/u, `${option} asks for`);
    return { ok: false, lines: [faultLine(sentence, resolved.place)] };
  }
  const names = new Set(pins.map((pin) => pin.split('@')[0]));
  return { ok: true, packs: resolved.packs.layers.filter(({ name }) => names.has(name)).map(usedPack) };
}
