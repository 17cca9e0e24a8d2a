import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runPlanish } from './run-planish.ts';

const bin = path.resolve('bin/planish.js');
const day = ['--as-of', '2026-10-21'];
const cleared = path.resolve('examples/plans/ring-replaced-whole.yaml');
const stopped = path.resolve('examples/plans/rail-heated-near-pillar.yaml');
const held = path.resolve('examples/plans/electric-sill.yaml');
let folder = '';

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'planish-end-'));
  writeFileSync(path.join(folder, 'cleared.yaml'), readFileSync(cleared));
  writeFileSync(path.join(folder, 'stopped.yaml'), readFileSync(stopped));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const hasStackTrace = (text: string): boolean => /^\s+at .+:\d+:\d+|node:internal|Error: /mu.test(text);

interface Judged {
  readonly file: string;
  readonly verdict: string;
  readonly stage?: string;
  readonly not_judged: readonly { readonly sentence: string }[];
}

function plansOf(stdout: string): readonly Judged[] {
  const report: { readonly plans: readonly Judged[] } = JSON.parse(stdout);
  return report.plans;
}

describe('one bad file does not keep the others from being judged', () => {
  test('missing, empty, binary, a ring of links, a folder in it: each has a sentence, the rest a verdict', () => {
    symlinkSync('ring.yaml', path.join(folder, 'ring.yaml'));
    writeFileSync(path.join(folder, 'empty.yaml'), '');
    writeFileSync(path.join(folder, 'binary.yaml'), new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3]));
    mkdirSync(path.join(folder, 'void'));
    const files = ['nowhere.yaml', 'empty.yaml', 'binary.yaml', 'ring.yaml', 'void', 'cleared.yaml'];
    const result = runPlanish(['check', ...day, '--format', 'json', ...files, 'stopped.yaml'], { folder });
    expect(result.status).toBe(2);
    expect(result.stderr).toBe('');
    const plans = plansOf(result.stdout);
    expect(plans.map(({ file, verdict }) => [file, verdict])).toEqual([
      ...files.slice(0, 5).map((file) => [file, 'not judged']),
      ['cleared.yaml', 'cleared'],
      ['stopped.yaml', 'stopped'],
    ]);
    for (const { not_judged: reasons } of plans.slice(0, 5)) {
      expect(reasons).toHaveLength(1);
      expect(reasons[0]?.sentence).toMatch(/^\P{Ll}.*\.$/u);
    }
  });

  test('a folder as standard input', () => {
    // A shell opens it; Node's own spawning cannot.
    const result = spawnSync(
      'sh',
      [
        '-c',
        `"$0" "$1" check ${day.join(' ')} --format json - cleared.yaml <"$2"`,
        process.execPath,
        bin,
        folder,
      ],
      { cwd: folder, env: { PATH: process.env['PATH'] ?? '' }, encoding: 'utf8' },
    );
    expect(result.stderr).toBe('');
    expect(result.status).toBe(2);
    expect(plansOf(result.stdout).map(({ verdict }) => verdict)).toEqual(['not judged', 'cleared']);
  });

  test('nothing on standard input', () => {
    const result = runPlanish(['check', ...day, '--quiet', '-', 'stopped.yaml'], { folder, input: '' });
    expect(result.status).toBe(2);
    expect(result.stdout).toMatch(
      /^\(standard input\): not judged, The file is empty\.\nstopped\.yaml: stopped, 1 stop, no holds, \d+ notes\n$/u,
    );
  });
});

describe('no plan found is 2', () => {
  test.each<readonly [string, readonly string[]]>([
    ['an empty name, as of an empty variable', ['']],
    ['a folder of packs only', ['packs']],
    ['a folder of other YAML only', ['other']],
  ])('%s', (_name, args) => {
    mkdirSync(path.join(folder, 'none/packs'), { recursive: true });
    mkdirSync(path.join(folder, 'none/other'), { recursive: true });
    writeFileSync(path.join(folder, 'none/packs/pack.yaml'), 'pack: x\n');
    writeFileSync(path.join(folder, 'none/other/notes.yaml'), 'format: 1\n');
    const result = runPlanish(['check', ...day, '--format', 'json', ...args], {
      folder: path.join(folder, 'none'),
    });
    expect(result.status).toBe(2);
    expect(JSON.parse(result.stdout)).toMatchObject({ verdict: 'not judged' });
  });

  test('a file of a folder that is no plan is judged when it is named as well', () => {
    writeFileSync(path.join(folder, 'none/other/notes.yaml'), 'format: 1\n');
    const args = ['check', ...day, '--quiet', cleared, 'none/other', 'none/other/notes.yaml'];
    const result = runPlanish(args, { folder });
    expect(result.status).toBe(2);
    expect(result.stdout).toMatch(/^none\/other\/notes\.yaml: not judged, .*`vehicle`/u);
    expect(result.stderr).toBe('');
  });
});

describe('what is asked', () => {
  test('--stage asks its own question of every plan, and the report says which', () => {
    const args = ['check', ...day, '--format', 'json', held, cleared];
    const asked = (stage: string): readonly (string | undefined)[] =>
      plansOf(runPlanish([...args, '--stage', stage]).stdout).map((plan) => plan.stage);
    expect(asked('draft')).toEqual(['draft', 'draft']);
    expect(asked('release')).toEqual(['release', 'release']);
  });

  test('at release a plan that is cleared to start is asked for its readings and signature', () => {
    const { status, stdout } = runPlanish([
      'check',
      ...day,
      '--format',
      'json',
      '--stage',
      'release',
      cleared,
    ]);
    expect(status).toBe(1);
    expect(stdout).toContain('"rule": "signature-missing"');
    expect(stdout).toContain('"rule": "coupon-not-passed"');
  });

  test('a plan without a stage is asked the strictest', () => {
    const plan = readFileSync(cleared, 'utf8').replace('stage: start\n', '');
    const result = runPlanish(['check', ...day, '--format', 'json', '-'], { input: plan });
    expect(plansOf(result.stdout)[0]?.stage).toBe('release');
  });

  test('--as-of is the day of the judgement: what is looked up on the 6th is not yet so on the 5th', () => {
    const on = (date: string): ReturnType<typeof runPlanish> =>
      runPlanish(['check', '--as-of', date, '--format', 'json', cleared]);
    expect(on('2026-10-06').stdout).not.toContain('looked-up-in-the-future');
    expect(on('2026-10-05').stdout).toContain('looked-up-in-the-future');
    expect(JSON.parse(on('2026-10-05').stdout)).toMatchObject({ as_of: '2026-10-05', verdict: 'held' });
  });

  test('without it, it is today in UTC, whatever the time zone', () => {
    const today = (): string => new Date().toISOString().slice(0, 10);
    const before = today();
    const result = runPlanish(['check', '--format', 'json', cleared], { env: { TZ: 'Pacific/Kiritimati' } });
    const report: { readonly as_of: string } = JSON.parse(result.stdout);
    expect([before, today()]).toContain(report.as_of);
  });

  test.each(['2026-02-30', '2026-13-01', '05.10.2026', 'today', '', '2O26-10-05'])(
    'a day that is none, `%s`, is refused with the reason and judges nothing',
    (date) => {
      const result = runPlanish(['check', '--as-of', date, cleared]);
      expect(result).toMatchObject({ status: 2, stdout: '' });
      expect(result.stderr).toContain('--as-of');
      expect(hasStackTrace(result.stderr)).toBe(false);
    },
  );

  test.each<readonly [string, readonly string[]]>([
    ['a stage that is none', ['check', '--stage', 'begin', cleared]],
    ['an option without its value', ['check', cleared, '--rules']],
    ['nothing at all', []],
    ['a folder of rules that is not there', ['check', '--rules', 'nowhere', cleared]],
    ['a file instead of a folder of rules', ['check', '--rules', cleared, cleared]],
    ['a prototype key as a command', ['__proto__', cleared]],
  ])('wrong usage is 2 and on stderr: %s', (_name, args) => {
    const result = runPlanish(args);
    expect(result).toMatchObject({ status: 2, stdout: '' });
    expect(result.stderr.trim()).not.toBe('');
    expect(hasStackTrace(result.stderr)).toBe(false);
  });

  test('control characters in an argument do not act on the terminal', () => {
    const result = runPlanish(['check', ...day, 'a\u001b[2Jb.yaml', 'c\u202ed.yaml'], { folder });
    expect(result.status).toBe(2);
    expect(result.stdout).toContain('a\\u{001B}[2Jb.yaml');
    expect(result.stdout + result.stderr).not.toMatch(/\p{Cf}/u);
    expect(result.stdout + result.stderr).not.toContain('\u001b');
  });
});

describe('where it goes', () => {
  test('nothing but the report on stdout: what is skipped or no plan is said on stderr', () => {
    const mixed = path.join(folder, 'mixed');
    mkdirSync(mixed);
    writeFileSync(path.join(mixed, 'plan.yaml'), readFileSync(cleared));
    writeFileSync(path.join(mixed, 'pack.yaml'), 'pack: x\n');
    writeFileSync(path.join(mixed, 'list.yaml'), '- a\n');
    const result = runPlanish(['check', ...day, '--format', 'json', 'mixed'], { folder });
    expect(result.status).toBe(0);
    expect(plansOf(result.stdout).map(({ file }) => file)).toEqual(['mixed/plan.yaml']);
    expect(result.stderr).toBe(
      'planish: mixed/list.yaml: not a plan.\nplanish: 1 file skipped: rule packs or scenarios.\n',
    );
  });

  test('a file that no parser can read, in a folder, is not judged and makes it 2', () => {
    const broken = path.join(folder, 'broken');
    mkdirSync(broken);
    writeFileSync(path.join(broken, 'a.yaml'), 'format: 1\nparts: [\n');
    writeFileSync(path.join(broken, 'b.yaml'), readFileSync(cleared));
    const result = runPlanish(['check', ...day, '--format', 'json', 'broken'], { folder });
    expect(result.status).toBe(2);
    expect(plansOf(result.stdout).map(({ verdict }) => verdict)).toEqual(['not judged', 'cleared']);
  });

  test('cleared plans are silent with --quiet', () => {
    expect(runPlanish(['check', ...day, '--quiet', cleared])).toEqual({ status: 0, stdout: '', stderr: '' });
  });

  test('the same bytes from another folder, when the plans are named by their whole path', () => {
    const args = ['check', ...day, '--format', 'json', cleared, path.dirname(stopped)];
    const first = runPlanish(args);
    const env = { TZ: 'America/St_Johns', LANG: 'de_DE.UTF-8', LC_ALL: 'C', NO_COLOR: '1', FORCE_COLOR: '1' };
    expect(runPlanish(args, { folder, env })).toEqual(first);
    expect(runPlanish(args)).toEqual(first);
  });

  test('text is the same to the byte too', () => {
    const args = ['check', ...day, held, cleared];
    const env = { TZ: 'Asia/Kathmandu', LC_ALL: 'tr_TR.UTF-8', COLUMNS: '40', TERM: 'dumb' };
    expect(runPlanish(args, { folder, env })).toEqual(runPlanish(args));
  });
});

describe('a reader that goes away', () => {
  /** Runs planish with the given stream closed by its reader before anything can be written. */
  async function unheard(
    closed: 'stdout' | 'stderr',
    args: readonly string[],
  ): Promise<{ status: number | null; heard: string }> {
    const child = spawn(process.execPath, [bin, ...args], {
      cwd: folder,
      env: { PATH: process.env['PATH'] ?? '' },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    child[closed].destroy();
    let heard = '';
    child[closed === 'stdout' ? 'stderr' : 'stdout'].on('data', (chunk) => {
      heard += String(chunk);
    });
    const status = await new Promise<number | null>((ended) => child.once('close', ended));
    return { status, heard };
  }

  test('has not the whole report: that is said, and is 2 whatever the plans come to', async () => {
    const heard = 'planish: the output cannot be written to its end: who reads it has gone away.\n';
    const args = ['check', ...day, '--format', 'json', 'cleared.yaml', 'stopped.yaml'];
    expect(await unheard('stdout', args)).toEqual({ status: 2, heard });
    expect(await unheard('stdout', ['check', ...day, 'cleared.yaml'])).toEqual({ status: 2, heard });
  });

  test('ends help quietly', async () => {
    expect(await unheard('stdout', ['check', '--help'])).toEqual({ status: 0, heard: '' });
  });

  test('of the complaints neither', async () => {
    const { status, heard } = await unheard('stderr', [
      'check',
      ...day,
      '--quiet',
      'none/other',
      'cleared.yaml',
    ]);
    expect({ status, heard }).toEqual({ status: 0, heard: '' });
    expect((await unheard('stderr', ['check', '--colour', 'cleared.yaml'])).status).toBe(2);
  });
});
