import type { PlanReport, RunHead, Shard } from '../../report/plan-report.ts';
import { complain } from '../complain.ts';
import { unread } from '../judging/judge-source.ts';
import { readReport } from './read-report.ts';
import { openOutputs } from '../reporting/report-outputs.ts';
import type { OutputOptions, ReportOutputs } from '../reporting/report-outputs.ts';
import { runTally } from '../check/run-tally.ts';

/**
 * The command `merge`: many reports of one job as one, in the order in which they are named. Whatever is amiss (a report that is
 * cut off, of other rules or another day, a part of the job that is not there) stands in the merged report as not judged, for a lost
 * part must never look like a pass. Gives the status that `check` of all would give.
 */
export function merge(files: readonly string[], options: OutputOptions): 0 | 1 | 2 {
  const opened = openOutputs(options, files, complain);
  if (!opened.ok) {
    for (const line of opened.sentences) complain(line);
    return 2;
  }
  const { outputs } = opened;
  const tally = runTally();
  const job = mergedJob();
  const report = (plan: PlanReport): void => {
    tally.add(plan);
    outputs.plan(plan);
  };
  for (const file of files) {
    for (const piece of readReport(file)) {
      if (piece.kind === 'fault') {
        job.hold(unread(file, piece.sentence));
        continue;
      }
      const difference = job.join(file, piece.head, outputs);
      if (difference !== undefined) {
        job.hold(unread(file, difference));
        break;
      }
      if (piece.kind === 'end') job.end(piece.head);
      else if (job.isNew(piece.plan)) report(piece.plan);
    }
  }
  if (!job.isBegun()) {
    for (const { file, notJudged } of job.held()) complain(`${file}: ${notJudged[0]?.sentence ?? ''}`);
    if (job.held().length === 0) complain('No report of planish was found.');
    outputs.drop();
    return 2;
  }
  for (const plan of [...job.held(), ...job.gaps()]) report(plan);
  if (job.repeated() > 0)
    complain(`${String(job.repeated())} plans were in more than one report and are counted once.`);
  if (tally.plans() === 0) complain('No plan was found in these reports.');
  outputs.end(tally.tail('not judged'));
  return outputs.areWhole() ? tally.status('not judged') : 2;
}

interface MergedJob {
  /** Keeps a fault until the end: of the first file nothing is known yet when it fails. */
  readonly hold: (plan: PlanReport) => void;
  readonly held: () => readonly PlanReport[];
  /** Begins the report with the first run; of every later one, why it does not belong to it. */
  readonly join: (file: string, head: RunHead, outputs: ReportOutputs) => string | undefined;
  readonly isBegun: () => boolean;
  readonly end: (head: RunHead) => void;
  readonly isNew: (plan: PlanReport) => boolean;
  readonly repeated: () => number;
  /** The parts of a divided job that are not there. */
  readonly gaps: () => readonly PlanReport[];
}

function mergedJob(): MergedJob {
  const held: PlanReport[] = [];
  const met = new Set<string>();
  const shards = new Map<string, Shard>();
  let first: { readonly file: string; readonly head: RunHead } | undefined;
  let repeated = 0;
  return {
    hold: (plan) => void held.push(plan),
    held: () => held,
    join: (file, head, outputs) => {
      if (first === undefined) {
        first = { file, head };
        const { shard: _part, ...whole } = head;
        outputs.begin(whole);
        return undefined;
      }
      return sameRun(first.head, head)
        ? undefined
        : `This report is of other rules, another day or another planish than ${first.file}: ${told(head)}, there ${told(first.head)}.`;
    },
    isBegun: () => first !== undefined,
    end: ({ shard }) => {
      if (shard !== undefined) shards.set(`${String(shard.index)}/${String(shard.of)}`, shard);
    },
    isNew: ({ file, digest }) => {
      const key = JSON.stringify([file, digest]);
      if (digest === undefined || !met.has(key)) {
        met.add(key);
        return true;
      }
      repeated += 1;
      return false;
    },
    repeated: () => repeated,
    gaps: () => gapsOf([...shards.values()]),
  };
}

function gapsOf(shards: readonly Shard[]): readonly PlanReport[] {
  const counts = new Set(shards.map(({ of }) => of));
  return [...counts].flatMap((of) => {
    const there = new Set(shards.filter((one) => one.of === of).map(({ index }) => index));
    const missing = Array.from({ length: of }, (_, index) => index + 1).filter((index) => !there.has(index));
    if (missing.length === 0) return [];
    const parts = `part${missing.length === 1 ? '' : 's'} ${missing.join(', ')}`;
    return [unread('(merged)', `Of ${String(of)} parts of the job the report of ${parts} is not there.`)];
  });
}

function sameRun(one: RunHead, other: RunHead): boolean {
  return told(one) === told(other);
}

/** What must agree: the same plan comes out the same only then. */
function told({ planish, packs, asOf }: RunHead): string {
  const named = packs.map(({ pack, version, digest }) => `${pack} ${version} ${digest.slice(0, 19)}`);
  return `as of ${asOf} by ${named.join(', ')}, planish ${planish}`;
}
