import { readFileSync } from 'node:fs';
import type { Report } from '../../../schemas/report.d.ts';
import { validateReport } from '../../generated/validate-report.js';
import { whyUnread } from '../../plan/read-file.ts';
import { headFromJson, planFromJson } from '../../report/plan-from-json.ts';
import type { PlanReport, RunHead } from '../../report/plan-report.ts';
import { readLines } from './read-lines.ts';

/** What a file of reports holds, piece by piece: a plan with its run, the end of a run, or a fault in one sentence. */
export type ReportPiece =
  | { readonly kind: 'plan'; readonly head: RunHead; readonly plan: PlanReport }
  | { readonly kind: 'end'; readonly head: RunHead }
  | { readonly kind: 'fault'; readonly sentence: string };

/** Reads what `--format json` or `--format ndjson` wrote; of NDJSON one line at a time, also of several runs in one file. */
export function* readReport(file: string): Generator<ReportPiece, void, undefined> {
  try {
    const [first = ''] = readLines(file);
    // The JSON report begins with a line that is no JSON by itself.
    if (parse(first) === undefined) yield* readWhole(file);
    else yield* readByLine(file);
  } catch (error) {
    yield { kind: 'fault', sentence: whyUnread(error) };
  }
}

function* readWhole(file: string): Generator<ReportPiece, void, undefined> {
  const report = asReport(parse(readFileSync(file, 'utf8')));
  if (report === undefined) {
    yield { kind: 'fault', sentence: `This is no report of planish, or it was cut off${whereWrong()}.` };
    return;
  }
  const head = headFromJson(report);
  for (const plan of report.plans) yield { kind: 'plan', head, plan: planFromJson(plan) };
  yield { kind: 'end', head };
}

function* readByLine(file: string): Generator<ReportPiece, void, undefined> {
  let number = 0;
  let plans = 0;
  let isOpen = false;
  for (const line of readLines(file)) {
    number += 1;
    if (line.trim() === '') continue;
    const { report, run } = lineAsReport(parse(line));
    if (report === undefined) {
      const sentence = `Line ${String(number)} is no line of a report of planish${whereWrong()}.`;
      yield { kind: 'fault', sentence };
      continue;
    }
    const head = headFromJson(report);
    for (const plan of report.plans) yield { kind: 'plan', head, plan: planFromJson(plan) };
    plans += report.plans.length;
    isOpen = run === undefined;
    if (run === undefined) continue;
    if (run !== plans) {
      const sentence = `Of the run that ends at line ${String(number)} there are ${String(plans)} plans, and it had ${String(run)}.`;
      yield { kind: 'fault', sentence };
    }
    plans = 0;
    yield { kind: 'end', head };
  }
  if (isOpen || number === 0)
    yield { kind: 'fault', sentence: 'The report was cut off: the line that ends its run is not there.' };
}

/** A line as a report of one plan or none, so that one schema is asked of both forms; `run`: how many plans its run had. */
function lineAsReport(line: unknown): { readonly report: Report | undefined; readonly run?: number } {
  if (typeof line !== 'object' || line === null || Array.isArray(line)) return { report: undefined };
  const {
    report,
    planish,
    packs,
    facts,
    as_of: asOf,
    shard,
    run,
    ...plan
  }: Record<string, unknown> = { ...line };
  const plans = Object.keys(plan).length === 0 ? [] : [plan];
  const end = countOf(run);
  const isLine = run === undefined ? plans.length === 1 : end !== undefined;
  const about = { report, planish, packs, facts, as_of: asOf, ...(shard === undefined ? {} : { shard }) };
  const none = { cleared: 0, held: 0, stopped: 0, 'not judged': 0 };
  const read = isLine ? asReport({ ...about, plans, verdicts: none, verdict: 'not judged' }) : undefined;
  return { report: read, ...(end === undefined ? {} : { run: end }) };
}

function countOf(run: unknown): number | undefined {
  if (typeof run !== 'object' || run === null || !('plans' in run)) return undefined;
  return typeof run.plans === 'number' ? run.plans : undefined;
}

function asReport(value: unknown): Report | undefined {
  return validateReport(value) ? value : undefined;
}

/** Where the last value that was asked about does not fit. */
function whereWrong(): string {
  const [error] = validateReport.errors ?? [];
  return error === undefined || error.instancePath === '' ? '' : ` (at ${error.instancePath})`;
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
