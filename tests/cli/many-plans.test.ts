import { spawn, spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { progressOf } from '../../src/cli/reporting/progress.ts';
import { fallsTo, readShard } from '../../src/cli/check/shard.ts';
import { runPlanish } from './run-planish.ts';
import type { RunResult } from './run-planish.ts';

// Each starts other programs, which takes long on a busy machine.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const bin = path.resolve('bin/planish.js');
const day = ['--as-of', '2026-10-21'];
const cleared = readFileSync('examples/plans/ring-replaced-whole.yaml', 'utf8');
const stopped = readFileSync('examples/plans/rail-heated-near-pillar.yaml', 'utf8');
let folder = '';

beforeEach(() => {
  rmSync(folder, { recursive: true, force: true });
  folder = mkdtempSync(path.join(tmpdir(), 'planish-many-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

function write(name: string, content: string): void {
  mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
  writeFileSync(path.join(folder, name), content);
}

const check = (...args: readonly string[]): RunResult => runPlanish(['check', ...day, ...args], { folder });

function filesOf({ stdout }: RunResult): readonly string[] {
  const report = JSON.parse(stdout) as { readonly plans: readonly { readonly file: string }[] };
  return report.plans.map(({ file }) => file);
}

describe('ignore files', () => {
  test('pass over what they name, and that is said', () => {
    for (const name of ['a.yaml', 'old/b.yaml', 'c.draft.yaml', 'keep/d.draft.yaml', 'keep/old.yaml'])
      write(`jobs/${name}`, cleared);
    write('jobs/.planishignore', '# what is done\nold/\n*.draft.yaml\n');
    write('jobs/keep/.planishignore', '!d.draft.yaml\nold.yaml\n');
    const result = check('--format', 'json', 'jobs');
    expect(filesOf(result)).toEqual(['jobs/a.yaml', 'jobs/keep/d.draft.yaml']);
    expect(result.stderr).toBe(
      'planish: jobs: 3 files and folders are passed over, as .planishignore says.\n',
    );
    expect(result.status).toBe(0);
  });

  test('do not pass over what is named', () => {
    write('jobs/a.yaml', stopped);
    write('jobs/.planishignore', '*\n');
    expect(check('jobs/a.yaml').status).toBe(1);
    expect(check('jobs/*.yaml').status).toBe(1);
  });

  test('that pass over everything leave no plan: 2', () => {
    write('jobs/a.yaml', cleared);
    write('jobs/.planishignore', '*\n');
    const result = check('jobs');
    expect(result.status).toBe(2);
    expect(result.stderr).toContain('1 file or folder is passed over');
    expect(result.stderr).toContain('No plan was found in: jobs');
  });

  test('of the folders above count up to the top of the repository, from wherever it is asked', () => {
    mkdirSync(path.join(folder, 'repository/.git'), { recursive: true });
    write('.planishignore', '*\n');
    write('repository/.planishignore', 'old\n');
    write('repository/jobs/old/a.yaml', stopped);
    write('repository/jobs/b.yaml', cleared);
    expect(filesOf(check('--format', 'json', 'repository/jobs'))).toEqual(['repository/jobs/b.yaml']);
    const inside = runPlanish(['check', ...day, '--format', 'json', '.'], {
      folder: path.join(folder, 'repository/jobs'),
    });
    expect(filesOf(inside)).toEqual(['b.yaml']);
  });

  test.skipIf(process.getuid?.() === 0)('that cannot be read leave the folder not judged', () => {
    write('jobs/a.yaml', cleared);
    write('jobs/.planishignore', 'b.yaml\n');
    chmodSync(path.join(folder, 'jobs/.planishignore'), 0);
    expect(check('jobs').status).toBe(2);
  });
});

describe('--changed-since', () => {
  function git(...args: readonly string[]): void {
    const identity = ['-c', 'user.name=t', '-c', 'user.email=t@t.example', '-c', 'commit.gpgsign=false'];
    const { status, stderr } = spawnSync('git', [...identity, ...args], { cwd: folder, encoding: 'utf8' });
    if (status !== 0) throw new Error(stderr);
  }

  beforeEach(() => {
    git('init', '-q', '-b', 'main');
    write('jobs/old.yaml', stopped);
    write('jobs/edited.yaml', cleared);
    write('jobs/gone.yaml', cleared);
    write('rules/own/pack.yaml', readFileSync('examples/rules/corvane-tarn/pack.yaml', 'utf8'));
    write('rules/own/door-ring.yaml', readFileSync('examples/rules/corvane-tarn/door-ring.yaml', 'utf8'));
    git('add', '.');
    git('commit', '-qm', 'one');
    git('checkout', '-qb', 'work');
  });

  const since = (...args: readonly string[]): RunResult =>
    check('--format', 'json', '--changed-since', 'main', ...args, 'jobs');

  test('judges what was edited, committed, moved or is new, and nothing else', () => {
    write('jobs/edited.yaml', `${cleared}# more\n`);
    git('commit', '-qam', 'two');
    renameSync(path.join(folder, 'jobs/gone.yaml'), path.join(folder, 'jobs/moved.yaml'));
    write('jobs/inner/ünïcode "new".yaml', cleared);
    const result = since();
    expect(filesOf(result)).toEqual(['jobs/edited.yaml', 'jobs/inner/ünïcode "new".yaml', 'jobs/moved.yaml']);
    expect(result).toMatchObject({
      status: 0,
      stderr: 'planish: 1 of 4 files were not changed since main.\n',
    });
  });

  test('what the other branch did meanwhile is not of this one', () => {
    git('checkout', '-q', 'main');
    write('jobs/old.yaml', `${stopped}# more\n`);
    git('commit', '-qam', 'of another');
    git('checkout', '-q', 'work');
    write('jobs/new.yaml', cleared);
    expect(filesOf(since())).toEqual(['jobs/new.yaml']);
  });

  test('nothing changed is no fault, and is said', () => {
    const result = since();
    expect(result.status).toBe(0);
    expect(result.stderr).toContain('No plan was changed since main in: jobs');
  });

  test('a plan that git ignores is judged: nothing is known of it', () => {
    write('.gitignore', 'hidden.yaml\n');
    write('jobs/hidden.yaml', stopped);
    expect(since().status).toBe(1);
  });

  test('where the rules were changed every plan is judged', () => {
    const rules = readFileSync('examples/rules/corvane-tarn/door-ring.yaml', 'utf8');
    write('rules/own/door-ring.yaml', `${rules}# more\n`);
    const result = since('--rules', 'rules/own');
    expect(result.stderr).toContain('The rules were changed since main: every plan is judged.');
    expect(filesOf(result)).toHaveLength(3);
  });

  test('where an ignore file was changed too', () => {
    write('jobs/.planishignore', 'gone.yaml\n');
    expect(filesOf(since())).toEqual(['jobs/edited.yaml', 'jobs/old.yaml']);
  });

  test('a file that is named and is not there is still not judged', () => {
    expect(check('--changed-since', 'main', 'nowhere.yaml').status).toBe(2);
  });

  test('a folder without plans is still no plan found', () => {
    mkdirSync(path.join(folder, 'empty'));
    expect(check('--changed-since', 'main', 'empty').status).toBe(2);
  });

  test.each([
    ['a commit that is none', 'nosuch', 'git says: '],
    ['an option in its place', '--output=/tmp/x', 'it is no name that git takes'],
    ['an empty name', '', 'it is no name that git takes'],
  ])('%s is one sentence and 2', (_name, reference, said) => {
    const result = check(`--changed-since=${reference}`, 'jobs');
    expect(result).toMatchObject({ status: 2, stdout: '' });
    expect(result.stderr).toContain(said);
    expect(result.stderr.trim().split('\n')).toHaveLength(1);
  });

  test('outside of a repository', () => {
    rmSync(path.join(folder, '.git'), { recursive: true });
    const result = check('--changed-since', 'main', 'jobs');
    expect(result).toMatchObject({ status: 2, stdout: '' });
  });

  test('without git on the machine', () => {
    const result = runPlanish(['check', ...day, '--changed-since', 'main', 'jobs'], {
      folder,
      env: { PATH: '' },
    });
    expect(result).toMatchObject({ status: 2, stdout: '' });
    expect(result.stderr).toBe('planish: --changed-since main: git is not there or cannot be run.\n');
  });
});

describe('--shard', () => {
  test('every plan falls to one part, whatever its name', () => {
    for (let n = 0; n < 20; n += 1) write(`jobs/${String(n)}.yaml`, `${cleared}# ${String(n)}\n`);
    const parts = [1, 2, 3].map((part) =>
      filesOf(check('--format', 'json', '--shard', `${String(part)}/3`, 'jobs')),
    );
    expect(parts.flat()).toHaveLength(20);
    expect(new Set(parts.flat()).size).toBe(20);
    for (const part of parts) expect(part.length).toBeGreaterThan(0);
    renameSync(path.join(folder, 'jobs'), path.join(folder, 'renamed'));
    expect(
      filesOf(check('--format', 'json', '--shard', '1/3', 'renamed')).map((file) => path.basename(file)),
    ).toEqual(parts[0]?.map((file) => path.basename(file)));
  });

  test('the report says which part it is', () => {
    write('a.yaml', cleared);
    expect(JSON.parse(check('--format', 'json', '--shard', '1/1', 'a.yaml').stdout)).toMatchObject({
      shard: { index: 1, of: 1 },
    });
  });

  test('a part to which no plan falls is no fault; a job without any file is', () => {
    write('a.yaml', cleared);
    const statuses = [1, 2, 3, 4].map((part) => check('--shard', `${String(part)}/4`, 'a.yaml').status);
    expect(statuses).toEqual([0, 0, 0, 0]);
    mkdirSync(path.join(folder, 'empty'));
    const empty = [1, 2].map((part) => check('--shard', `${String(part)}/2`, 'empty').status);
    expect(empty).toContain(2);
  });

  test.each(['0/3', '4/3', '3', '1/0', 'a/b', '-1/3', '1/10001', '1/3/4', ''])('%j is refused', (text) => {
    expect(readShard(text)).toBeUndefined();
    expect(check('--shard', text, 'a.yaml').status).toBe(2);
  });

  // SHA-256 of `abc` begins with ba7816bf 8f01 (FIPS 180-4, example): 205038389333761 in decimal, of which the rest by 16 is 1.
  test('by the first 48 bits of SHA-256', () => {
    expect(Number.parseInt('ba7816bf8f01', 16) % 16).toBe(1);
    expect(fallsTo({ index: 2, of: 16 }, 'abc')).toBe(true);
    expect(fallsTo({ index: 1, of: 16 }, 'abc')).toBe(false);
  });
});

describe('an interrupted run', () => {
  test.each(['SIGINT', 'SIGTERM'] as const)(
    'by %s reports what was judged, says what was not, and ends by it',
    async (signal) => {
      for (let n = 0; n < 3000; n += 1) write(`jobs/${String(n)}.yaml`, `${cleared}# ${String(n)}\n`);
      const args = ['check', ...day, '--format', 'json', '--output', 'csv=all.csv', 'jobs'];
      const child = spawn(process.execPath, [bin, ...args], {
        cwd: folder,
        stdio: ['ignore', 'pipe', 'pipe'],
      });
      let [heard, said] = ['', ''];
      child.stderr.on('data', (chunk) => (said += String(chunk)));
      child.stdout.on('data', (chunk) => {
        if (heard === '') child.kill(signal);
        heard += String(chunk);
      });
      const ended = await new Promise((resolve) =>
        child.once('close', (status, by) => resolve({ status, by })),
      );
      expect(ended).toEqual({ status: null, by: signal });
      expect(said).toMatch(
        /^planish: Interrupted: \d+ of 3000 files were not looked at; what was judged before is reported\.\n$/u,
      );
      const report = JSON.parse(heard) as {
        readonly verdict: string;
        readonly plans: readonly { readonly file: string }[];
      };
      expect(report.verdict).toBe('not judged');
      expect(report.plans.at(-1)).toMatchObject({ file: '(interrupted)', verdict: 'not judged' });
      expect(report.plans.length).toBeLessThan(3000);
      expect(readFileSync(path.join(folder, 'all.csv'), 'utf8')).toContain('(interrupted),not judged');
    },
    60_000,
  );
});

describe('progress', () => {
  function shownBy(isTerminal: boolean, times: readonly number[]): readonly string[] {
    const shown: string[] = [];
    const clock = [0, ...times].values();
    const progress = progressOf(
      10,
      isTerminal,
      (text) => void shown.push(text),
      () => clock.next().value ?? 0,
    );
    times.forEach((_time, index) => {
      progress.show(index + 1);
    });
    progress.clear();
    return shown;
  }

  test('comes after a second, not more often than ten times a second, and is taken away', () => {
    expect(shownBy(true, [500, 999, 1000, 1050, 1100])).toEqual([
      '\r\u001b[K#########..................... 3 of 10 files',
      '\r\u001b[K###############............... 5 of 10 files',
      '\r\u001b[K',
    ]);
  });

  test('of a short run says nothing, and off a terminal neither', () => {
    expect(shownBy(true, [10, 20])).toEqual([]);
    expect(shownBy(false, [5000])).toEqual([]);
  });

  test('is not in what a run writes into files and pipes', () => {
    write('a.yaml', cleared);
    expect(check('a.yaml').stderr).toBe('');
  });
});
