// What `steel` costs: a thousand designations beside reading their answers back from JSON, each as a process of its own and within
// one; and the share of the tables in a cold check, as processes of the bundle too: what a first known grade takes beyond an empty
// one, which is refused before any table is asked. Run: tsx tests/bench/steel.ts
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { csvRows } from '../../.build/steel-table.ts';
import { dictionary } from '../../src/cli/dictionary.ts';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { rulesOfMaterials } from '../../src/judge/material-rules.ts';
import { steelAnswers } from '../../src/cli/steel/steel.ts';
import { tell } from './tell.ts';

const root = path.dirname(path.dirname(import.meta.dirname));
const planish = path.join(root, 'bin/planish.js');
const work = mkdtempSync(path.join(tmpdir(), 'planish-bench-'));
const env = { ...process.env, NO_COLOR: '1' };
Reflect.deleteProperty(env, 'NODE_EXTRA_CA_CERTS');

try {
  const names = csvRows(readFileSync(path.join(root, 'src/steel/data/grades.csv'), 'utf8')).map(
    (row) => row['designation'] ?? '',
  );
  const coats = ['', '+Z100MB', ' 1.2 mm', '+AS150'];
  const thousand = Array.from(
    { length: 1000 },
    (_, n) => `${names[n % names.length] ?? ''}${coats[n % coats.length] ?? ''}`,
  );
  const command = [planish, 'steel', '--format', 'json', ...thousand];
  const answers = path.join(work, 'answers.json');
  writeFileSync(answers, run(command, 1));
  const read = ['-e', `JSON.parse(require('node:fs').readFileSync(${JSON.stringify(answers)}, 'utf8'))`];

  const pairs = Array.from(
    { length: 11 },
    () => [elapsed(() => run(command, 1)), elapsed(() => run(read, 0))] as const,
  );
  tell('1,000 designations : reading their JSON, process each', median(pairs.map(([a, b]) => a / b)), '≤ 2');

  const rules = rulesOfMaterials(builtInPacks(), dictionary);
  const text = readFileSync(answers, 'utf8');
  const within = Array.from(
    { length: 21 },
    () => [elapsed(() => steelAnswers(thousand, false, rules)), elapsed(() => JSON.parse(text))] as const,
  );
  tell('the same within one process', median(within.map(([a, b]) => a / b)), '≤ 2');

  const unlike = [...new Set(coats.flatMap((coat) => names.map((name) => `${name}${coat}`)))].slice(0, 1000);
  const unlikeText = JSON.stringify(steelAnswers(unlike, false, rules).answers);
  const apart = Array.from(
    { length: 21 },
    () => [elapsed(() => steelAnswers(unlike, false, rules)), elapsed(() => JSON.parse(unlikeText))] as const,
  );
  tell(
    '1,000 of which no two are alike, within one process',
    median(apart.map(([a, b]) => a / b)),
    'for reading',
  );
  tell('microseconds a designation of these', median(apart.map(([a]) => a)), 'for reading');

  const cold = Array.from({ length: 15 }, () => {
    const first = elapsed(() => run([planish, 'steel', 'DC04'], 0));
    const refused = elapsed(() => run([planish, 'steel', ''], 2));
    const check = elapsed(() =>
      run([planish, 'check', '--as-of', '2026-10-21', 'examples/bench/200-lines.yaml'], 'any'),
    );
    return (first - refused) / check;
  });
  tell('tables and first grade : a cold check', median(cold), '≤ 0.05');
} finally {
  rmSync(work, { recursive: true, force: true });
}

/** Standard output of a process of its own; a run that ends in another way than expected is no measurement. */
function run(command: readonly string[], expected: number | 'any'): string {
  const { stdout, stderr, status, error } = spawnSync(process.execPath, command, {
    cwd: root,
    env,
    encoding: 'utf8',
    maxBuffer: 256 * 1024 * 1024,
  });
  if (error !== undefined) throw error;
  if (status === null || (expected !== 'any' && status !== expected))
    throw new Error(`${command.slice(0, 4).join(' ')} ended with ${String(status)}: ${stderr}`);
  return stdout;
}

/** Milliseconds. */
function elapsed(what: () => unknown): number {
  const started = process.hrtime.bigint();
  what();
  return Number(process.hrtime.bigint() - started) / 1e6;
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}
