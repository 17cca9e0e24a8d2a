import { spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { watchPlaces } from '../../src/cli/check/watch-places.ts';
import { ring } from '../one-change.ts';
import { runPlanish } from './run-planish.ts';

let folder = '';
const started: ChildProcess[] = [];
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'planish-watch-'));
  writeFileSync(path.join(folder, 'plan.yaml'), ring);
});
afterEach(() => {
  for (const one of started.splice(0)) one.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

interface Watching {
  /** Resolves with the text of the given run, counted from 1; fails when it does not come in time. */
  readonly report: (run: number) => Promise<string>;
  readonly child: ChildProcess;
}

function watching(...args: readonly string[]): Watching {
  const child = spawn(
    process.execPath,
    [path.resolve('bin/planish.js'), 'check', '--as-of', '2026-10-21', '--watch', ...args],
    { cwd: folder, stdio: ['ignore', 'pipe', 'pipe'], env: { PATH: process.env['PATH'] ?? '' } },
  );
  started.push(child);
  let text = '';
  // Both into one, in the order in which they are written closely enough: the remark comes after its report.
  child.stdout.on('data', (piece: Buffer) => (text += piece.toString()));
  child.stderr.on('data', (piece: Buffer) => setTimeout(() => (text += piece.toString()), 30));
  return {
    child,
    report: async (run) => {
      const end = 'Watching for changes; Ctrl-C ends it.';
      for (let wait = 0; wait < 400; wait += 1) {
        const runs = text.split(end);
        if (runs.length > run) return runs[run - 1] ?? '';
        await new Promise((resolve) => setTimeout(resolve, 50));
      }
      throw new Error(`run ${String(run)} did not come; until then: ${text}`);
    },
  };
}

const worse = ring.replace(
  'do: replace\n        step: 20\n        extent: whole',
  'do: section\n        step: 20\n        at: B',
);

test('a plan that is saved in place is judged again', async () => {
  const { report } = watching('plan.yaml');
  expect(await report(1)).toContain('CLEARED');
  writeFileSync(path.join(folder, 'plan.yaml'), worse);
  expect(await report(2)).toContain('STOPPED');
});

test('a plan that is saved under a new name and renamed is judged again, each time', async () => {
  const { report } = watching('plan.yaml');
  await report(1);
  for (const [run, text, verdict] of [
    [2, worse, 'STOPPED'],
    [3, ring, 'CLEARED'],
  ] as const) {
    writeFileSync(path.join(folder, 'plan.yaml~'), text);
    renameSync(path.join(folder, 'plan.yaml~'), path.join(folder, 'plan.yaml'));
    expect(await report(run)).toContain(verdict);
  }
});

test('a file that is not yet there, or is gone for a while, ends nothing', async () => {
  const { report } = watching('other.yaml');
  expect(await report(1)).toContain('no such file');
  writeFileSync(path.join(folder, 'other.yaml'), ring);
  expect(await report(2)).toContain('CLEARED');
  rmSync(path.join(folder, 'other.yaml'));
  expect(await report(3)).toContain('no such file');
});

test('below a folder a new plan is found, and several changes at once make one run', async () => {
  mkdirSync(path.join(folder, 'jobs', 'deep'), { recursive: true });
  writeFileSync(path.join(folder, 'jobs/deep/a.yaml'), ring);
  const { report } = watching('--quiet', '--summary', 'jobs');
  await report(1);
  for (const name of ['b', 'c', 'd']) writeFileSync(path.join(folder, `jobs/deep/${name}.yaml`), worse);
  const second = await report(2);
  for (const name of ['b', 'c', 'd']) expect(second).toContain(`jobs/deep/${name}.yaml: stopped`);
});

test('a pack that changes counts too, and a broken one ends nothing', async () => {
  cpSync('examples/rules/amsel-shop', path.join(folder, 'shop'), { recursive: true });
  const { report } = watching('--rules', 'shop', 'plan.yaml');
  await report(1);
  writeFileSync(path.join(folder, 'shop/pack.yaml'), 'pack: [\n');
  expect(await report(2)).toContain('pack.yaml');
});

test('Ctrl-C ends it', async () => {
  const { report, child } = watching('plan.yaml');
  await report(1);
  const ended = new Promise((resolve) =>
    child.once('exit', (_code, signal) => {
      resolve(signal);
    }),
  );
  child.kill('SIGINT');
  expect(await ended).toBe('SIGINT');
});

describe('what does not go together is refused', () => {
  test.each<readonly [readonly string[], string]>([
    [['--watch', '-'], 'standard input'],
    [['--watch', '--fix', 'plan.yaml'], '--fix'],
    [['--watch', '--format', 'json', 'plan.yaml'], 'text'],
    [['--watch', '--output', 'json=a.json', 'plan.yaml'], 'text'],
    [['--watch', 'nowhere/plan.yaml'], 'cannot be watched'],
  ])('%j', (args, word) => {
    const result = runPlanish(['check', ...args], { folder });
    expect(result.status).toBe(2);
    expect(result.stderr).toContain(word);
    expect(result.stderr).not.toMatch(/\n\s+at /u);
  });
});

test('which folders are watched', () => {
  const shown = (arg: string): string =>
    watchPlaces([arg], folder)
      .map((place) => `${path.relative(folder, place.folder)}/${place.isDeep ? '**' : '*'}`)
      .join();
  mkdirSync(path.join(folder, 'jobs'));
  expect(shown('plan.yaml')).toBe('/*');
  expect(shown('jobs')).toBe('jobs/**');
  expect(shown('jobs/**/*.yaml')).toBe('jobs/**');
  expect(shown('*.yaml')).toBe('/**');
  expect(shown('not/yet.yaml')).toBe('not/*');
});
