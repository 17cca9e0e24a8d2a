import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import addFormats from 'ajv-formats';
import { describe, expect, test } from 'vitest';
import type { PlanReport } from '../../src/report/plan-report.ts';
import { sarifForm } from '../../src/report/forms/sarif-form.ts';
import { hostilePlan } from './hostile-plan.ts';
import { hostileTexts } from './hostile-texts.ts';
import { head, placed, planReport, tail } from './invented-report.ts';

// tests/published/schemas/README.md says where it is from. Draft 4 and draft 7 differ in the name of the identifier and in exclusive
// bounds, of which this schema has none; so it is read as draft 7.
const {
  $schema: draft,
  id,
  ...schema
} = JSON.parse(readFileSync('tests/published/schemas/sarif-2.1.0-rtm.5.json', 'utf8')) as Record<
  string,
  unknown
>;
// One of its patterns is no regular expression of the strict kind.
const ajv = new Ajv({ strict: false, allErrors: true, unicodeRegExp: false });
addFormats.default(ajv);
const validate = ajv.compile(schema);

type Loose = Readonly<Record<string, unknown>>;

interface Sarif {
  readonly runs: readonly {
    readonly columnKind: string;
    readonly results: readonly Loose[];
    readonly artifacts: readonly Loose[];
    readonly invocations: readonly Loose[];
    readonly tool: { readonly driver: { readonly rules: readonly Loose[] } };
  }[];
}

const help = {
  id: 'no-cut',
  pack: 'general',
  topic: 'section',
  severity: 'stop' as const,
  instead: 'Replace it whole.',
  why: 'It tempers.',
  source: 'common practice',
};

function written(plans: readonly PlanReport[], verdict: PlanReport['verdict'] = 'stopped'): string {
  const form = sarifForm();
  const start = form.begin({ ...head, rules: () => [help] });
  return start + plans.map(form.plan).join('') + form.end(tail(verdict, plans.length, {}));
}

function read(plans: readonly PlanReport[], verdict?: PlanReport['verdict']): Sarif['runs'][number] {
  const log = JSON.parse(written(plans, verdict)) as Sarif;
  expect(validate(log) ? [] : validate.errors).toEqual([]);
  const [run] = log.runs;
  if (run === undefined) throw new Error('no run');
  return run;
}

test('the schema is the one of draft 4 that it is taken for, and refuses what is wrong', () => {
  expect([draft, id]).toEqual([
    'http://json-schema.org/draft-04/schema#',
    'https://raw.githubusercontent.com/schemastore/schemastore/master/src/schemas/json/sarif-2.1.0-rtm.5.json',
  ]);
  expect(JSON.stringify(schema)).not.toContain('exclusive');
  expect(validate({ version: '2.1.0', runs: [{ results: [] }] })).toBe(false);
  expect(validate(JSON.parse(written([]).replace('"utf16CodeUnits"', '"bytes"')))).toBe(false);
});

describe('a run', () => {
  test('of no plan is a whole log', () => {
    const run = read([]);
    expect(run).toMatchObject({ columnKind: 'utf16CodeUnits', results: [], artifacts: [] });
  });

  test('lists the rules of the packs with help, and the files that were judged, cleared ones too', () => {
    const run = read([planReport()], 'cleared');
    expect(run.tool.driver.rules).toMatchObject([
      {
        id: 'no-cut',
        shortDescription: { text: 'It tempers.' },
        help: { text: expect.stringContaining('Instead: Replace it whole.') },
        defaultConfiguration: { level: 'error' },
      },
    ]);
    expect(run.artifacts).toMatchObject([
      {
        location: { uri: 'jobs/K-1.yaml' },
        hashes: { 'sha-256': 'c'.repeat(64) },
        properties: { verdict: 'cleared', stage: 'start' },
      },
    ]);
    expect(run.invocations[0]).toMatchObject({ executionSuccessful: true });
  });
});

describe('a result', () => {
  test('says rule, level, place and what to do; its identity is not made of lines', () => {
    const finding = {
      rule: 'no-cut',
      pack: 'general',
      severity: 'stop' as const,
      part: 'p',
      message: 'Cut.',
    };
    const at = (line: number): Loose | undefined =>
      read([planReport({ findings: [placed({ ...finding, fingerprint: 'f00d' }, line, 3)] })]).results[0];
    expect(at(7)).toMatchObject({
      ruleId: 'no-cut',
      ruleIndex: 0,
      level: 'error',
      message: { text: 'Cut.\nInstead: do otherwise' },
      partialFingerprints: { 'planishFinding/v1': 'f00d' },
      locations: [
        {
          physicalLocation: {
            artifactLocation: { uri: 'jobs/K-1.yaml', index: 0 },
            region: { startLine: 7, startColumn: 3, endLine: 7, endColumn: 7 },
          },
          logicalLocations: [{ name: 'p' }],
        },
      ],
    });
    expect(at(90)?.['partialFingerprints']).toEqual(at(7)?.['partialFingerprints']);
  });

  test('of a rule that is in no pack at hand, as a plan may pin an older version, adds the rule', () => {
    const run = read([planReport({ findings: [placed({ rule: 'old', severity: 'hold' })] })]);
    expect(run.results[0]).toMatchObject({ ruleId: 'old', ruleIndex: 1, level: 'warning' });
    expect(run.tool.driver.rules[1]).toMatchObject({ id: 'old' });
  });

  test('two packs may have a rule of one name', () => {
    const findings = ['one', 'two'].map((pack) => placed({ rule: 'same', pack, severity: 'note' }));
    expect(read([planReport({ findings })]).results.map((one) => one['ruleIndex'])).toEqual([1, 2]);
  });

  test('has its related places', () => {
    const place = { line: 2, column: 1, endLine: 2, endColumn: 4 };
    const finding = {
      ...placed({ rule: 'a', severity: 'note' }),
      related: () => [{ what: 'The part', place }],
    };
    expect(read([planReport({ findings: [finding] })]).results[0]).toMatchObject({
      relatedLocations: [
        { id: 0, message: { text: 'The part' }, physicalLocation: { region: { startLine: 2 } } },
      ],
    });
  });

  test('that a deviation accepts is suppressed, by whom and until when', () => {
    const deviation = {
      by: 'R. Amsel',
      role: 'master',
      date: '2026-10-07',
      reason: 'r',
      expires: '2026-10-30',
    };
    const [result] = read([
      planReport({ findings: [placed({ rule: 'a', severity: 'hold', deviation })] }),
    ]).results;
    expect(result).toMatchObject({
      suppressions: [
        {
          kind: 'inSource',
          status: 'accepted',
          justification: 'Accepted by R. Amsel, master, on 2026-10-07, until 2026-10-30: r',
        },
      ],
    });
  });

  test('what could not be judged is an error on the file, and the run did not succeed', () => {
    const run = read(
      [planReport({ verdict: 'not judged', notJudged: [{ sentence: 'Empty.' }] })],
      'not judged',
    );
    expect(run.results).toMatchObject([{ ruleId: 'not-judged', level: 'error' }]);
    expect(run.invocations[0]).toMatchObject({
      executionSuccessful: false,
      toolExecutionNotifications: [{ level: 'error', message: { text: 'Not judged: Empty.' } }],
    });
  });
});

// SARIF 2.1.0, 3.11.5: a brace is written twice; 3.11.6: brackets of what would be a link are escaped.
const said = (text: string): string =>
  (text.includes('](') ? text.replace(/\\([[\]\\])/gu, '$1') : text).replace(/([{}])\1/gu, '$1');

test.each(hostileTexts)('%j is data wherever it stands', (text) => {
  const run = read([hostilePlan(text), { ...hostilePlan(text), file: 'other.yaml' }], 'not judged');
  expect(run.results).toHaveLength(8);
  const { message } = run.results.find((one) => one['ruleId'] === 'a') as { message: { text: string } };
  expect(said(message.text)).toBe(`${text}\nInstead: ${text}`);
  const { uri } = run.artifacts[0]?.['location'] as { uri: string };
  if (!uri.startsWith('file:'))
    expect(decodeURIComponent(uri)).toBe(text.replace(/\p{Surrogate}/gu, '\ufffd'));
  for (const { ruleIndex, ruleId } of run.results)
    expect(run.tool.driver.rules[Number(ruleIndex)]).toMatchObject({ id: ruleId });
});

test.each([
  ['/jobs/a b.yaml', 'file:///jobs/a%20b.yaml'],
  ['C:/jobs/a.yaml', 'file:///C:/jobs/a.yaml'],
  ['../a#b?.yaml', '../a%23b%3F.yaml'],
])('the path %s is the reference %s (RFC 3986)', (file, uri) => {
  expect(read([planReport({ file })]).artifacts[0]).toMatchObject({ location: { uri } });
});
