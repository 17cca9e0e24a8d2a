// What marking costs beyond the check of the same plans: three hundred students' plans, each command as a process of its own, side by
// side. Run: tsx tests/bench/mark.ts
import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { tell } from './tell.ts';

const root = path.dirname(path.dirname(import.meta.dirname));
const planish = path.join(root, 'bin/planish.js');
const plans = path.join(root, 'examples/class/plans');
const work = mkdtempSync(path.join(tmpdir(), 'planish-bench-'));
const env = { ...process.env, NO_COLOR: '1' };
Reflect.deleteProperty(env, 'NODE_EXTRA_CA_CERTS');

try {
  const folder = path.join(work, 'plans');
  mkdirSync(folder);
  const students = readdirSync(plans).filter((name) => name !== 'larch.yaml');
  for (let n = 0; n < 300; n += 1)
    copyFileSync(
      path.join(plans, students[n % students.length] ?? ''),
      path.join(folder, `s${String(n)}.yaml`),
    );
  const ratios = Array.from({ length: 9 }, () => {
    const marked = elapsed([
      'mark',
      '--key',
      path.join(root, 'examples/class/key.yaml'),
      '--format',
      'json',
      folder,
    ]);
    const checked = elapsed([
      'check',
      '--as-of',
      '2026-10-21',
      '--stage',
      'start',
      '--format',
      'json',
      folder,
    ]);
    return marked / checked;
  });
  const median = ratios.toSorted((a, b) => a - b)[ratios.length >> 1] ?? Number.NaN;
  tell('300 plans marked : the same checked', median, '≤ 1.2');
} finally {
  rmSync(work, { recursive: true, force: true });
}

/** Milliseconds of a run. */
function elapsed(args: readonly string[]): number {
  const started = process.hrtime.bigint();
  const { error } = spawnSync(process.execPath, [planish, ...args], { env, maxBuffer: 256 * 1024 * 1024 });
  if (error !== undefined) throw error;
  return Number(process.hrtime.bigint() - started) / 1e6;
}
