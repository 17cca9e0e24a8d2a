// What heat costs: a solve warm, beside a fixed sum of the same machine, and how the cost grows with length and time; solves of each
// search; what five heats with forty neighbours add to a cold check, in starts of bare Node, side by side in one run.
// Run: npm run bench -- heat (the bundle must be made).
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { rememberingStripSolver } from '../../src/facts/heat/strip-solver.ts';
import { solveHeldLap } from '../../src/heat/sheet/held-lap.ts';
import { solveHeldSheet } from '../../src/heat/sheet/held-sheet.ts';
import type { HeldSheet } from '../../src/heat/sheet/held-sheet.ts';
import { highestTemperature, longestHold, stayClear } from '../../src/heat/sheet/stay-clear.ts';
import type { HeatSolver } from '../../src/heat/sheet/stay-clear.ts';
import { tell } from './tell.ts';

const usual: HeldSheet = { sourceCelsius: 600, holdSeconds: 60, times: 1, thicknessMm: 1.2, metal: 'steel' };
const flange = {
  ...{ sourceCelsius: 600, holdSeconds: 60, times: 1 },
  heated: { metal: 'steel', thicknessMm: 1.2, freeEndMm: 35 },
  other: { metal: 'steel', thicknessMm: 1.5, fromMm: 20 },
} as const;

const { radiusMm, ...disc } = { ...usual, shape: 'disc', radiusMm: 15 } as const;
const cases: readonly (readonly [what: string, solve: () => unknown])[] = [
  ['strip', () => solveHeldSheet(usual)],
  ['disc', () => solveHeldSheet({ ...disc, radiusMm })],
  [
    'strip, wet cloth',
    () => solveHeldSheet({ ...usual, wetCloth: { fromMm: 30, toMm: 60, waterKgPerM2: 1 } }),
  ],
  [
    'two sheets, stated contact',
    () => solveHeldLap({ ...flange, contact: { kind: 'stated', wattPerM2K: 1000 } }),
  ],
  ...[30, 100, 300, 1000].map(
    (freeEndMm) => [`strip of ${freeEndMm} mm`, () => solveHeldSheet({ ...usual, freeEndMm })] as const,
  ),
  ...[1, 10, 300, 3600].map(
    (holdSeconds) =>
      [`strip held ${holdSeconds} s`, () => solveHeldSheet({ ...usual, holdSeconds })] as const,
  ),
];

for (let n = 0; n < 40; n++) for (const [, solve] of cases) solve();
const times = new Map(cases.map(([what]) => [what, Array.from<number>({ length: 0 })]));
const fixed: number[] = [];
for (let n = 0; n < 41; n++) {
  fixed.push(elapsed(() => exponentials(200_000)));
  for (const [what, solve] of cases) times.get(what)?.push(elapsed(solve));
}
const strip = fastest(times.get('strip') ?? []);
for (const [what, row] of times) {
  const ms = fastest(row);
  const beside = `${(ms / strip).toFixed(2)} of the strip, ${(ms / fastest(fixed)).toFixed(2)} of 200,000 exponentials`;
  tell(`solve warm, fastest of 41, ms: ${what}`, ms, '≤ 10', beside);
}

searches();
equalHeats();
addedToCheck();

/** How often each search asks the engine; ten is the most that is allowed. */
function searches(): void {
  const limit = {
    celsius: 200,
    isKept: (point: { readonly peakCelsius: number }) => point.peakCelsius <= 200,
  };
  const counted = (search: (solve: HeatSolver) => unknown): number => {
    let solves = 0;
    search((heat) => {
      solves += 1;
      return solveHeldSheet(heat);
    });
    return solves;
  };
  const rows = [
    ['stay-clear distance', counted((solve) => stayClear(solve, usual, limit))],
    ['longest hold', counted((solve) => longestHold(solve, usual, 20, limit))],
    ['highest temperature', counted((solve) => highestTemperature(solve, usual, 20, limit))],
  ] as const;
  for (const [what, solves] of rows) tell(`solves of a search: ${what}`, solves, '≤ 10');
}

/** A thousand equal operations of one run, beside one. */
function equalHeats(): void {
  const one = rememberingStripSolver();
  const first = elapsed(() => one({ ...usual, holdSeconds: 61 }));
  const rest = elapsed(() => {
    for (let n = 0; n < 999; n += 1) one({ ...usual, holdSeconds: 61 });
  });
  tell('999 equal heats after the first : the first', rest / first, 'about 0');
}

/** Five different heats with eight neighbours each, and the same plan without the heats. */
function addedToCheck(): void {
  const root = path.dirname(path.dirname(import.meta.dirname));
  const planish = path.join(root, 'bin/planish.js');
  const folder = mkdtempSync(path.join(tmpdir(), 'planish-heat-bench-'));
  const env = { ...process.env, NO_COLOR: '1' };
  Reflect.deleteProperty(env, 'NODE_EXTRA_CA_CERTS');
  const run = (args: readonly string[]): number =>
    elapsed(() => spawnSync(process.execPath, args, { cwd: root, env, stdio: 'ignore' }));
  try {
    const [hot, cold] = [true, false].map((withHeat) => {
      const file = path.join(folder, withHeat ? 'hot.yaml' : 'cold.yaml');
      writeFileSync(file, heatedPlan(withHeat));
      return [planish, 'check', '--as-of', '2026-10-21', file];
    });
    if (hot === undefined || cold === undefined) throw new Error('no plan was written');
    const bare = ['-e', '0'];
    for (const warm of [hot, cold, bare]) run(warm);
    const rounds = Array.from({ length: 21 }, () => [run(hot), run(cold), run(bare)] as const);
    const ratios = rounds.map(([a, b, c]) => (a - b) / c).toSorted((a, b) => a - b);
    const ratio = ratios[ratios.length >> 1] ?? Number.NaN;
    const [a, b, c] = [0, 1, 2].map((index) => fastest(rounds.map((round) => round[index] ?? Number.NaN)));
    tell(
      '5 heats, 40 neighbours, added to a cold check : bare node',
      ratio,
      '≤ 3',
      `fastest ${[a, b, c].map((ms) => ms?.toFixed(0)).join(', ')} ms with, without, bare`,
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function heatedPlan(withHeat: boolean): string {
  const part = (n: number): string => {
    const near = Array.from(
      { length: 8 },
      (_, k) =>
        `{ item: ${k % 2 === 0 ? 'sealer' : 'wiring'}, distance: ${String(30 + 10 * k)} mm, path: joined }`,
    );
    const heat = `
    operations:
      - do: heat
        source: induction
        temperature: ${String(500 + 20 * n)} °C
        hold: ${String(20 + 5 * n)} s
        times: 1
        measured_by: { means: contact probe }
        free_end: runs on
        near: [${near.join(', ')}]`;
    return `
  - id: p${String(n)}
    kind: sill
    grade: HC340LA
    thickness: 1.2 mm${withHeat ? heat : ''}`;
  };
  return `format: 1\nvehicle: {}\nparts:${[1, 2, 3, 4, 5].map(part).join('')}\n`;
}

/** Some milliseconds of arithmetic, so that runs on different machines can be compared. */
function exponentials(count: number): number {
  let sum = 0;
  for (let n = 0; n < count; n++) sum += Math.exp(-n / count);
  return sum;
}

function elapsed(what: () => unknown): number {
  const started = process.hrtime.bigint();
  what();
  return Number(process.hrtime.bigint() - started) / 1e6;
}

/** Other work on the machine only ever adds. */
function fastest(values: readonly number[]): number {
  return Math.min(...values);
}
