import { chmodSync, cpSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { folderOfUser, give, hasOrdinaryUser, runAsUser } from './run-as-ordinary-user.ts';
import type { RunResult } from './run-planish.ts';

// Each starts other programs, which takes long on a busy machine.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const day = ['--as-of', '2026-10-21'];
const good = path.resolve('examples/plans/ring-replaced-whole.yaml');
let folder = '';

beforeEach(() => {
  folder = folderOfUser();
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const at = (name: string): string => path.join(folder, name);
const put = (name: string, text = readFileSync(good, 'utf8'), mode = 0o644): void => {
  mkdirSync(path.dirname(at(name)), { recursive: true });
  writeFileSync(at(name), text);
  give(at(name));
  chmodSync(at(name), mode);
};
const run = (...args: readonly string[]): RunResult => runAsUser(args, folder);
const refused = (result: RunResult, line: string): void => {
  expect(result).toEqual({ status: 2, stdout: '', stderr: `planish: ${line}\n` });
};

describe.skipIf(!hasOrdinaryUser)('what an ordinary user has no leave to read', () => {
  test('a plan, a folder and an ignore file: told each, and the others are judged', () => {
    put('jobs/a.yaml', readFileSync('examples/plans/rail-heated-near-pillar.yaml', 'utf8'));
    put('jobs/b.yaml', undefined, 0o000);
    put('jobs/shut/c.yaml');
    chmodSync(at('jobs/shut'), 0o000);
    put('jobs/ignored/d.yaml');
    put('jobs/ignored/.planishignore', 'd.yaml', 0o000);
    const { status, stdout, stderr } = run('check', ...day, '--quiet', 'jobs');
    expect(status).toBe(2);
    expect(stderr).toBe('');
    const lines = stdout.split('\n').slice(0, 4);
    expect(lines[0]).toMatch(/^jobs\/a\.yaml: stopped, /u);
    expect(lines.slice(1)).toEqual([
      'jobs/b.yaml: not judged, The file cannot be read: its permissions do not allow it.',
      'jobs/ignored: not judged, This folder is not searched: its .planishignore cannot be read.',
      'jobs/shut: not judged, This folder cannot be looked into.',
    ]);
  });

  test.each(['jobs/**/*.yaml', 'jobs/*/*.yaml', 'jobs/*/a.yaml'])(
    'a folder in which %s may lie is told, and is never a pass',
    (pattern) => {
      put('jobs/open/a.yaml');
      put('jobs/shut/a.yaml');
      put('jobs/other.txt/b');
      chmodSync(at('jobs/shut'), 0o000);
      expect(run('check', ...day, '--quiet', pattern)).toEqual({
        status: 2,
        stdout: 'jobs/shut: not judged, This folder cannot be looked into.\n',
        stderr: '',
      });
    },
  );

  test.each<readonly [string, readonly string[], string]>([
    ['sheet', ['sheet', 'shut.yaml', '-o', 'a.html'], 'shut.yaml: The file cannot be read'],
    ['sign', ['sign', '--by', 'A', '--role', 'B', 'shut.yaml'], 'shut.yaml: The file cannot be read'],
    ['merge', ['merge', 'shut.yaml'], 'shut.yaml: The file cannot be read'],
    ['mark, the key', ['mark', '--key', 'shut.yaml', '.'], 'shut.yaml: The file cannot be read'],
    ['recheck, the report', ['recheck', '--report', 'shut.yaml', '.'], 'shut.yaml: The file cannot be read'],
    [
      'a file of a pack',
      ['check', '--rules', 'house', good],
      'house/pack.yaml, line 1, column 1: The file cannot',
    ],
  ])('%s', (_what, args, line) => {
    put('shut.yaml', undefined, 0o000);
    cpSync('examples/rules/amsel-shop', at('house'), { recursive: true });
    give(at('house'));
    chmodSync(at('house/pack.yaml'), 0o000);
    const result = run(...args);
    expect([result.status, result.stdout]).toEqual([2, '']);
    expect(result.stderr).toMatch(/^planish: .*: its permissions do not allow it\.\n$/u);
    expect(result.stderr).toContain(line);
    expect(readdirSync(folder).toSorted()).toEqual(['house', 'shut.yaml']);
  });

  test('a folder among packs: it may be a pack, and nothing is judged without it', () => {
    cpSync('examples/rules', at('packs'), { recursive: true });
    give(at('packs'));
    chmodSync(at('packs/corvane-tarn'), 0o000);
    refused(
      run('check', ...day, '--rules', 'packs', good),
      'packs/corvane-tarn: the folder cannot be read; who runs planish needs leave to read it.',
    );
  });

  test('mark, the only folder', () => {
    mkdirSync(at('class'), 0o000);
    refused(
      run('mark', '--key', path.resolve('examples/class/key.yaml'), 'class'),
      'class: This folder cannot be looked into.',
    );
  });

  test('the lock beside a plan: its path is told as that of the plan', () => {
    put('a.yaml');
    put('planish.lock.yaml', 'lock: 1', 0o000);
    const { status, stdout } = run('check', ...day, '--quiet', 'a.yaml');
    expect(status).toBe(2);
    expect(stdout).toContain('not judged, planish.lock.yaml, line 1, column 1: The file cannot be read');
    refused(run('packs', 'lock', '.'), 'planish.lock.yaml is write-protected and is left as it is.');
  });
});

describe.skipIf(!hasOrdinaryUser)(
  'where an ordinary user has no leave to write, nothing is left behind',
  () => {
    const shut = 'shut/x cannot be written (the permissions of its folder do not allow it).';
    const key = path.resolve('examples/class/key.yaml');
    const ash = path.resolve('examples/class/plans/ash.yaml');
    const held = ['heat', '--source', 'torch', '--temperature', '600C', '--hold', '30s', '--sheet', '1.2mm'];
    test.each<readonly [string, readonly string[], string]>([
      ['check', ['check', '--output', 'csv=y', '--output', 'sarif=shut/x', good], `--output: ${shut}`],
      ['sheet', ['sheet', good, '-o', 'shut/x'], shut],
      ['draft', ['draft', '-o', 'shut/x'], shut],
      ['mark', ['mark', '--key', key, '--numbers', 'y', '-o', 'shut/x', ash], shut],
      ['mark, whose numbers', ['mark', '--key', key, '--numbers', 'shut/x', '-o', 'y', ash], shut],
      ['heat', [...held, '--near', 'press-hardened', '--svg', 'shut/x'], `--svg: ${shut}`],
      ['packs new', ['packs', 'new', 'shut/x'], shut.replace('written', 'made')],
      ['packs lock', ['packs', 'lock', 'shut'], shut.replace('x', 'planish.lock.yaml')],
    ])('%s', (_what, args, line) => {
      mkdirSync(at('shut'), 0o555);
      refused(run(...args), line);
      expect(readdirSync(folder)).toEqual(['shut']);
      expect(readdirSync(at('shut'))).toEqual([]);
    });

    test('a plan in a folder that cannot be written to is not signed', () => {
      put('shut/a.yaml');
      give(at('shut'));
      chmodSync(at('shut'), 0o555);
      refused(
        run('sign', ...day, '--by', 'A. Fox', '--role', 'lead', 'shut/a.yaml'),
        'shut/a.yaml cannot be written (the permissions of its folder do not allow it); it is as it was.',
      );
      expect(readFileSync(at('shut/a.yaml'), 'utf8')).toBe(readFileSync(good, 'utf8'));
    });

    test('a file that is write-protected is not replaced, though its folder would allow it', () => {
      const misspelt = readFileSync(good, 'utf8').replace('thickness:', 'thicknes:');
      put('a.yaml', misspelt, 0o444);
      put('b.yaml', undefined, 0o444);
      put('c.html', 'mine', 0o444);
      const mended = run('check', ...day, '--fix', '--yes', 'a.yaml');
      expect(mended.status).toBe(2);
      expect(mended.stderr).toContain('planish: a.yaml is write-protected; it is as it was.\n');
      expect(readFileSync(at('a.yaml'), 'utf8')).toBe(misspelt);
      refused(
        run('sign', ...day, '--by', 'A. Fox', '--role', 'lead', 'b.yaml'),
        'b.yaml is write-protected; it is as it was.',
      );
      refused(
        run('sheet', '--force', '-o', 'c.html', good),
        'c.html is write-protected and is left as it is.',
      );
      expect(readFileSync(at('c.html'), 'utf8')).toBe('mine');
      expect(readdirSync(folder).toSorted()).toEqual(['a.yaml', 'b.yaml', 'c.html']);
    });
  },
);
