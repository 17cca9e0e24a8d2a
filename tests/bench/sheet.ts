// What the sheet of a long plan costs: forty parts, two hundred rows of joints, nine heats, 120 measured points. From the bytes of the plan
// to the page, warm in one process; and the command as a process of its own beside `check` of the same plan. Run: tsx tests/bench/sheet.ts
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { sheetHtml } from '../../src/report/sheet/sheet-html.ts';
import { sheetOf } from '../sheet-text.ts';
import { fortyParts } from './forty-parts.ts';
import { tell } from './tell.ts';

const planish = path.resolve(import.meta.dirname, '../../bin/planish.js');
const env = { ...process.env, NO_COLOR: '1' };
Reflect.deleteProperty(env, 'NODE_EXTRA_CA_CERTS');
const plan = fortyParts();
const work = mkdtempSync(path.join(tmpdir(), 'planish-bench-'));

try {
  const file = path.join(work, 'plan.yaml');
  writeFileSync(file, plan);
  const asOf = ['--as-of', '2026-10-21'];
  const ratios = Array.from(
    { length: 9 },
    () => elapsed(['sheet', ...asOf, file, '-o', '-']) / elapsed(['check', ...asOf, file]),
  );
  // Other temperatures each time: no heat is looked up that was solved before.
  const seconds = Array.from({ length: 15 }, (_one, run) => {
    const text = plan.replaceAll(/(?<=temperature: )\d+/gu, (celsius) => `${celsius}.${String(run + 1)}`);
    const started = process.hrtime.bigint();
    const page = sheetHtml(sheetOf(text));
    if (!page.trimEnd().endsWith('</html>')) throw new Error('no page');
    return Number(process.hrtime.bigint() - started) / 1e9;
  }).slice(5);
  tell('sheet of forty parts, warm, s', median(seconds), '≤ 0.3');
  tell('the command cold : check of the same plan', median(ratios), '');
} finally {
  rmSync(work, { recursive: true, force: true });
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
}

/** Milliseconds of a run. */
function elapsed(args: readonly string[]): number {
  const started = process.hrtime.bigint();
  const { error } = spawnSync(process.execPath, [planish, ...args], { env, maxBuffer: 256 * 1024 * 1024 });
  if (error !== undefined) throw error;
  return Number(process.hrtime.bigint() - started) / 1e6;
}
