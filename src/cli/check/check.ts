import { builtInPacks } from '../../generated/built-in-packs.ts';
import type { PlanStage } from '../../facts/context.ts';
import type { Pack } from '../../packs/pack.ts';
import { resolvePacks } from '../../packs/layers/resolve-packs.ts';
import type { Shard } from '../../report/plan-report.ts';
import { chooseSources } from './choose-sources.ts';
import type { ChosenSources } from './choose-sources.ts';
import { complain, refuse } from '../complain.ts';
import { faultLine, loadGivenPacks } from '../judging/given-packs.ts';
import { listenForInterruption } from '../interruption.ts';
import type { Interruption } from '../interruption.ts';
import { answerTo } from './judge-each.ts';
import { unread } from '../judging/judge-source.ts';
import type { JudgingRun } from '../judging/judge-source.ts';
import { judgingRun } from '../judging/judging-run.ts';
import { lockFinder } from '../judging/lock-finder.ts';
import { filesAmong } from '../plans/plan-source.ts';
import type { Progress } from '../reporting/progress.ts';
import { openOutputs } from '../reporting/report-outputs.ts';
import type { OutputOptions, ReportOutputs } from '../reporting/report-outputs.ts';
import { runHead } from '../judging/run-head.ts';
import { runTally } from './run-tally.ts';
import type { RunTally } from './run-tally.ts';
import { walkSources } from '../plans/walk-sources.ts';

export interface CheckOptions extends OutputOptions {
  readonly asOfDay: number;
  readonly stage?: PlanStage;
  readonly rules: readonly string[];
  /** Refuse plans whose packs are not those of their lock. */
  readonly locked?: boolean;
  readonly changedSince?: string;
  readonly shard?: Shard;
  readonly progress: (total: number) => Progress;
}

type Status = 0 | 1 | 2;

/** The command `check`: judges every plan that the arguments name, writes the report, and gives the exit status. */
export async function check(args: readonly string[], options: CheckOptions): Promise<Status> {
  const given = loadGivenPacks(options.rules);
  if (!given.ok) return refuse(given.lines);
  const packs: readonly Pack[] = [...builtInPacks(), ...given.packs];
  const resolved = resolvePacks(packs, undefined);
  if (!resolved.ok) return refuse([faultLine(resolved.sentence, resolved.place)]);
  // Before anything is written: who reads the first line may answer with Ctrl-C.
  const interruption = listenForInterruption();
  const choice = chooseSources(args, process.cwd(), options.rules, options.changedSince);
  if (!choice.ok) return refuse([choice.sentence]);
  const opened = openOutputs(options, filesAmong(choice.sources), complain);
  if (!opened.ok) return refuse(opened.sentences);
  const { outputs } = opened;
  for (const remark of choice.remarks) complain(remark);

  const run = judgingRun(packs, options.asOfDay, {
    stage: options.stage,
    lockFor: lockFinder(),
    mustBeLocked: options.locked ?? false,
  });
  try {
    outputs.begin(runHead(resolved.packs, options.asOfDay, options.shard));
    const tally = await judgeAll(run, choice, options, outputs, interruption);
    const nothing = emptyVerdict(choice, options.shard);
    if (tally.plans() === 0) complain(emptySentence(args, choice, options));
    outputs.end(tally.tail(nothing));
    interruption.obey();
    return outputs.areWhole() ? tally.status(nothing) : 2;
  } catch (error) {
    // A defect of planish leaves no half of a file behind.
    outputs.drop();
    throw error;
  }
}

async function judgeAll(
  run: JudgingRun,
  { sources }: ChosenSources,
  options: CheckOptions,
  outputs: ReportOutputs,
  interruption: Interruption,
): Promise<RunTally> {
  const tally = runTally();
  const progress = options.progress(sources.length);
  const told = new Set<string>();
  const report = (plan: ReturnType<typeof unread>): void => {
    progress.clear();
    tally.add(plan);
    outputs.plan(plan);
  };
  await walkSources(sources, {
    progress,
    interruption,
    take: (source) => {
      const answer = answerTo(run, source, options.shard);
      if (answer.kind !== 'plan') return answer;
      for (const sentence of answer.drift ?? []) {
        if (told.has(sentence)) continue;
        told.add(sentence);
        progress.clear();
        complain(sentence);
      }
      report(answer.report);
      return undefined;
    },
    interrupted: (left) => {
      report(unread('(interrupted)', `The run was interrupted: ${left} were not looked at.`));
      complain(`Interrupted: ${left} were not looked at; what was judged before is reported.`);
    },
  });
  return tally;
}

/** No plan at all is never a pass, but where only some of the files were asked for, there may be none among them. */
function emptyVerdict(
  { mayBeEmpty, sources }: ChosenSources,
  shard: Shard | undefined,
): 'cleared' | 'not judged' {
  return mayBeEmpty || (shard !== undefined && sources.length > 0) ? 'cleared' : 'not judged';
}

function emptySentence(
  args: readonly string[],
  choice: ChosenSources,
  { shard, changedSince }: CheckOptions,
): string {
  const where = args.join(', ');
  if (choice.mayBeEmpty) return `No plan was changed since ${changedSince ?? ''} in: ${where}`;
  if (shard !== undefined && choice.sources.length > 0)
    return `No plan falls to part ${String(shard.index)} of ${String(shard.of)} in: ${where}`;
  return `No plan was found in: ${where}`;
}
