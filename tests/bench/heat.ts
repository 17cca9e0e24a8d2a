// What conduction costs: a solve warm, beside a fixed sum of the same machine, and how the cost grows with length and time.
// Run: tsx tests/bench/heat.ts
import { solveHeldLap } from '../../src/heat/held-lap.ts';
import { solveHeldSheet } from '../../src/heat/held-sheet.ts';
import type { HeldSheet } from '../../src/heat/held-sheet.ts';

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
process.stdout.write(`${'fastest of 41'.padEnd(30)} ms warm   : strip   : 200,000 exponentials\n`);
for (const [what, row] of times) {
  const ms = fastest(row);
  const cells = [ms, ms / strip, ms / fastest(fixed)].map((value) => value.toFixed(2).padStart(9));
  process.stdout.write(`${what.padEnd(30)}${cells.join('')}${ms > 10 ? '  over 10 ms' : ''}\n`);
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
