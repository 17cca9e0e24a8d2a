import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { openOutputFile } from '../../src/cli/writing/output-file.ts';
import { runPlanish } from './run-planish.ts';
import type { RunResult } from './run-planish.ts';

// Each starts other programs, which takes long on a busy machine.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const day = ['--as-of', '2026-10-21'];
const cleared = path.resolve('examples/plans/ring-replaced-whole.yaml');
const stopped = path.resolve('examples/plans/rail-heated-near-pillar.yaml');
let folder = '';

beforeEach(() => {
  rmSync(folder, { recursive: true, force: true });
  folder = mkdtempSync(path.join(tmpdir(), 'planish-outputs-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const check = (...args: readonly string[]): RunResult => runPlanish(['check', ...day, ...args], { folder });
const read = (name: string): string => readFileSync(path.join(folder, name), 'utf8');

describe('several reports of one run', () => {
  test('text on the screen, each other form in its file, the same bytes as asked for alone', () => {
    const forms = [
      'json',
      'ndjson',
      'csv',
      'sarif',
      'junit',
      'markdown',
      'github',
      'gitlab',
      'azure',
      'text',
    ];
    const outputs = forms.flatMap((form) => ['--output', `${form}=${form}.out`]);
    const result = check('--format', 'text', ...outputs, cleared, stopped);
    expect(result).toMatchObject({ status: 1, stderr: '' });
    for (const form of forms)
      expect([form, read(`${form}.out`)]).toEqual([form, check('--format', form, cleared, stopped).stdout]);
    expect(result.stdout).toBe(read('text.out'));
    // Nothing under a temporary name stays behind.
    expect(readdirSync(folder).toSorted()).toEqual(forms.map((form) => `${form}.out`).toSorted());
  });

  test('no colour goes into a file', () => {
    const env = { FORCE_COLOR: '1' };
    runPlanish(['check', ...day, '--output', 'text=a.txt', cleared], { folder, env });
    expect(read('a.txt')).not.toContain('\u001b');
  });
});

describe('what cannot be written is one sentence and status 2, and leaves nothing behind', () => {
  test.each<readonly [string, readonly string[], string]>([
    ['a file that is there', ['--output', 'json=there'], 'there is there already; another name, or --force'],
    ['a folder', ['--output', 'json=inner'], 'inner is a folder.'],
    [
      'in a folder that is not',
      ['--output', 'json=no/where'],
      'no/where cannot be written (its folder is not there).',
    ],
    ['a device', ['--force', '--output', 'json=/dev/null'], '/dev/null is no ordinary file'],
    ['no name', ['--output', 'json='], 'an empty name is no file.'],
    ['one file twice', ['--output', 'json=a', '--output', 'csv=./a'], './a is named twice.'],
    ['a form that is none', ['--output', 'sarfi=a'], 'No form is called sarfi (is sarif meant?)'],
    ['no form', ['--output', 'a.sarif'], 'It takes a form and a file'],
  ])('%s', (_name, args, said) => {
    writeFileSync(path.join(folder, 'there'), 'mine');
    mkdirSync(path.join(folder, 'inner'));
    // Beside a good one, which is not begun either.
    const result = check('--output', 'csv=good.csv', ...args, cleared);
    expect(result).toMatchObject({ status: 2, stdout: '' });
    expect(result.stderr).toContain(said);
    expect(result.stderr.trim().split('\n')).toHaveLength(1);
    expect(readdirSync(folder).toSorted()).toEqual(['inner', 'there']);
    expect(read('there')).toBe('mine');
  });

  test('--force replaces a file, and only when the new one is whole', () => {
    writeFileSync(path.join(folder, 'a.json'), 'mine');
    expect(check('--force', '--output', 'json=a.json', cleared).status).toBe(0);
    expect(JSON.parse(read('a.json'))).toMatchObject({ verdict: 'cleared' });
  });

  test('a disk that is full: the file is not there, the rest of the report is', (context) => {
    const small = path.join(folder, 'small');
    mkdirSync(small);
    const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=4k', 'tmpfs', small]);
    if (mounted.status !== 0) context.skip('no leave to make a small disk');
    try {
      const result = check('--output', 'json=small/a.json', '--output', 'csv=a.csv', stopped, cleared);
      expect(result.status).toBe(2);
      expect(result.stderr).toBe('planish: small/a.json was not written (the disk is full: ENOSPC).\n');
      expect(readdirSync(small)).toEqual([]);
      expect(existsSync(path.join(folder, 'a.csv'))).toBe(true);
      expect(result.stdout).toContain('CLEARED');
    } finally {
      spawnSync('umount', [small]);
    }
  });

  test('standard output that is full', () => {
    const result = spawnSync(
      'sh',
      [
        '-c',
        `"$0" "$1" check ${day.join(' ')} --output csv=a.csv "$2" >/dev/full`,
        process.execPath,
        path.resolve('bin/planish.js'),
        cleared,
      ],
      { cwd: folder, encoding: 'utf8' },
    );
    expect(result.status).toBe(2);
    expect(result.stderr).toBe(
      'planish: the output cannot be written to its end (the disk is full: ENOSPC).\n',
    );
    expect(existsSync(path.join(folder, 'a.csv'))).toBe(true);
  });
});

describe('a file', () => {
  test('that comes while it is being written is not replaced', () => {
    const target = path.join(folder, 'a');
    const opened = openOutputFile(target, false);
    if (!opened.ok) throw new Error(opened.sentence);
    expect(opened.file.write('new')).toBeUndefined();
    writeFileSync(target, 'of another');
    expect(opened.file.finish()).toBe(`${target} was not written (a file of this name has come meanwhile).`);
    expect(read('a')).toBe('of another');
    expect(readdirSync(folder)).toEqual(['a']);
  });

  test('is not there before it is whole', () => {
    const target = path.join(folder, 'a');
    const opened = openOutputFile(target, false);
    if (!opened.ok) throw new Error(opened.sentence);
    opened.file.write('half');
    expect(existsSync(target)).toBe(false);
    expect(opened.file.finish()).toBeUndefined();
    expect(read('a')).toBe('half');
  });

  test('a link that leads nowhere is not followed', () => {
    symlinkSync('nowhere', path.join(folder, 'link'));
    expect(check('--output', 'csv=link', cleared).status).toBe(2);
    expect(readdirSync(folder)).toEqual(['link']);
  });
});

describe('what a run reads is never written over, not even with --force', () => {
  const plan = readFileSync(cleared, 'utf8');
  const keep = (name: string, text: string): void => {
    writeFileSync(path.join(folder, name), text);
  };

  test.each([
    ['the plan', ['plan.yaml']],
    ['a plan of the folder', ['.']],
    ['the plan by another name', ['link.yaml']],
  ])('check: %s', (_what, args) => {
    keep('plan.yaml', plan);
    if (args.includes('link.yaml')) symlinkSync('plan.yaml', path.join(folder, 'link.yaml'));
    expect(check('--force', '--output', 'sarif=plan.yaml', ...args)).toEqual({
      status: 2,
      stdout: '',
      stderr: 'planish: --output: plan.yaml is read by this run; what is written needs another name.\n',
    });
    expect(read('plan.yaml')).toBe(plan);
  });

  test('merge: the report that is merged', () => {
    const report = check('--format', 'ndjson', cleared).stdout;
    keep('one.ndjson', report);
    const args = ['merge', '--force', '--output', 'text=one.ndjson', 'one.ndjson'];
    expect(runPlanish(args, { folder })).toMatchObject({ status: 2, stdout: '' });
    expect(read('one.ndjson')).toBe(report);
  });

  test('heat: the plan whose heats are drawn', () => {
    const heats = readFileSync(stopped, 'utf8');
    keep('rail.yaml', heats);
    const args = ['heat', ...day, '--force', '--svg', 'rail.yaml', 'rail.yaml'];
    expect(runPlanish(args, { folder })).toMatchObject({ status: 2 });
    expect(read('rail.yaml')).toBe(heats);
  });

  test.each([
    ['-o', 'key.yaml'],
    ['-o', 'plans/ash.yaml'],
    ['--numbers', 'key.yaml'],
  ])('mark %s %s', (option, file) => {
    cpSync('examples/class', folder, { recursive: true });
    const before = read(file);
    const result = runPlanish(['mark', '--key', 'key.yaml', '--force', option, file, 'plans'], { folder });
    expect([result.status, result.stdout, result.stderr]).toEqual([
      2,
      '',
      `planish: ${file} is read by this run; what is written needs another name.\n`,
    ]);
    expect(read(file)).toBe(before);
  });
});

test('marks in a file: the terminal says how the class did, and whose plan could not be marked', () => {
  mkdirSync(path.join(folder, 'plans'));
  cpSync('examples/class/plans/ash.yaml', path.join(folder, 'plans/ash.yaml'));
  writeFileSync(path.join(folder, 'plans/oak.yaml'), 'format: 1\nparts: [\n');
  const key = path.resolve('examples/class/key.yaml');
  const args = [
    'mark',
    '--key',
    key,
    '--format',
    'html',
    '-o',
    'class.html',
    'plans/ash.yaml',
    'plans/oak.yaml',
  ];
  expect(runPlanish(args, { folder })).toMatchObject({
    status: 2,
    stdout: 'class.html: written. 2 plans, 1 passed. Could not be marked: oak.\n',
  });
});
