import type { PlanReport, RunHead } from '../../report/plan-report.ts';
import { readReport } from '../merge/read-report.ts';

/** What an earlier report says of one plan. */
export interface EarlierPlan {
  readonly head: RunHead;
  readonly plan: PlanReport;
  /** Whether the plan is the same to the byte. */
  readonly isSameContent: boolean;
}

/** The plans of an earlier report, to be looked up one by one. */
export interface EarlierReport {
  /** By content, and where that is not there, by the name of the file. */
  readonly find: (file: string, digest: string | undefined) => EarlierPlan | undefined;
  /** Files of the report that were never looked up. */
  readonly left: () => readonly string[];
}

export type EarlierReading =
  | { readonly ok: true; readonly report: EarlierReport }
  | { readonly ok: false; readonly sentences: readonly string[] };

type Entry = Pick<EarlierPlan, 'head' | 'plan'>;

/** Reads a report that `check` wrote as JSON or NDJSON, whole or not at all: of half a report, what is missing would look as if unchanged. */
export function readEarlierReport(file: string): EarlierReading {
  const byContent = new Map<string, Entry>();
  const byFile = new Map<string, Entry>();
  const sentences: string[] = [];
  for (const piece of readReport(file)) {
    if (piece.kind === 'fault') sentences.push(`${file}: ${piece.sentence}`);
    if (piece.kind !== 'plan') continue;
    const { head, plan } = piece;
    if (plan.digest !== undefined) byContent.set(plan.digest, { head, plan });
    byFile.set(plan.file, { head, plan });
  }
  if (sentences.length > 0) return { ok: false, sentences };
  const met = new Set<string>();
  return {
    ok: true,
    report: {
      find: (name, digest) => {
        const same = digest === undefined ? undefined : byContent.get(digest);
        const entry = same ?? byFile.get(name);
        if (entry === undefined) return undefined;
        met.add(entry.plan.file);
        return { ...entry, isSameContent: same !== undefined };
      },
      left: () => [...byFile.keys()].filter((name) => !met.has(name)),
    },
  };
}
