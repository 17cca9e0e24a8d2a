import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { runPlanish } from './run-planish.ts';
import type { RunResult } from './run-planish.ts';

const run = (...args: readonly string[]): RunResult => runPlanish(args);

let jobs = '';
const packs = path.resolve('examples/rules/corvane-tarn');
const unpinned = readFileSync('examples/plans/ring-replaced-whole.yaml', 'utf8').replace(
  'general@3',
  'general',
);

beforeEach(() => {
  jobs = mkdtempSync(path.join(tmpdir(), 'planish-lock-'));
  mkdirSync(path.join(jobs, '2026', 'K-2207'), { recursive: true });
  writeFileSync(path.join(jobs, '2026', 'K-2207', 'plan.yaml'), unpinned);
});
afterEach(() => {
  rmSync(jobs, { recursive: true, force: true });
});

const lockFile = (): string => path.join(jobs, 'planish.lock.yaml');
const check = (...more: readonly string[]) =>
  run('check', '--as-of', '2026-10-21', '--format', 'json', ...more, jobs);
const versionsIn = (stdout: string): unknown => {
  const report: { readonly plans: readonly { readonly judged_by?: readonly object[] }[] } =
    JSON.parse(stdout);
  return report.plans[0]?.judged_by;
};

describe('planish packs lock', () => {
  test('writes exact versions and digests, and what changed since', () => {
    const first = run('packs', 'lock', '--pin', 'general@1', '--rules', packs, jobs);
    expect([first.status, first.stderr]).toEqual([0, '']);
    expect(first.stdout).toContain('general 1.1.0, sha256:');
    const digest = builtInPacks()[0]?.releases?.find(({ version }) => version === '1.1.0')?.digest ?? '';
    expect(readFileSync(lockFile(), 'utf8')).toContain(
      `  - pack: general\n    version: 1.1.0\n    digest: ${digest}\n`,
    );
    const second = run('packs', 'lock', jobs);
    expect(second.stdout).toContain('was 1.1.0');
    expect(second.stdout).toContain('corvane-tarn 2026.1.0: no longer locked.');
  });

  test('writes nothing for a version that is not here', () => {
    expect(run('packs', 'lock', '--pin', 'general@7', jobs).status).toBe(2);
    expect(() => readFileSync(lockFile())).toThrow();
  });
});

describe('planish check with a lock above the plans', () => {
  test('that is a link to nowhere is told: nobody is judged by the newest rules unawares', () => {
    symlinkSync('nowhere.yaml', lockFile());
    const { status, stdout } = check('--quiet', '--format', 'text');
    expect(status).toBe(2);
    expect(stdout).toContain('planish.lock.yaml, line 1, column 1: There is no such file.');
  });

  test('judges by the locked version, and names it', () => {
    run('packs', 'lock', '--pin', 'general@1.0', jobs);
    const { status, stdout, stderr } = check('--locked');
    expect([status, stderr]).toEqual([0, '']);
    expect(versionsIn(stdout)).toMatchObject([
      { pack: 'general', version: '1.0.0', released: true, newer: '3.0.0' },
    ]);
  });

  test.each<readonly [string, () => void, readonly string[], string]>([
    ['no lock', () => undefined, [], 'No planish.lock.yaml lies beside the plan or above it'],
    [
      'a pack that the lock does not name',
      () => run('packs', 'lock', jobs),
      ['--rules', packs],
      'The lock does not name the pack corvane-tarn.',
    ],
    [
      'a pack of the lock that is not given',
      () => run('packs', 'lock', '--rules', packs, jobs),
      [],
      'The lock fixes corvane-tarn 2026.1.0, and no such pack is here.',
    ],
    [
      'a version that is not here',
      () => {
        run('packs', 'lock', jobs);
        writeFileSync(
          lockFile(),
          readFileSync(lockFile(), 'utf8').replace('version: 3.0.0', 'version: 3.7.0'),
        );
      },
      [],
      'The lock fixes general 3.7.0; here is general 1.0.0, 1.1.0, 2.0.0, 3.0.0.',
    ],
    [
      'a plan that asks for another version',
      () => {
        run('packs', 'lock', jobs);
        writeFileSync(
          path.join(jobs, '2026', 'K-2207', 'plan.yaml'),
          unpinned.replace('[general]', '[general@1]'),
        );
      },
      [],
      'The lock fixes general 3.0.0, which is not what the plan asks for.',
    ],
  ])('--locked refuses %s', (_name, prepare, more, expected) => {
    prepare();
    const locked = check('--locked', ...more);
    expect(locked.status).toBe(2);
    expect(locked.stdout).toContain('"verdict": "not judged"');
    expect(locked.stdout).toContain(expected);
    // Without --locked the plan is judged, and the drift is told unless there is no lock at all.
    const open = check(...more);
    expect(open.status).not.toBe(2);
    expect(open.stderr.includes(expected)).toBe(!expected.startsWith('No planish.lock'));
  });

  test('other content under a locked version is refused, with --locked and without', () => {
    const copy = path.join(jobs, 'packs', 'corvane-tarn');
    cpSync(packs, copy, { recursive: true });
    rmSync(path.join(copy, 'releases.yaml'));
    run('packs', 'lock', '--rules', copy, jobs);
    const parts = path.join(copy, 'parts.yaml');
    writeFileSync(parts, readFileSync(parts, 'utf8').replaceAll('22MnB5+AS150', 'HC340LA'));
    for (const more of [[], ['--locked']]) {
      const { status, stdout } = check('--rules', copy, ...more);
      expect([status, stdout.includes('another content under the same version')]).toEqual([2, true]);
    }
  });

  test.each([
    ['not a lock', 'packs: []\n', 'planish.lock.yaml, line 1, column 1'],
    [
      'a slip',
      'lock: 1\npacks: [{ pack: general, version: two, digest: none }]\n',
      'planish.lock.yaml, line 2',
    ],
    ['no YAML', 'lock: [\n', 'planish.lock.yaml, line'],
  ])('a broken lock (%s) judges nothing, told with its place', (_name, text, expected) => {
    writeFileSync(lockFile(), text);
    const { status, stdout } = check();
    expect([status, stdout.includes(expected)]).toEqual([2, true]);
  });
});

test('two plans of one run are each judged by their own version', () => {
  writeFileSync(path.join(jobs, 'one.yaml'), unpinned.replace('[general]', '["general@>=1.0.0 <1.1.0"]'));
  const { stdout } = check();
  const report: {
    readonly packs: readonly { readonly version: string }[];
    readonly plans: readonly { readonly judged_by: readonly { readonly version: string }[] }[];
  } = JSON.parse(stdout);
  expect(report.plans.map((plan) => plan.judged_by[0]?.version).sort()).toEqual(['1.0.0', '3.0.0']);
  const text = run('check', '--as-of', '2026-10-21', jobs).stdout;
  expect(text).toContain('Rules of general 1.0.0 (3.0.0 is here), sha256:');
});
