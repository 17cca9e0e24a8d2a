import { builtInPacks } from '../generated/built-in-packs.ts';
import { factSchemaVersion } from '../generated/fact-names.ts';
import type { PlanStage } from '../facts/context.ts';
import { rememberingLapSolver, rememberingStripSolver } from '../facts/strip-solver.ts';
import { worstVerdict } from '../judge/verdict.ts';
import type { Verdict } from '../judge/verdict.ts';
import type { Pack } from '../packs/pack.ts';
import { resolvePacks } from '../packs/resolve-packs.ts';
import { readPlanFile } from '../plan/read-file.ts';
import { formatDay } from '../quantity/format-day.ts';
import { jsonForm } from '../report/json-form.ts';
import type { PlanReport, ReportForm } from '../report/plan-report.ts';
import { textForm } from '../report/text-form.ts';
import { visibleText } from '../report/visible-text.ts';
import { dictionary } from './dictionary.ts';
import { exitStatus } from './exit-status.ts';
import { findPlans } from './find-plans.ts';
import { judgeSource, unread } from './judge-source.ts';
import type { JudgingRun, SourceAnswer } from './judge-source.ts';
import type { PlanSource } from './plan-source.ts';
import { readStandardInput } from './read-standard-input.ts';
import { loadGivenPacks } from './given-packs.ts';
import { version } from './version.ts';
import { writeOut } from './write-out.ts';

export interface CheckOptions {
  readonly format: 'text' | 'json';
  readonly asOfDay: number;
  readonly stage?: PlanStage;
  readonly quiet: boolean;
  readonly rules: readonly string[];
  readonly colour: boolean;
  readonly columns: number;
}

/** The command `check`: judges every plan that the arguments name, writes the report, and gives the exit status. */
export function check(args: readonly string[], options: CheckOptions): number {
  const given = loadGivenPacks(options.rules);
  if (!given.ok) {
    for (const line of given.lines) complain(line);
    return 2;
  }
  const packs: readonly Pack[] = [...builtInPacks(), ...given.packs];
  const resolved = resolvePacks(packs, undefined);
  if (!resolved.ok) {
    complain(resolved.sentence);
    return 2;
  }
  const sources = findPlans(args, process.cwd());
  const run: JudgingRun = {
    packs,
    dictionary,
    asOfDay: options.asOfDay,
    ...(options.stage === undefined ? {} : { stage: options.stage }),
    solveStrip: rememberingStripSolver(),
    solveLap: rememberingLapSolver(),
    resolved: new Map(),
  };
  const form: ReportForm = options.format === 'json' ? jsonForm() : textForm(options);
  let listening = writeOut(
    form.begin({
      planish: version,
      packs: resolved.packs.layers.map(({ name, version: packVersion, digest, released }) => ({
        pack: name,
        version: packVersion,
        digest,
        released,
      })),
      factSchema: factSchemaVersion,
      asOf: formatDay(options.asOfDay),
    }),
  );
  const tally = {
    plans: 0,
    heldAtDraft: true,
    verdicts: { cleared: 0, held: 0, stopped: 0, 'not judged': 0 },
  };
  let skipped = 0;
  for (const source of sources) {
    const answer = answerTo(run, source);
    if (answer.kind === 'skipped') skipped += 1;
    if (answer.kind === 'not a plan') complain(`${source.shown}: not a plan.`);
    if (answer.kind !== 'plan') continue;
    count(tally, answer.report);
    // A reader that has gone away changes nothing of the exit status: the rest is judged unheard.
    if (listening) listening = writeOut(form.plan(answer.report));
  }
  if (skipped > 0)
    complain(`${String(skipped)} ${skipped === 1 ? 'file' : 'files'} skipped: rule packs or scenarios.`);
  if (tally.plans === 0) complain(`No plan was found in: ${args.join(', ')}`);
  const seen = verdictsOf(tally.verdicts);
  const verdict = worstVerdict(seen) ?? 'not judged';
  if (listening) writeOut(form.end({ verdict, plans: tally.plans, verdicts: tally.verdicts }));
  return exitStatus(verdict, tally.heldAtDraft);
}

interface Tally {
  plans: number;
  /** Whether every plan that is held is a draft. */
  heldAtDraft: boolean;
  readonly verdicts: Record<Verdict, number>;
}

function count(tally: Tally, report: PlanReport): void {
  tally.plans += 1;
  tally.verdicts[report.verdict] += 1;
  if (report.verdict === 'held' && report.stage !== 'draft') tally.heldAtDraft = false;
}

function verdictsOf(counts: Readonly<Record<Verdict, number>>): readonly Verdict[] {
  return (['cleared', 'held', 'stopped', 'not judged'] as const).filter((verdict) => counts[verdict] > 0);
}

function answerTo(run: JudgingRun, source: PlanSource): SourceAnswer {
  if (source.kind === 'nothing found') return { kind: 'plan', report: unread(source.shown, source.sentence) };
  const file = source.kind === 'file' ? readPlanFile(source.path) : readStandardInput();
  if (!file.ok) return { kind: 'plan', report: unread(source.shown, file.fault.sentence) };
  try {
    return judgeSource(run, source.shown, file.bytes, source.kind !== 'file' || source.named);
  } catch (error) {
    // A defect of planish that one plan brings out must not keep the others from being judged.
    const reason = error instanceof Error ? error.message : String(error);
    return { kind: 'plan', report: unread(source.shown, `planish itself failed on this plan: ${reason}.`) };
  }
}

function complain(line: string): void {
  writeOut(`planish: ${visibleText(line)}\n`, 'complaints');
}
