import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { formNames } from '../../src/cli/reporting/report-forms.ts';
import { runPlanish } from './run-planish.ts';
import type { RunResult } from './run-planish.ts';

// Each starts other programs, which takes long on a busy machine.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const day = ['--as-of', '2026-10-21'];
const plans = ['--rules', path.resolve('examples/rules'), path.resolve('examples/plans')];
/** How many plans the examples hold. */
const all = readdirSync('examples/plans').filter((name) => name.endsWith('.yaml')).length;
let folder = '';

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'planish-merge-'));
  for (const part of [1, 2, 3])
    keep(`part-${String(part)}.ndjson`, ['--format', 'ndjson', '--shard', `${String(part)}/3`]);
  keep('all.ndjson', ['--format', 'ndjson']);
  keep('all.json', ['--format', 'json']);
  keep('later.ndjson', ['--format', 'ndjson'], ['--as-of', '2026-10-22']);
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

function keep(name: string, options: readonly string[], on: readonly string[] = day): void {
  writeFileSync(path.join(folder, name), runPlanish(['check', ...on, ...options, ...plans]).stdout);
}

const read = (name: string): string => readFileSync(path.join(folder, name), 'utf8');
const merge = (...args: readonly string[]): RunResult => runPlanish(['merge', ...args], { folder });

interface Report {
  readonly verdict: string;
  readonly plans: readonly {
    readonly file: string;
    readonly not_judged: readonly { readonly sentence: string }[];
  }[];
}
const merged = (...files: readonly string[]): Report =>
  JSON.parse(merge('--format', 'json', ...files).stdout) as Report;

const reasons = ({ plans: given }: Report): readonly string[] =>
  given.flatMap(({ file, not_judged }) => not_judged.map(({ sentence }) => `${file}: ${sentence}`));

describe('whole reports', () => {
  test('a report by itself comes out as it went in, from either form to either form', () => {
    expect(merge('--format', 'json', 'all.ndjson')).toEqual({
      status: 1,
      stdout: read('all.json'),
      stderr: '',
    });
    expect(merge('--format', 'ndjson', 'all.json')).toEqual({
      status: 1,
      stdout: read('all.ndjson'),
      stderr: '',
    });
  });

  // What a report does not hold (the title of a plan, related places, the rules that found nothing) is not in these either.
  test.each(formNames.filter((form) => !['text', 'markdown', 'sarif'].includes(form)))(
    'as %s it is what check writes',
    (form) => {
      const direct = runPlanish(['check', ...day, '--format', form, ...plans]).stdout;
      expect(merge('--format', form, 'all.json').stdout).toBe(direct);
    },
  );

  test('the parts of a job come to the same plans, counts and status as one run', () => {
    const whole = JSON.parse(read('all.json')) as Report;
    const parts = merged('part-1.ndjson', 'part-2.ndjson', 'part-3.ndjson');
    const byFile = (report: Report): unknown => report.plans.toSorted((a, b) => (a.file < b.file ? -1 : 1));
    expect(byFile(parts)).toEqual(byFile(whole));
    expect({ ...parts, plans: [] }).toEqual({ ...whole, plans: [] });
  });

  test('reports that were put one after the other into one file are read one after the other', () => {
    writeFileSync(
      path.join(folder, 'cat.ndjson'),
      [1, 2, 3].map((part) => read(`part-${String(part)}.ndjson`)).join(''),
    );
    expect(merged('cat.ndjson').plans).toHaveLength(all);
  });

  test('a plan that is in two reports counts once, and that is said', () => {
    const result = merge('--format', 'json', 'all.json', 'all.ndjson');
    expect((JSON.parse(result.stdout) as Report).plans).toHaveLength(all);
    expect(result.stderr).toBe(
      `planish: ${String(all)} plans were in more than one report and are counted once.\n`,
    );
  });
});

describe('what is lost is never a pass', () => {
  test('a part of the job that is not there', () => {
    expect(reasons(merged('part-1.ndjson', 'part-3.ndjson'))).toEqual([
      '(merged): Of 3 parts of the job the report of part 2 is not there.',
    ]);
    expect(merge('part-1.ndjson', 'part-3.ndjson').status).toBe(2);
  });

  test('a report that was cut off between two lines, in one, or that is empty', () => {
    const lines = read('all.ndjson').split('\n');
    writeFileSync(path.join(folder, 'between.ndjson'), `${lines.slice(0, 3).join('\n')}\n`);
    writeFileSync(path.join(folder, 'within.ndjson'), read('all.ndjson').slice(0, -100));
    writeFileSync(path.join(folder, 'empty.ndjson'), '');
    const cut = 'The report was cut off: the line that ends its run is not there.';
    expect(reasons(merged('between.ndjson'))).toEqual([`between.ndjson: ${cut}`]);
    expect(reasons(merged('within.ndjson'))).toEqual([
      `within.ndjson: Line ${String(all)} is no line of a report of planish.`,
      `within.ndjson: ${cut}`,
    ]);
    expect(reasons(merged('all.ndjson', 'empty.ndjson'))).toHaveLength(1);
    for (const name of ['between.ndjson', 'within.ndjson']) expect(merge(name).status).toBe(2);
  });

  test('a line that is gone from the middle', () => {
    const lines = read('all.ndjson').split('\n');
    writeFileSync(path.join(folder, 'gone.ndjson'), [...lines.slice(0, 2), ...lines.slice(3)].join('\n'));
    expect(reasons(merged('gone.ndjson'))).toEqual([
      `gone.ndjson: Of the run that ends at line ${String(all - 1)} there are ${String(all - 1)} plans, and it had ${String(all)}.`,
    ]);
  });

  test('a report of another day or other rules', () => {
    const [reason] = reasons(merged('all.ndjson', 'later.ndjson'));
    expect(reason).toMatch(
      /^later\.ndjson: This report is of other rules, another day or another planish than all\.ndjson/u,
    );
    expect(merge('all.ndjson', 'later.ndjson').status).toBe(2);
  });

  test('a file that is no report, beside one that is', () => {
    writeFileSync(path.join(folder, 'other.json'), '{"report": 1}');
    expect(reasons(merged('other.json', 'all.json', 'nowhere.json'))).toEqual([
      expect.stringMatching(/^other\.json: Line 1 is no line of a report of planish/u),
      'nowhere.json: There is no such file.',
    ]);
  });
});

test('no report at all is 2, and nothing is written', () => {
  const result = merge('--output', 'csv=none.csv', 'nowhere.json');
  expect(result).toMatchObject({ status: 2, stdout: '' });
  expect(result.stderr).toBe('planish: nowhere.json: There is no such file.\n');
  expect(() => read('none.csv')).toThrow('ENOENT');
});
