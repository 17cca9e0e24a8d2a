import path from 'node:path';
import { readPlanFile } from '../../plan/read-file.ts';
import type { FileReading } from '../../plan/read-file.ts';
import type { Shard } from '../../report/plan-report.ts';
import { judgeSource, unread } from '../judging/judge-source.ts';
import type { JudgingRun, SourceAnswer } from '../judging/judge-source.ts';
import type { PlanSource } from '../plans/plan-source.ts';
import { readStandardInput } from '../plans/read-standard-input.ts';
import { fallsTo } from './shard.ts';
import type { Aside } from '../plans/walk-sources.ts';

/** What becomes of one source. */
export type Answer = SourceAnswer | Aside;

/** Reads and judges one source. Whatever is wrong with it, the others are judged after it. */
export function answerTo(run: JudgingRun, source: PlanSource, shard: Shard | undefined): Answer {
  if (source.kind === 'passed over')
    return { kind: 'remark', sentence: `${source.shown}: ${source.sentence}` };
  if (source.kind === 'nothing found')
    return fallsHere(shard, source.shown) ?? unjudged(source.shown, source.sentence);
  const file: FileReading = source.kind === 'file' ? readPlanFile(source.path) : readStandardInput();
  if (!file.ok) return fallsHere(shard, source.shown) ?? unjudged(source.shown, file.fault.sentence);
  const elsewhere = fallsHere(shard, file.bytes);
  if (elsewhere !== undefined) return elsewhere;
  try {
    const isNamed = source.kind !== 'file' || source.named;
    return judgeSource(run, source.shown, file.bytes, isNamed, folderOf(source));
  } catch (error) {
    // A defect of planish that one plan brings out must not keep the others from being judged.
    const reason = error instanceof Error ? error.message : String(error);
    return unjudged(source.shown, `planish itself failed on this plan: ${reason}.`);
  }
}

/** Where the lock of a plan is looked for. */
export function folderOf(source: PlanSource): string {
  return source.kind === 'file' ? path.dirname(source.path) : process.cwd();
}

function unjudged(shown: string, sentence: string): Answer {
  return { kind: 'plan', report: unread(shown, sentence) };
}

function fallsHere(shard: Shard | undefined, content: Uint8Array | string): Answer | undefined {
  return shard === undefined || fallsTo(shard, content) ? undefined : { kind: 'elsewhere' };
}
