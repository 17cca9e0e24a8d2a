import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runPlanish } from './run-planish.ts';

const day = ['--as-of', '2026-10-21'];
const cleared = path.resolve('examples/plans/ring-replaced-whole.yaml');
const stopped = path.resolve('examples/plans/rail-heated-near-pillar.yaml');
const held = path.resolve('examples/plans/electric-sill.yaml');
let folder = '';

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'planish-check-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

function write(name: string, content: string | Uint8Array): string {
  const file = path.join(folder, name);
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, content);
  return file;
}

test('a folder of thousands of files that are no plans: the first are named, the rest are counted', () => {
  const many = mkdtempSync(path.join(tmpdir(), 'planish-many-'));
  for (let index = 0; index < 1000; index += 1)
    writeFileSync(path.join(many, `${String(index)}.yaml`), 'a: 1\n');
  const { status, stderr } = runPlanish(['check', ...day, many]);
  rmSync(many, { recursive: true });
  const lines = stderr.trimEnd().split('\n');
  expect([status, lines.length]).toEqual([2, 22]);
  expect(lines.slice(19)).toEqual([
    expect.stringMatching(/: not a plan\.$/u),
    'planish: 980 more files are not plans; a file that is named is always judged.',
    expect.stringMatching(/^planish: No plan was found in: /u),
  ]);
});

describe('exit status', () => {
  test.each([
    ['cleared', [cleared], 0],
    ['held at start', [held], 1],
    ['held, asked as a draft', ['--stage', 'draft', held], 0],
    ['stopped', [stopped], 1],
    ['stopped, asked as a draft', ['--stage', 'draft', stopped], 1],
    ['the worst of several', [cleared, held, stopped], 1],
    ['no such file', ['nowhere.yaml'], 2],
    ['a bad one among good ones', [cleared, 'nowhere.yaml'], 2],
    ['a pattern without a match', ['nothing/**/*.yaml'], 2],
  ])('%s', (_name, args, status) => {
    expect(runPlanish(['check', ...day, ...args]).status).toBe(status);
  });

  test.each([
    ['an unknown option', ['check', '--colour', cleared]],
    ['an unknown command', ['chekc', cleared]],
    ['no plan named', ['check']],
    ['a date that is none', ['check', '--as-of', '2026-02-30', cleared]],
    ['an unknown form', ['check', '--format', 'html', cleared]],
    ['a folder without a pack', ['check', '--rules', 'examples/plans', cleared]],
  ])('wrong usage is 2, on stderr, without a stack trace: %s', (_name, args) => {
    const result = runPlanish(args);
    expect(result.status).toBe(2);
    expect(result.stdout).toBe('');
    expect(result.stderr).not.toBe('');
    expect(result.stderr).not.toMatch(/\bat .*:\d+:\d+/u);
  });

  test('help and version go to stdout with status 0', () => {
    for (const args of [['--help'], ['check', '--help'], ['--version']]) {
      const result = runPlanish(args);
      expect(result.status).toBe(0);
      expect(result.stdout).not.toBe('');
      expect(result.stderr).toBe('');
    }
  });
});

describe('what cannot be judged is said with its place, and the rest is judged', () => {
  test.each<readonly [string, string | Uint8Array, string]>([
    ['empty.yaml', '', 'empty'],
    ['binary.yaml', new Uint8Array([0x50, 0x4b, 3, 4, 0, 0, 0, 1, 2]), 'control character'],
    ['twice.yaml', 'format: 1\nformat: 1\n', 'Line 2'],
    ['no-parts.yaml', 'format: 1\nvehicle: {}\n', 'parts'],
    ['format-2.yaml', 'format: 2\nvehicle: {}\nparts: []\n', 'Line 1, column 9'],
    ['list.yaml', '- a\n- b\n', 'block of keys'],
    ['tab.yaml', 'format: 1\nvehicle:\n\tmaker: X\nparts: []\n', 'Line 3'],
  ])('%s', (name, content, said) => {
    const result = runPlanish(['check', ...day, write(name, content), cleared]);
    expect(result.status).toBe(2);
    expect(result.stdout).toContain('NOT JUDGED');
    expect(result.stdout).toContain(said);
    expect(result.stdout).toContain('CLEARED');
    expect(result.stderr).toBe('');
  });

  test('a folder named as a plan’s file is searched; one without YAML is no plan found', () => {
    mkdirSync(path.join(folder, 'nothing-here'), { recursive: true });
    const result = runPlanish(['check', ...day, path.join(folder, 'nothing-here')]);
    expect(result.status).toBe(2);
    expect(result.stdout).toContain('No YAML file lies in this folder');
  });

  test('a plan that names a pack that is not here is not judged', () => {
    const result = runPlanish(['check', ...day, 'examples/plans/ring-end-piece-by-drawn-cut.yaml']);
    expect(result.status).toBe(2);
    expect(result.stdout).toContain('corvane-tarn@2026');
    expect(result.stdout).toContain('--rules');
  });
});

describe('folders', () => {
  test('plans are judged, packs and scenarios counted, the rest named as not a plan', () => {
    const plan = readFileSync(cleared, 'utf8');
    write('jobs/a/plan.yaml', plan);
    write('jobs/b/plan.yml', plan);
    write('jobs/pack.yaml', 'pack: x\nformat: 1\n');
    write('jobs/key.yaml', 'format: 1\nscenario: {}\nparts: []\n');
    write('jobs/notes.yaml', 'shopping: [wax]\n');
    write('jobs/readme.txt', 'format: 1\n');
    const result = runPlanish(['check', ...day, 'jobs'], { folder });
    expect(result.status).toBe(0);
    expect(result.stdout).toContain('jobs/a/plan.yaml');
    expect(result.stdout).toContain('jobs/b/plan.yml');
    expect(result.stdout).toContain('2 plans');
    expect(result.stderr).toContain('jobs/notes.yaml: not a plan');
    expect(result.stderr).toContain('2 files skipped');
    expect(result.stderr).not.toContain('readme.txt');
  });

  test('a file that is named is judged whatever it holds', () => {
    const file = write('notes.yaml', 'shopping: [wax]\n');
    expect(runPlanish(['check', ...day, file]).status).toBe(2);
  });

  test('a plan that is reached twice is judged once', () => {
    write('once/plan.yaml', readFileSync(cleared, 'utf8'));
    const result = runPlanish(
      ['check', ...day, '--format', 'json', 'once', 'once/plan.yaml', 'once/*.yaml'],
      { folder },
    );
    expect(JSON.parse(result.stdout)).toMatchObject({ plans: [{ file: 'once/plan.yaml' }] });
  });
});

describe('standard input', () => {
  test('a plan from -', () => {
    const result = runPlanish(['check', ...day, '-'], { input: readFileSync(stopped) });
    expect(result.status).toBe(1);
    expect(result.stdout).toContain('(standard input)');
  });
});

describe('the report', () => {
  test('JSON is as its schema says', () => {
    const schema: unknown = JSON.parse(readFileSync('schemas/report.schema.json', 'utf8'));
    const ajv = new Ajv2020({ strict: true, allErrors: true, allowUnionTypes: true });
    const validate = ajv.compile(schema as object);
    const result = runPlanish([
      'check',
      ...day,
      '--format',
      'json',
      '--rules',
      'examples/rules',
      'examples/plans',
      'nowhere.yaml',
    ]);
    validate(JSON.parse(result.stdout));
    expect(validate.errors ?? []).toEqual([]);
  });

  test('the same to the byte whatever time zone, locale, folder and terminal', () => {
    const args = ['check', ...day, '--format', 'json', '-'];
    const input = readFileSync('examples/plans/student-plan.yaml');
    const first = runPlanish(args, { input });
    const other = runPlanish(args, {
      input,
      folder: tmpdir(),
      env: {
        TZ: 'Pacific/Kiritimati',
        LANG: 'tr_TR.UTF-8',
        LC_ALL: 'tr_TR.UTF-8',
        FORCE_COLOR: '1',
        COLUMNS: '200',
      },
    });
    expect(other.stdout).toBe(first.stdout);
    expect(first.stdout).not.toBe('');
  });

  test('text keeps to 80 columns and has no escape sequences when it is not for a terminal', () => {
    const { stdout } = runPlanish(['check', ...day, '--rules', 'examples/rules', 'examples/plans']);
    expect(stdout).not.toContain('\u001b');
    const wide = stdout.split('\n').filter((line) => line.length > 80 && line.trim().includes(' '));
    expect(wide).toEqual([]);
  });

  test.each([
    [{ FORCE_COLOR: '1' }, true],
    [{ FORCE_COLOR: '0' }, false],
    [{ FORCE_COLOR: '1', NO_COLOR: '1' }, false],
    [{ FORCE_COLOR: '1', NO_COLOR: '' }, true],
    [{}, false],
  ])('colour with %j: %s', (env, coloured) => {
    const { stdout } = runPlanish(['check', ...day, stopped], { env });
    expect(stdout.includes('\u001b[')).toBe(coloured);
  });

  test('quiet gives one line for each plan that is not cleared', () => {
    const { stdout } = runPlanish(['check', ...day, '--quiet', cleared, stopped, held]);
    const lines = stdout.trimEnd().split('\n');
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(/rail-heated-near-pillar\.yaml: stopped/u);
    expect(lines[1]).toMatch(/electric-sill\.yaml: held/u);
  });

  test('hostile text in a plan cannot act on the terminal', () => {
    const plan = readFileSync(cleared, 'utf8').replace(
      'name: Door ring, left',
      'name: "Door \ufff9\u{e0001} ring"',
    );
    const file = write('hostile.yaml', plan.replace('extent: whole', 'extent: part'));
    const { stdout } = runPlanish(['check', ...day, file]);
    expect(stdout).toContain('\\u{FFF9}\\u{E0001}');
    expect(stdout).not.toMatch(/[\ufff9\u{e0001}]/u);
  });

  test('a report of megabytes arrives whole through a slow pipe', async () => {
    const plan = readFileSync('examples/plans/student-plan.yaml', 'utf8');
    for (let n = 0; n < 120; n += 1) write(`many/plan-${String(n)}.yaml`, plan);
    const child = spawn(
      process.execPath,
      [path.resolve('bin/planish.js'), 'check', ...day, '--format', 'json', 'many'],
      {
        cwd: folder,
        stdio: ['ignore', 'pipe', 'inherit'],
      },
    );
    let text = '';
    for await (const chunk of child.stdout) {
      text += String(chunk);
      await new Promise((resume) => setTimeout(resume, 1));
    }
    const report: unknown = JSON.parse(text);
    expect(text.length).toBeGreaterThan(3_000_000);
    expect(report).toMatchObject({ verdict: 'stopped', verdicts: { stopped: 120 } });
  });

  test('a reader that goes away is told of in one sentence, without a stack trace', async () => {
    const child = spawn(
      process.execPath,
      [path.resolve('bin/planish.js'), 'check', ...day, '--format', 'json', 'many'],
      {
        cwd: folder,
        stdio: ['ignore', 'pipe', 'pipe'],
      },
    );
    child.stdout.once('data', () => child.stdout.destroy());
    let said = '';
    child.stderr.on('data', (chunk) => {
      said += String(chunk);
    });
    await new Promise((ended) => child.once('close', ended));
    expect(said).toBe('planish: the output cannot be written to its end: who reads it has gone away.\n');
  });
});
