import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { openOutputFile, whyNotWritable } from '../../src/cli/writing/output-file.ts';
import { runPlanish } from './run-planish.ts';
import type { RunResult } from './run-planish.ts';

// Each starts other programs, which takes long on a busy machine.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const plan = path.resolve('examples/plans/door-skin-cosmetic.yaml');
const key = path.resolve('examples/class/key.yaml');
const ash = path.resolve('examples/class/plans/ash.yaml');
const heat = ['heat', '--source', 'torch', '--temperature', '600C', '--hold', '30s', '--sheet', '1.2mm'];
let folder = '';
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'planish-force-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});
const run = (...args: readonly string[]): RunResult => runPlanish(args, { folder });
const at = (name: string): string => path.join(folder, name);

const signed = `${readFileSync(plan, 'utf8').replace(/^sign_off:[\s\S]*/mu, '')}sign_off: { by: A. Fox, role: workshop lead }\n`;

describe('--force replaces no plan that bears a signature', () => {
  test.each<readonly [string, readonly string[]]>([
    ['draft', ['draft', '--force', '-o', 'signed.yaml']],
    ['sheet', ['sheet', '--force', '-o', 'signed.yaml', plan]],
    ['check', ['check', '--force', '--output', 'json=signed.yaml', plan]],
    ['mark', ['mark', '--key', key, '--force', '-o', 'signed.yaml', ash]],
    ['mark, the names', ['mark', '--key', key, '--force', '--numbers', 'signed.yaml', ash]],
    ['heat', [...heat, '--near', 'press-hardened', '--force', '--svg', 'signed.yaml']],
    ['by a link', ['draft', '--force', '-o', 'link.yaml']],
  ])('%s', (_what, args) => {
    writeFileSync(at('signed.yaml'), signed);
    symlinkSync('signed.yaml', at('link.yaml'));
    const { status, stdout, stderr } = run(...args);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(
      /^planish: (?:--output: |--svg: )?(?:signed|link)\.yaml is a plan that bears a signature, and --force replaces none; another name writes it\.\n$/u,
    );
    expect(readFileSync(at('signed.yaml'), 'utf8')).toBe(signed);
    expect(readdirSync(folder).toSorted()).toEqual(['link.yaml', 'signed.yaml']);
  });

  test.each<readonly [string, string, boolean]>([
    ['a signature', signed, true],
    ['a signature under a misspelt key', signed.replace('sign_off:', 'sign-off:'), true],
    ['a signature in a plan that is no YAML any more', `${signed}\n]: [`, true],
    [
      'a signature in JSON',
      '{"format": 1, "vehicle": {}, "parts": [], "sign_off": {"by": "A. Fox"}}\n',
      true,
    ],
    ['an empty sign-off block', signed.replace(/sign_off:.*/u, 'sign_off:'), false],
    ['the words in a comment', `${signed.replace(/sign_off:.*/u, '')}# sign_off: open\n`, false],
    ['another file', 'sign_off: all of us\n', false],
    ['nothing', '', false],
  ])('%s', (_what, text, isSigned) => {
    writeFileSync(at('there'), text);
    expect(whyNotWritable(at('there'), true)?.includes('bears a signature') ?? false).toBe(isSigned);
  });
});

describe('--force', () => {
  test('keeps the rights of the file that it replaces, and the link that leads to it', () => {
    writeFileSync(at('a.html'), 'mine');
    chmodSync(at('a.html'), 0o600);
    symlinkSync('a.html', at('link.html'));
    run('sheet', '--force', '-o', 'link.html', plan);
    expect(lstatSync(at('link.html')).isSymbolicLink()).toBe(true);
    expect(readFileSync(at('a.html'), 'utf8')).toContain('<html');
    expect(statSync(at('a.html')).mode & 0o777).toBe(0o600);
  });
});

test('what a killed run left beside a file keeps no later one from writing it', () => {
  const target = at('a');
  expect(openOutputFile(target, false).ok).toBe(true);
  expect(readdirSync(folder)).toHaveLength(1);
  expect(openOutputFile(target, false).ok).toBe(true);
});

test('a working folder that was taken away is told', () => {
  const command = `mkdir gone; cd gone; rmdir ../gone; '${process.execPath}' '${path.resolve('bin/planish.js')}' check '${plan}'`;
  const { status, stderr } = spawnSync('sh', ['-c', command], { cwd: folder, encoding: 'utf8' });
  expect([status, stderr]).toEqual([2, 'planish: the working folder is not there any more.\n']);
});

test('while questions are asked, no file stands about', () => {
  expect(whyNotWritable(at('a'), false)).toBeUndefined();
  expect(readdirSync(folder)).toEqual([]);
});

describe('of two files both come into being or none', () => {
  const numbered = ['mark', '--key', key, '--format', 'csv', '--numbers', 'who.csv'];
  test('where one is there already', () => {
    writeFileSync(at('marks.csv'), 'mine');
    expect(run(...numbered, '-o', 'marks.csv', ash)).toMatchObject({ status: 2, stdout: '' });
    expect(readdirSync(folder)).toEqual(['marks.csv']);
  });
  test('where they are one', () => {
    expect(run(...numbered, '-o', './who.csv', ash)).toEqual({
      status: 2,
      stdout: '',
      stderr: 'planish: ./who.csv is named twice, by -o and by --numbers.\n',
    });
    expect(readdirSync(folder)).toEqual([]);
  });

  test('where the disk is full', (context) => {
    const small = at('small');
    mkdirSync(small);
    const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=4k', 'tmpfs', small]);
    if (mounted.status !== 0) context.skip('no leave to make a small disk');
    try {
      const marked = run(
        'mark',
        '--key',
        key,
        '--format',
        'html',
        '--numbers',
        'small/who',
        '-o',
        'small/m',
        ash,
      );
      expect(marked).toEqual({
        status: 2,
        stdout: '',
        stderr: 'planish: small/m was not written (the disk is full: ENOSPC).\n',
      });
      expect(readdirSync(small)).toEqual([]);
      writeFileSync(path.join(small, 'full'), 'x'.repeat(4000));
      const made = run('packs', 'new', 'small/shop/house');
      expect([made.status, made.stdout]).toEqual([2, '']);
      expect(made.stderr).toContain('(the disk is full: ENOSPC)');
      expect(readdirSync(small)).toEqual(['full']);
    } finally {
      spawnSync('umount', [small]);
    }
  });
});

describe('a reader that goes away before the end: one sentence, status 2', () => {
  test.each([
    ['sheet', `sheet -o - '${plan}'`],
    ['mark', `mark --key '${key}' --format html '${ash}'`],
    ['draft', 'draft'],
    ['steel', 'steel DC04'],
    ['check', `check '${plan}'`],
  ])('%s', (_what, args) => {
    // The pipe has no reader any more when planish begins.
    const command = `{ sleep 0.3; '${process.execPath}' '${path.resolve('bin/planish.js')}' ${args}; echo $? >status; } | true`;
    const { stderr } = spawnSync('sh', ['-c', command], { cwd: folder, encoding: 'utf8' });
    expect(stderr).toBe('planish: the output cannot be written to its end: who reads it has gone away.\n');
    expect(readFileSync(at('status'), 'utf8')).toBe('2\n');
  });
});
