import { builtInPacks } from '../src/generated/built-in-packs.ts';
import { dictionary } from '../src/cli/dictionary.ts';
import { judgeSource } from '../src/cli/judging/judge-source.ts';
import type { JudgingRun } from '../src/cli/judging/judge-source.ts';
import { rememberingLapSolver, rememberingStripSolver } from '../src/facts/heat/strip-solver.ts';
import { loadPackFolder } from '../src/packs/load-pack.ts';
import type { Pack } from '../src/packs/pack.ts';
import { readDate } from '../src/quantity/iso-date.ts';
import type { PlanReport } from '../src/report/plan-report.ts';

/** Judges the text of one plan through the whole of planish, as of 2026-10-21, with the built-in packs and those of folders. */
export function judgeText(text: string, packFolder: string | readonly string[] = []): PlanReport {
  const packs: readonly Pack[] = [...builtInPacks(), ...[packFolder].flat().map(packFrom)];
  const answer = judgeSource(runWith(packs), 'plan.yaml', new TextEncoder().encode(text), true);
  if (answer.kind !== 'plan') throw new Error(`the text is ${answer.kind}`);
  return answer.report;
}

/** Ids of the rules that stop or hold, sorted, each once. A plan that cannot be read has none, and must not look like a cleared one. */
export function ruleIds(
  report: PlanReport,
  severities: readonly string[] = ['stop', 'hold'],
): readonly string[] {
  if (report.packs === undefined) throw new Error(report.notJudged.map(({ sentence }) => sentence).join(' '));
  const ids = report.findings
    .filter(({ finding }) => severities.includes(finding.severity))
    .map(({ finding }) => finding.rule);
  return [...new Set(ids)].sort();
}

const solveStrip = rememberingStripSolver();
const solveLap = rememberingLapSolver();

function runWith(packs: readonly Pack[]): JudgingRun {
  const asOf = readDate('2026-10-21');
  if (!asOf.ok) throw new Error(asOf.reason);
  return { packs, dictionary, asOfDay: asOf.day, solveStrip, solveLap, resolved: new Map() };
}

function packFrom(folder: string): Pack {
  const loaded = loadPackFolder(folder, dictionary);
  if (!loaded.ok) throw new Error(loaded.faults.map(({ sentence }) => sentence).join('\n'));
  return loaded.pack;
}
