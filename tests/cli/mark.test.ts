import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it, test } from 'vitest';
import { runPlanish } from './run-planish.ts';

const key = 'examples/class/key.yaml';
const plans = 'examples/class/plans';

interface Student {
  readonly name: string;
  readonly marked: boolean;
  readonly points: number;
  readonly of: number;
  readonly passed: boolean;
  readonly unsafe: boolean;
  readonly categories: Readonly<Record<string, { readonly points: number }>>;
  readonly feedback: readonly string[];
}

interface Marks {
  readonly students: readonly Student[];
  readonly class: {
    readonly passed: number;
    readonly not_marked: number;
    readonly median: number;
    readonly identical: readonly (readonly string[])[];
    readonly mistakes: readonly { readonly mistake: string; readonly students: number }[];
  };
}

function marksOf(...args: readonly string[]): Marks {
  const marks: Marks = JSON.parse(runPlanish(['mark', '--key', key, '--format', 'json', ...args]).stdout);
  return marks;
}

let work = '';
beforeAll(() => {
  work = mkdtempSync(path.join(tmpdir(), 'planish-mark-'));
});
afterAll(() => {
  rmSync(work, { recursive: true, force: true });
});

describe('the class of the examples', () => {
  // Worked out by hand from key and plan, before the program was asked. The key gives 40: decisions 6 + 3 + 2, citations 4 + 2, heat 1
  // (distance kept clear), joints 2 + 3 + 1, completeness 2 (class) + 1 (damage) + 5 entries + 2 + 1 (topics), safety 5.
  test.each<[string, Readonly<Record<string, number>>, boolean]>([
    // All that is asked.
    ['ash', { decision: 11, citation: 6, heat: 1, joints: 6, completeness: 11, safety: 5 }, true],
    // Other names and order. The ring's document without its revision: 2 of 4; 52 spots for 56: nearly, 1 of 3.
    ['birch', { decision: 11, citation: 4, heat: 1, joints: 4, completeness: 11, safety: 5 }, true],
    // Sections the ring by an arc: its decision 0 of 6; another method, no count, no nugget; stopped.
    ['cedar', { decision: 5, citation: 6, heat: 1, joints: 0, completeness: 11, safety: 0 }, false],
    // Heats and straightens the ring, citing nothing for it, joining nothing.
    ['elm', { decision: 5, citation: 2, heat: 1, joints: 0, completeness: 11, safety: 0 }, false],
    // Ring replaced without saying whole (3), panel replaced (1), sill left alone (2); no document; spots, 40 of them; of the entries
    // only the damage. Batteries and wait: nothing is made safe, so both topics are open.
    ['fir', { decision: 6, citation: 0, heat: 0, joints: 2, completeness: 1, safety: 0 }, false],
    // The ring by the document of the body before: no points for it, and stopped. The wait is not stated: 1 off.
    ['hazel', { decision: 11, citation: 2, heat: 1, joints: 6, completeness: 10, safety: 0 }, false],
    ['maple', { decision: 11, citation: 6, heat: 1, joints: 6, completeness: 11, safety: 5 }, true],
  ])('%s has the marks that were worked out by hand', (name, byHand, passed) => {
    const student = marksOf(plans).students.find((one) => one.name === name);
    expect(
      Object.fromEntries(Object.entries(student?.categories ?? {}).map(([of, { points }]) => [of, points])),
    ).toEqual(byHand);
    expect(student).toMatchObject({
      of: 40,
      passed,
      points: Object.values(byHand).reduce((total, one) => total + one, 0),
    });
  });

  it('says of a plan that cannot be read where, marks the others, and gives status 2', () => {
    const { students, class: whole } = marksOf(plans);
    const larch = students.find(({ name }) => name === 'larch');
    expect(larch).toMatchObject({ marked: false, passed: false, points: 0 });
    expect(larch?.feedback[0]).toMatch(/Line 3: /);
    expect(whole).toMatchObject({ passed: 3, not_marked: 1 });
    expect(runPlanish(['mark', '--key', key, plans]).status).toBe(2);
    expect(runPlanish(['mark', '--key', key, `${plans}/ash.yaml`, `${plans}/fir.yaml`]).status).toBe(0);
  });

  // Of 9, 19, 23, 30, 36, 40, 40 points the middle one is 30 of 40.
  it('has the median that was worked out by hand', () => {
    expect(marksOf(plans).class.median).toBeCloseTo(30 / 40, 12);
  });

  it('notes plans that say the same, whatever their comments, order of keys and author', () => {
    expect(marksOf(plans).class.identical).toEqual([['ash', 'maple']]);
  });

  it('keeps the answers back unless they are asked for', () => {
    const kept = runPlanish(['mark', '--key', key, plans]).stdout;
    const told = runPlanish(['mark', '--key', key, '--reveal', plans]).stdout;
    expect(kept).not.toContain('BRM-TRN-3120,');
    expect(kept).not.toContain('Answer:');
    expect(told.replaceAll(/\s+/gu, ' ')).toContain('Answer: Right is 56.');
  });

  it('is the same in whatever order the plans are named, and each alone has the marks that it has in the class', () => {
    const files = readdirSync(path.join(import.meta.dirname, '../..', plans)).map(
      (file) => `${plans}/${file}`,
    );
    const all = marksOf(...files);
    expect(marksOf(...files.toReversed())).toEqual(all);
    for (const student of all.students)
      expect(marksOf(`${plans}/${student.name}.yaml`).students).toEqual([student]);
  });

  it('fits 80 columns without colour', () => {
    const { stdout } = runPlanish(['mark', '--key', key, plans]);
    for (const line of stdout.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  it('has numbers in place of names, and a file that says whose they are', () => {
    const whose = path.join(work, 'whose.csv');
    const { stdout } = runPlanish(['mark', '--key', key, '--numbers', whose, plans]);
    expect(stdout).not.toMatch(/\b(?:ash|birch|maple)\b/u);
    const rows = readFileSync(whose, 'utf8').trim().split('\r\n').slice(1);
    expect(rows.map((row) => row.split(',')[1]).toSorted()).toEqual([
      ...['ash', 'birch', 'cedar', 'elm', 'fir', 'hazel', 'larch', 'maple'],
    ]);
  });
});

describe('what students may write', () => {
  const hostile = '</script><script>alert(1)</script><img src=x onerror=alert(1)>"\'&=1+1';

  function plan(name: string): string {
    const quoted = JSON.stringify(name);
    return `format: 1\nstage: start\njob: { written_by: { name: ${quoted}, role: trainee } }\nvehicle: { maker: Corvane, model: Tarn }\nparts:\n  - { id: a, name: ${quoted}, operations: [{ do: replace }] }\n  - { id: ring, name: Door ring left, kind: door ring, operations: [{ do: replace, at: ${quoted} }] }\n`;
  }

  it('is text in every form', () => {
    const folder = path.join(work, 'hostile');
    mkdirSync(folder);
    writeFileSync(path.join(folder, '=1+1.yaml'), plan(hostile));
    writeFileSync(path.join(folder, '<b>.yaml'), plan('\u202e\u0007 back'));
    const html = runPlanish(['mark', '--key', key, '--format', 'html', folder]).stdout;
    expect(html).not.toMatch(/<script|<img|onerror="|<b>/u);
    expect(html).toContain('&lt;script&gt;');
    expect(html).not.toContain('\u202e');
    const csv = runPlanish(['mark', '--key', key, '--format', 'csv', folder]).stdout;
    for (const row of csv.split('\r\n').slice(1)) expect(row).not.toMatch(/^[=+\-@]/u);
  });

  it('crashes nobody else’s marking', () => {
    const folder = path.join(work, 'odd');
    mkdirSync(folder);
    writeFileSync(path.join(folder, 'empty.yaml'), 'format: 1\nvehicle: {}\nparts: []\n');
    writeFileSync(
      path.join(folder, 'proto.yaml'),
      'format: 1\nvehicle: {}\nparts: [{ __proto__: { name: x } }]\n',
    );
    writeFileSync(
      path.join(folder, 'deep.yaml'),
      `format: 1\nvehicle: {}\nparts: ${'['.repeat(500)}${']'.repeat(500)}\n`,
    );
    writeFileSync(
      path.join(folder, 'good.yaml'),
      readFileSync(path.join(import.meta.dirname, '../..', plans, 'ash.yaml')),
    );
    const { students } = marksOf(folder);
    expect(students.find(({ name }) => name === 'good')?.points).toBe(40);
    expect(students).toHaveLength(4);
  });
});

describe('what cannot be marked', () => {
  it('is a plan of another exercise', () => {
    const file = path.join(work, 'other.yaml');
    writeFileSync(file, 'format: 1\nvehicle: { maker: Brask, model: Fjell }\nparts: []\n');
    const { stdout, status } = runPlanish(['mark', '--key', key, file]);
    expect(stdout).toContain('not marked');
    expect(stdout.replaceAll(/\s+/gu, ' ')).toContain('for another vehicle than this exercise');
    expect(status).toBe(2);
  });

  it('are two files of one name', () => {
    for (const folder of ['one', 'two']) {
      mkdirSync(path.join(work, folder));
      writeFileSync(path.join(work, folder, 'oak.yaml'), 'format: 1\nvehicle: {}\nparts: []\n');
    }
    const { stderr, stdout, status } = runPlanish([
      'mark',
      '--key',
      key,
      path.join(work, 'one'),
      path.join(work, 'two'),
    ]);
    expect(stderr).toMatch(/would both be called oak/);
    expect(stdout).toBe('');
    expect(status).toBe(2);
  });

  test.each<[string, readonly string[], RegExp]>([
    ['a key that is not there', ['--key', 'no-such.yaml', plans], /no-such\.yaml/],
    ['a plan for a key', ['--key', `${plans}/ash.yaml`, plans], /line \d+, column \d+/],
    ['a folder of no plans', ['--key', key, 'rules/general'], /No plan was found/],
    ['nothing', ['--key', key, 'no-such-folder'], /no-such-folder|No plan/],
  ])('is %s', (_what, args, said) => {
    const { stderr, stdout, status } = runPlanish(['mark', ...args]);
    expect(`${stderr}${stdout}`).toMatch(said);
    expect(status).toBe(2);
  });

  it('goes to no file that is there already, unless it is forced', () => {
    const file = path.join(work, 'marks.html');
    writeFileSync(file, 'mine');
    const args = ['mark', '--key', key, '--format', 'html', '-o', file, `${plans}/ash.yaml`];
    const refused = runPlanish(args);
    expect(refused.status).toBe(2);
    expect(refused.stderr).toContain('--force');
    expect(readFileSync(file, 'utf8')).toBe('mine');
    expect(runPlanish([...args, '--force']).status).toBe(0);
    expect(readFileSync(file, 'utf8')).toContain('<!doctype html>');
  });
});
