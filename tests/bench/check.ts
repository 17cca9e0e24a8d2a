// What `check` costs, side by side in one run: a cold start beside bare Node, many plans beside package yaml parsing the same files,
// memory by the number of plans, time by the length of a plan. Two busy cores are needed: with one of them taken by something else,
// planish loses more than the parser alone, which has no second thread. Run: npm run bench -- check
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { wholeJob } from './whole-job.ts';
import { tell } from './tell.ts';

const root = path.dirname(path.dirname(import.meta.dirname));
const planish = path.join(root, 'bin/planish.js');
const parseOnly = path.join(import.meta.dirname, 'parse-only.mjs');
const peak = path.join(import.meta.dirname, 'print-peak-memory.cjs');
const base = readFileSync(path.join(root, 'examples/bench/200-lines.yaml'), 'utf8');
const heated = readFileSync(path.join(root, 'examples/plans/rail-heated-near-pillar.yaml'), 'utf8');
/** Good and bad plans without a heat of their own: what a folder of a shop holds. */
const mixed = ['door-skin-cosmetic', 'electric-sill', 'ring-end-piece-by-drawn-cut', 'ring-replaced-whole']
  .concat(['ring-sectioned-by-old-document', 'student-plan'])
  .map((name) => readFileSync(path.join(root, `examples/plans/${name}.yaml`), 'utf8'));
const work = mkdtempSync(path.join(tmpdir(), 'planish-bench-'));

// Node reads extra certificates at each start, which doubles bare Node's time and would flatter every ratio.
const env = { ...process.env, NO_COLOR: '1' };
Reflect.deleteProperty(env, 'NODE_EXTRA_CA_CERTS');

try {
  const bare = ['-e', '0'];
  const cold = ['check', '--as-of', '2026-10-21', 'examples/bench/200-lines.yaml'];
  compare('200 lines, cold : bare node', '≤ 4.0', 21, [planish, ...cold], bare);

  const job = path.join(work, 'whole-job.yaml');
  writeFileSync(job, wholeJob());
  const whole = [planish, 'check', '--as-of', '2026-10-21', job];
  compare('40 parts, 200 joints, 120 points, cold : bare node', '≤ 5.0', 21, whole, bare);

  const plain = folder('plain', 2000, (n) => base.replaceAll('K-2207', `K-${String(n)}`));
  const check = (where: string, ...more: readonly string[]): readonly string[] => [
    planish,
    'check',
    '--as-of',
    '2026-10-21',
    ...more,
    where,
  ];
  compare('2,000 plans, text : package yaml alone', '≤ 1.3', 5, check(plain), [parseOnly, plain]);
  compare('2,000 plans, JSON : package yaml alone', '≤ 1.3', 5, check(plain, '--format', 'json'), [
    parseOnly,
    plain,
  ]);

  const many = folder('many', 2000, (n) => `${mixed[n % mixed.length] ?? ''}# copy ${String(n)}\n`);
  compare('2,000 plans good and bad, text : package yaml', '≤ 1.3', 3, check(many), [parseOnly, many]);
  compare('2,000 plans good and bad, JSON : package yaml', '≤ 1.3', 3, check(many, '--format', 'json'), [
    parseOnly,
    many,
  ]);

  // A heat of its own in every plan: no two are alike.
  const hot = folder('hot', 2000, (n) =>
    heated
      .replace('600 °C', `${String(500 + (n % 100))}.${String(Math.floor(n / 100))} °C`)
      .replaceAll('K-2211', `K-${String(n)}`),
  );
  compare('2,000 plans with distinct heat : package yaml', '≤ 5', 3, check(hot), [parseOnly, hot]);

  compare('2,000 plans good and bad, NDJSON : package yaml', '≤ 1.3', 3, check(many, '--format', 'ndjson'), [
    parseOnly,
    many,
  ]);
  const reports = ['sarif', 'junit', 'csv', 'ndjson'].flatMap((form) => [
    '--output',
    `${form}=${path.join(work, form)}`,
  ]);
  compare(
    '2,000 plans, four files beside the text : text alone',
    'low',
    3,
    check(many, '--force', ...reports),
    check(many),
  );

  memory('json', [500, 2000, 8000]);
  memory('ndjson', [500, 20_000]);
  length();
} finally {
  rmSync(work, { recursive: true, force: true });
}

function folder(name: string, count: number, text: (n: number) => string): string {
  const where = path.join(work, name);
  mkdirSync(where);
  for (let n = 0; n < count; n += 1)
    writeFileSync(path.join(where, `plan-${String(n).padStart(5, '0')}.yaml`), text(n));
  return where;
}

/** The two commands in turn; the ratio is the median of the ratios of neighbouring runs. */
function compare(
  what: string,
  asked: string,
  runs: number,
  one: readonly string[],
  other: readonly string[],
): void {
  milliseconds(one);
  milliseconds(other);
  const pairs = Array.from({ length: runs }, () => [milliseconds(one), milliseconds(other)] as const);
  tell(
    what,
    median(pairs.map(([a, b]) => a / b)),
    asked,
    `${median(pairs.map(([a]) => a)).toFixed(0)} ms against ${median(pairs.map(([, b]) => b)).toFixed(0)} ms`,
  );
}

function memory(form: string, counts: readonly number[]): void {
  const peaks = counts.map((count) => {
    const where = folder(`memory-${form}-${String(count)}`, count, (n) =>
      base.replaceAll('K-2207', `K-${String(n)}`),
    );
    const { stderr } = spawnSync(
      process.execPath,
      ['-r', peak, planish, 'check', '--as-of', '2026-10-21', '--format', form, where],
      {
        cwd: root,
        env,
        encoding: 'utf8',
        maxBuffer: 1024 * 1024 * 1024,
      },
    );
    return Number(/peak (\d+)/u.exec(stderr)?.[1]) / 1024;
  });
  tell(
    `peak memory as ${form}, ${String(counts.at(-1))} plans : ${String(counts[0])}`,
    (peaks.at(-1) ?? Number.NaN) / (peaks[0] ?? Number.NaN),
    'flat',
    peaks.map((mebibytes) => `${mebibytes.toFixed(0)} MiB`).join(', '),
  );
}

/** Time for each line, of a plan of 2,000 and of 20,000 lines, the start taken off. */
function length(): void {
  const start = median(Array.from({ length: 9 }, () => milliseconds([planish, '--version'])));
  const costs = [2000, 20_000].map((lines) => {
    const file = path.join(work, `long-${String(lines)}.yaml`);
    writeFileSync(file, longPlan(lines));
    const times = Array.from({ length: 5 }, () =>
      milliseconds([planish, 'check', '--as-of', '2026-10-21', file]),
    );
    return { lines, each: (median(times) - start) / lines };
  });
  tell(
    'cost of a line, 20,000 lines : 2,000 lines',
    (costs[1]?.each ?? Number.NaN) / (costs[0]?.each ?? Number.NaN),
    'about 1',
    costs.map(({ lines, each }) => `${(each * 1000).toFixed(0)} µs at ${String(lines)}`).join(', '),
  );
}

function longPlan(lines: number): string {
  const part = (n: number): string => `  - id: p${String(n)}
    name: Part ${String(n)}
    kind: sill
    structural: true
    grade: HC340LA
    grade_from: { reference: ring, at: p. 4 }
    thickness: 1.2 mm
    damage: { kind: bend, found_by: seen }
    operations:
      - do: replace
        extent: whole
        cite: { reference: ring, at: p. 12 }
        joints:
          - { to: p${String(Math.max(0, n - 1))}, method: resistance spot, count: 40, factory_count: 40, coupon: planned }
`;
  const [head = ''] = base.split('\nparts:\n');
  const each = part(0).split('\n').length - 1;
  const count = Math.floor((lines - head.split('\n').length) / each);
  return `${head}\nparts:\n${Array.from({ length: count }, (_, n) => part(n)).join('')}`;
}

function milliseconds(command: readonly string[]): number {
  const started = process.hrtime.bigint();
  const { error } = spawnSync(process.execPath, command, {
    cwd: root,
    env,
    stdio: ['ignore', 'ignore', 'ignore'],
  });
  if (error !== undefined) throw error;
  return Number(process.hrtime.bigint() - started) / 1e6;
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}
