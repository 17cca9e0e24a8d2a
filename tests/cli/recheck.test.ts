import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { parse as parseCsv } from 'csv-parse/sync';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { version } from '../../src/cli/version.ts';
import { rail, shielded, signed, skin } from '../recheck/archive.ts';
import { runPlanish } from './run-planish.ts';
import type { RunResult } from './run-planish.ts';

const schema: object = JSON.parse(readFileSync('schemas/recheck.schema.json', 'utf8'));
const validate = new Ajv2020({ strict: true, allErrors: true, allowUnionTypes: true }).compile(schema);

let archive = '';
beforeEach(() => {
  archive = mkdtempSync(path.join(tmpdir(), 'planish-recheck-'));
});
afterEach(() => {
  rmSync(archive, { recursive: true, force: true });
});

const day = ['--as-of', '2026-10-21'] as const;
const put = (name: string, text: string): string => {
  const file = path.join(archive, name);
  writeFileSync(file, text);
  return file;
};
const recheck = (...more: readonly string[]): RunResult => runPlanish(['recheck', archive, ...more]);

interface RecheckJson {
  readonly from: readonly { readonly version: string }[];
  readonly to: readonly { readonly version: string }[];
  readonly counts: Readonly<Record<string, number>>;
  readonly rules: Readonly<
    Record<
      string,
      readonly {
        readonly rule: string;
        readonly plans: readonly string[];
        readonly replaces?: readonly string[];
      }[]
    >
  >;
  readonly plans: readonly {
    readonly file: string;
    readonly change: string;
    readonly then: string;
    readonly now: string;
    readonly as_of: string;
    readonly reasons: readonly { readonly rule: string }[];
  }[];
  readonly not_judged: readonly { readonly file: string }[];
  readonly computed_differently: readonly {
    readonly recorded_by: string;
    readonly other_planish: boolean;
    readonly then?: string;
    readonly again?: string;
    readonly moved: readonly {
      readonly fact: string;
      readonly then: { readonly value?: number };
      readonly now?: { readonly value?: number };
    }[];
    readonly not_found_any_more: readonly string[];
    readonly not_found_then: readonly string[];
    readonly remarks: readonly string[];
  }[];
  readonly not_among_these: readonly string[];
}

function asJson(...more: readonly string[]): RecheckJson & { readonly status: number | null } {
  const { stdout, status } = recheck('--format', 'json', ...more);
  const json: RecheckJson = JSON.parse(stdout);
  expect([validate(json), validate.errors]).toEqual([true, null]);
  return { ...json, status };
}

describe('what an update of the rules changes', () => {
  test('what passed then and is stopped now, by the rule that stops it', () => {
    put('a.yaml', shielded);
    put('b.yaml', rail);
    put('c.yaml', shielded.replaceAll('K-2211', 'K-2212'));
    const { rules, plans, counts, status, from, to } = asJson(
      '--from',
      'general@1.0',
      '--to',
      'general@2',
      ...day,
    );
    expect([from[0]?.version, to[0]?.version]).toEqual(['1.0.0', '2.0.0']);
    expect(counts).toEqual({
      plans: 3,
      no_longer_passes: 2,
      worse: 0,
      passes_now: 0,
      better: 0,
      same: 1,
      not_judged: 0,
    });
    expect(rules['no_longer_passes']).toMatchObject([
      {
        rule: 'pyrotechnic-only-shielded',
        severity: 'stop',
        since: '2.0.0',
        replaces: ['pyrotechnic-shield-uncited'],
        plans: [path.join(archive, 'a.yaml'), path.join(archive, 'c.yaml')],
      },
    ]);
    expect(plans.map(({ then, now }) => [then, now])).toEqual([
      ['cleared', 'stopped'],
      ['cleared', 'stopped'],
    ]);
    expect(status).toBe(1);
  });

  test('the other way round it passes, and nothing is worse', () => {
    put('a.yaml', shielded);
    const { rules, counts, status } = asJson('--from', 'general@2', '--to', 'general@1.0', ...day);
    expect(counts).toMatchObject({ passes_now: 1, no_longer_passes: 0, worse: 0 });
    expect(rules['passes_now']?.map(({ rule }) => rule)).toEqual(['pyrotechnic-only-shielded']);
    expect(status).toBe(0);
  });

  test('held then and stopped now is worse, though it did not pass; a draft that is held passes', () => {
    put('a.yaml', shielded);
    expect(asJson('--from', 'general@1.1', '--to', 'general@2', ...day)).toMatchObject({
      counts: { worse: 1, no_longer_passes: 0 },
      status: 1,
    });
    const drafts = asJson('--from', 'general@1.0', '--to', 'general@1.1', '--stage', 'draft', ...day);
    expect(drafts).toMatchObject({ counts: { worse: 1, no_longer_passes: 0 }, status: 1 });
    expect(asJson('--from', 'general@1.1', '--to', 'general@2', '--stage', 'draft', ...day)).toMatchObject({
      counts: { worse: 0, no_longer_passes: 1 },
      status: 1,
    });
  });

  test('no change at all: status 0, whatever the verdict', () => {
    put('a.yaml', shielded);
    put('b.yaml', rail);
    expect(asJson('--from', 'general@2', '--to', 'general@2', ...day)).toMatchObject({
      counts: { same: 2 },
      status: 0,
    });
  });

  test('verdicts are those of check, pinned to the version', () => {
    const versions = ['1.0.0', '1.1.0', '2.0.0'];
    const expected = versions.map((version) => {
      const file = put(`at-${version}.yaml`, shielded.replace(/general@\d/u, `general@${version}`));
      const { stdout } = runPlanish(['check', '--format', 'json', ...day, file]);
      const report: { readonly verdict: string } = JSON.parse(stdout);
      rmSync(file);
      return report.verdict;
    });
    expect(expected).toEqual(['cleared', 'held', 'stopped']);
    put('a.yaml', shielded);
    const got = versions.slice(1).map((version, index) => {
      const { plans } = asJson(
        '--from',
        `general@${versions[index] ?? ''}`,
        '--to',
        `general@${version}`,
        ...day,
      );
      return [plans[0]?.then, plans[0]?.now];
    });
    expect(got).toEqual([
      ['cleared', 'held'],
      ['held', 'stopped'],
    ]);
  });

  test('what a plan pins of other packs stays as it is', () => {
    const plan = readFileSync('examples/plans/ring-end-piece-by-drawn-cut.yaml', 'utf8');
    put('a.yaml', plan);
    const { counts, status } = asJson(
      '--rules',
      'examples/rules/corvane-tarn',
      '--from',
      'general@1',
      '--to',
      'general@2',
      ...day,
    );
    expect([counts['plans'], counts['not_judged'], status]).toEqual([1, 0, 0]);
  });

  test('without --from, what each plan pins; without --to, the newest', () => {
    put('a.yaml', shielded.replace(/general@\d/u, 'general@1.0'));
    put('b.yaml', shielded.replaceAll('K-2211', 'K-1'));
    const { plans } = asJson(...day);
    expect(plans.map(({ file, then, now }) => [path.basename(file), then, now])).toEqual([
      ['a.yaml', 'cleared', 'stopped'],
    ]);
  });
});

describe('as of which day', () => {
  test('each signed plan as of its signature, unless a day is given', () => {
    const old = shielded.replace('stage: start', 'stage: start\n');
    const with_ = (date: string): string =>
      `${old}\nsign_off: { by: { name: R. Amsel, role: estimator }, date: ${date} }\n`;
    put('a.yaml', with_('2026-10-19'));
    expect(asJson('--from', 'general@1', '--to', 'general@2').plans.map((one) => one.as_of)).toEqual([
      '2026-10-19',
    ]);
    expect(asJson('--from', 'general@1', '--to', 'general@2', ...day).plans.map((one) => one.as_of)).toEqual([
      '2026-10-21',
    ]);
  });
});

describe('what cannot be judged', () => {
  test('is listed, the others are judged, and the status is 2', () => {
    put('a.yaml', shielded);
    put('b.yaml', 'format: 1\nparts: [\n');
    put('c.yaml', rail.replace(/general@\d/u, 'nobodys-pack@1'));
    const json = asJson('--from', 'general@1.0', '--to', 'general@2', ...day);
    expect(json.not_judged.map(({ file }) => path.basename(file)).sort()).toEqual(['b.yaml', 'c.yaml']);
    expect(json).toMatchObject({ counts: { no_longer_passes: 1, not_judged: 2 }, status: 2 });
    const { stdout } = recheck('--from', 'general@1.0', '--to', 'general@2', ...day);
    expect(stdout).toContain('Could not be judged');
    expect(stdout).toContain('nobodys-pack@1');
  });

  test.each([
    [
      'no such version',
      ['--from', 'general@7'],
      '--from asks for `general@7`; here is general 1.0.0, 1.1.0, 2.0.0',
    ],
    ['no such pack', ['--to', 'genral@2'], 'Nearest known: `general`'],
    ['no such report', ['--report', 'nowhere.json'], 'nowhere.json: There is no such file.'],
  ])('%s is told before any plan is read', (_name, more, expected) => {
    put('a.yaml', shielded);
    const { status, stderr, stdout } = recheck(...more);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toContain(expected);
  });

  test('an archive without a plan is no pass', () => {
    const { status, stdout } = recheck('--from', 'general@1');
    expect(status).toBe(2);
    expect(stdout).toContain('could not be judged');
    expect(stdout).toMatch(/Could not be judged\n\n.*no .*plan/isu);
  });
});

describe('the forms', () => {
  test('text keeps to 80 columns and names each plan under its rule, as many as asked', () => {
    for (let n = 0; n < 4; n += 1) put(`p${String(n)}.yaml`, shielded.replaceAll('K-2211', `K-${String(n)}`));
    const { stdout } = recheck('--from', 'general@1.0', '--to', 'general@2', '--max-plans', '3', ...day);
    expect(stdout).toContain('4  passed then and would not now');
    expect(stdout).toContain('pyrotechnic-only-shielded: 4 plans; since general 2.0.0 in place of');
    expect(stdout).toContain('and 1 more; --max-plans 0 names all.');
    expect(stdout).toContain('p2.yaml');
    expect(stdout).not.toContain('p3.yaml');
    const long = stdout.split('\n').filter((line) => line.length > 80 && !line.includes(archive));
    expect(long).toEqual([]);
  });

  test('csv has a row a reason, all of one width', () => {
    put('a.yaml', shielded);
    const { stdout } = recheck('--from', 'general@1.0', '--to', 'general@2', '--format', 'csv', ...day);
    const rows: readonly Readonly<Record<string, string>>[] = parseCsv(stdout, { columns: true });
    expect(rows.map(({ change, then, now, rule, severity }) => [change, then, now, rule, severity])).toEqual([
      ['no longer passes', 'cleared', 'stopped', 'pyrotechnic-only-shielded', 'stop'],
    ]);
  });
});

describe('computed differently', () => {
  const report = (file: string): string => {
    const { stdout } = runPlanish(['check', '--format', 'json', ...day, file]);
    return put('report.json', stdout);
  };

  test('a sign-off of another planish is told; one of this planish is not', () => {
    put('a.yaml', signed('0.0.9', 1));
    const other = asJson('--to', 'general@2');
    expect(other.computed_differently).toMatchObject([
      { recorded_by: 'sign-off', other_planish: true, moved: [] },
    ]);
    expect(recheck('--to', 'general@2').stdout).toContain('give it');
    put('a.yaml', signed(version, 1));
    expect(asJson('--to', 'general@2').computed_differently).toEqual([]);
    put('a.yaml', signed(version, 2));
    expect(asJson('--to', 'general@2').computed_differently).toHaveLength(1);
  });

  test('a report of this planish and these rules: nothing moved', () => {
    put('a.yaml', readFileSync('examples/plans/rail-heated-near-pillar.yaml', 'utf8'));
    const json = asJson('--report', report(path.join(archive, 'a.yaml')));
    expect([json.computed_differently, json.status]).toEqual([[], 0]);
  });

  test('a report of another planish: the facts that moved are listed, and its verdict is the one of then', () => {
    const file = put('a.yaml', readFileSync('examples/plans/rail-heated-near-pillar.yaml', 'utf8'));
    const written = report(file);
    const text = readFileSync(written, 'utf8');
    // As an older planish might have computed it: the neighbour 20 K cooler.
    const peak = /"name": "exposure\.peak",\s+"value": ([\d.]+)/u.exec(text)?.[1] ?? '';
    expect(Number(peak)).toBeGreaterThan(200);
    put(
      'report.json',
      text.replace(`"planish": "${version}"`, '"planish": "0.0.9"').replace(peak, String(Number(peak) - 20)),
    );
    const json = asJson('--report', written);
    expect(json.computed_differently).toMatchObject([
      { recorded_by: 'report', planish: '0.0.9', other_planish: true, then: 'stopped', again: 'stopped' },
    ]);
    expect(
      json.computed_differently[0]?.moved.map((one) => [one.fact, one.then.value, one.now?.value]),
    ).toEqual([['exposure.peak', Number(peak) - 20, Number(peak)]]);
    const { stdout } = recheck('--report', written);
    expect(stdout).toContain('Computed differently');
    expect(stdout).toContain('exposure.peak, 1 plan:');
  });

  test('what the record cleared and the same rules stop today is told as no longer passing', () => {
    const file = put('a.yaml', readFileSync('examples/plans/rail-heated-near-pillar.yaml', 'utf8'));
    const written = report(file);
    const old: { planish: string; plans: { verdict: string; findings: object[] }[] } = JSON.parse(
      readFileSync(written, 'utf8'),
    );
    const [plan] = old.plans;
    if (plan === undefined) throw new Error('no plan');
    put(
      'report.json',
      JSON.stringify(
        { ...old, planish: '0.0.9', plans: [{ ...plan, verdict: 'cleared', findings: [] }] },
        null,
        2,
      ),
    );
    const json = asJson('--report', written);
    expect(json.plans).toMatchObject([{ change: 'no_longer_passes', then: 'cleared', now: 'stopped' }]);
    expect(json.computed_differently[0]?.not_found_then).toContain('neighbour-too-hot');
    expect(json.status).toBe(1);
  });

  test('a plan that was changed after the report is not held against it; a plan that is missing is named', () => {
    const file = put('a.yaml', shielded);
    const written = report(file);
    put('a.yaml', `${shielded}# Changed.\n`);
    const json = asJson('--report', written);
    expect(json.computed_differently[0]?.remarks).toEqual(['The plan was changed after that report.']);
    rmSync(file);
    put('b.yaml', skin);
    expect(asJson('--report', written).not_among_these).toEqual([file]);
  });

  test('half a report is refused: what is missing would look as if it were the same', () => {
    const file = put('a.yaml', shielded);
    const written = report(file);
    writeFileSync(written, readFileSync(written, 'utf8').slice(0, 400));
    const { status, stderr } = recheck('--report', written);
    expect(status).toBe(2);
    expect(stderr).toContain('cut off');
  });
});

test('the archive of the examples: the cut that was accepted then is stopped now, the door skin is not touched', () => {
  const versions = ['--from', 'general@1.0', '--to', 'general@2'];
  const { status, stdout } = runPlanish([
    'recheck',
    '--as-of',
    '2026-10-21',
    ...versions,
    'examples/archive',
  ]);
  expect(status).toBe(1);
  expect(stdout).toContain('  1  passed then and would not now\n');
  expect(stdout).toContain('  1  the same verdict\n');
  expect(stdout).toContain('STOP section-ultra-high-strength: 1 plan');
});
