import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { runPlanish } from './run-planish.ts';
import type { RunResult } from './run-planish.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'planish-draft-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const tarn = ['--maker', 'Corvane', '--model', 'Tarn', '--body', 'wagon', '--year', '2021'];
const rules = ['--rules', path.resolve('examples/rules/corvane-tarn')];
const file = (): string => path.join(folder, 'K-1.yaml');

test('options and a pack make a draft that a check holds', () => {
  const made = runPlanish([
    'draft',
    ...tarn,
    '--job',
    'K-1',
    '--part',
    'door ring, left, kink',
    ...rules,
    '-o',
    file(),
  ]);
  expect(made.status).toBe(0);
  expect(made.stdout).toBe('');
  expect(made.stderr).toMatch(/^planish: Written to .*K-1\.yaml; questions open in it: \d+\.\n$/u);
  const text = readFileSync(file(), 'utf8');
  expect(made.stderr).toContain(
    `: ${String(text.split('\n').filter((line) => /[^`]# \?/u.test(line)).length)}.`,
  );
  expect(parse(text)).toMatchObject({
    stage: 'draft',
    rules: [expect.stringMatching(/^general@\d+$/u), 'corvane-tarn@2026'],
    job: { number: 'K-1' },
    parts: [{ kind: 'door ring', grade: '22MnB5+AS150' }, { kind: 'side panel' }],
  });
  const checked = runPlanish(['check', '--as-of', '2026-10-21', ...rules, file()]);
  expect(checked.status).toBe(0);
  expect(checked.stdout).toContain('HELD');
  expect(runPlanish(['check', '--stage', 'start', '--as-of', '2026-10-21', ...rules, file()]).status).toBe(1);
});

test('the line for editors leads from the draft to the schema', () => {
  expect(runPlanish(['draft', '-o', file()]).status).toBe(0);
  const [line = ''] = readFileSync(file(), 'utf8').split('\n');
  const way = /^# yaml-language-server: \$schema=(\S+)$/u.exec(line)?.[1] ?? '';
  const schema: unknown = JSON.parse(readFileSync(path.resolve(folder, way), 'utf8'));
  expect(schema).toMatchObject({ $schema: 'http://json-schema.org/draft-07/schema#', title: 'Plan' });
});

test('JSON on standard input makes the same draft as options', () => {
  const input = JSON.stringify({
    vehicle: { maker: 'Corvane', model: 'Tarn', body: 'wagon', model_year: 2021 },
    parts: [{ kind: 'sill', side: 'left' }],
  });
  const fromInput = runPlanish(['draft', '-', ...rules], { input });
  const fromOptions = runPlanish(['draft', ...tarn, '--part', 'sill, left', ...rules]);
  expect(fromInput.status).toBe(0);
  expect(fromInput.stdout).toBe(fromOptions.stdout);
  expect(fromInput.stdout).toContain('kind: sill');
});

test('with nothing known all is asked', () => {
  const { stdout, status } = runPlanish(['draft']);
  expect(status).toBe(0);
  expect(parse(stdout)).toMatchObject({ format: 1, stage: 'draft', parts: [{ kind: null }] });
});

describe('bad input: one clear sentence, nothing written, status 2', () => {
  const refused = (result: RunResult, word: string): void => {
    expect(result.status).toBe(2);
    expect(result.stdout).toBe('');
    expect(result.stderr.trim().split('\n')).toHaveLength(1);
    expect(result.stderr).toContain(word);
    expect(readdirSync(folder).filter((name) => name !== 'there.yaml')).toEqual([]);
  };

  test('a file that is there, unless forced', () => {
    const there = path.join(folder, 'there.yaml');
    writeFileSync(there, 'mine\n');
    refused(runPlanish(['draft', '-o', there]), 'there already');
    expect(readFileSync(there, 'utf8')).toBe('mine\n');
    expect(runPlanish(['draft', '-o', there, '--force']).status).toBe(0);
    expect(readFileSync(there, 'utf8')).toContain('stage: draft');
  });

  test.each<readonly [string, readonly string[], string]>([
    ['a word that is not known', ['--market', 'eu'], 'european-union'],
    ['a part that is not known', ['--part', 'rocker, left'], '`sill`'],
    ['too much of a part', ['--part', 'sill, left, kink, replace'], 'its side and its damage'],
    ['no such day', ['--opened', '2026-02-30'], 'calendar'],
    ['a year that is none', ['--year', 'twenty'], 'vehicle.model_year'],
    ['a number that is no year', ['--year', '21'], '1900'],
    ['a pack that is not there', ['--rules', '/nowhere'], '/nowhere'],
    ['another file than standard input', ['plan.yaml'], 'standard input'],
  ])('%s', (_what, args, word) => {
    refused(runPlanish(['draft', '-o', file(), ...args]), word);
    expect(existsSync(file())).toBe(false);
  });

  test('no folder to write to', () => {
    refused(runPlanish(['draft', '-o', path.join(folder, 'none', 'a.yaml')]), 'folder');
  });
  test('options and standard input at once', () => {
    refused(runPlanish(['draft', '-', ...tarn], { input: '{}' }), 'not from both');
  });
  test('standard input that is empty', () => {
    refused(runPlanish(['draft', '-', '-o', file()], { input: '' }), 'empty');
  });
});

// `script` of util-linux lends a terminal.
const hasTerminal = spawnSync('script', ['--version']).status === 0;

test.skipIf(!hasTerminal)(
  'answers that are pasted, all before their questions, are each taken for theirs',
  () => {
    const answers = ['K-9', '2026-10-05', 'A. Fox', 'estimator', 'Corvane', 'Tarn', 'wagon', '2021'];
    const pasted = [...answers, '', '', '', '', '', 'door ring, left, kink', '']
      .map((one) => `${one}\n`)
      .join('');
    const command = `'${process.execPath}' '${path.resolve('bin/planish.js')}' draft -o pasted.yaml`;
    spawnSync('script', ['-qec', command, '/dev/null'], { cwd: folder, input: pasted, timeout: 20_000 });
    const text = readFileSync(path.join(folder, 'pasted.yaml'), 'utf8');
    expect(text).toContain('  number: K-9\n');
    expect(text).toContain('  model_year: 2021\n');
    expect(text).toContain('    kind: door ring\n');
  },
  30_000,
);
