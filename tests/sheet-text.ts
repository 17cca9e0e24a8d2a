import { builtInPacks } from '../src/generated/built-in-packs.ts';
import { dictionary } from '../src/cli/dictionary.ts';
import { openPlan } from '../src/cli/judging/judge-source.ts';
import { runHead } from '../src/cli/judging/run-head.ts';
import { sheetReport } from '../src/cli/sheet/sheet.ts';
import { rememberingLapSolver, rememberingStripSolver } from '../src/facts/heat/strip-solver.ts';
import { loadPackFolder } from '../src/packs/load-pack.ts';
import type { Pack } from '../src/packs/pack.ts';
import { readDate } from '../src/quantity/iso-date.ts';
import type { SheetReport } from '../src/report/sheet/sheet-report.ts';

const solveStrip = rememberingStripSolver();
const solveLap = rememberingLapSolver();

const packs: readonly Pack[] = [
  ...builtInPacks(),
  ...['amsel-shop', 'corvane-tarn'].map((name) => packFrom(`examples/rules/${name}`)),
];

/** What the sheet of a plan is written from: through the whole of planish, as of 2026-10-21, with the built-in and the example packs. */
export function sheetOf(text: string): SheetReport {
  const asOf = readDate('2026-10-21');
  if (!asOf.ok) throw new Error(asOf.reason);
  const run = {
    ...{ packs, dictionary, asOfDay: asOf.day, solveStrip, solveLap },
    resolved: new Map(),
  };
  const opened = openPlan(run, 'plan.yaml', new TextEncoder().encode(text), true);
  if (opened.kind !== 'opened') throw new Error(`the text is ${opened.kind}`);
  return sheetReport(opened, runHead(opened.packs, asOf.day));
}

function packFrom(folder: string): Pack {
  const loaded = loadPackFolder(folder, dictionary);
  if (!loaded.ok) throw new Error(loaded.faults.map(({ sentence }) => sentence).join('\n'));
  return loaded.pack;
}
