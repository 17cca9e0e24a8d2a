import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { jsonForm } from '../../src/report/forms/json-form.ts';
import { ndjsonForm } from '../../src/report/forms/ndjson-form.ts';
import type { PlanReport, RunHead } from '../../src/report/plan-report.ts';
import { hostilePlan } from './hostile-plan.ts';
import { hostileTexts } from './hostile-texts.ts';
import { head, planReport, tail } from './invented-report.ts';

const schema = (name: string): object =>
  JSON.parse(readFileSync(`schemas/${name}.schema.json`, 'utf8')) as object;
const ajv = new Ajv2020({ strict: false, allErrors: true, allowUnionTypes: true });
ajv.addSchema(schema('report'));
const validate = ajv.compile(schema('report-line'));
const validatePlan = ajv.compile({ $ref: 'https://planish.example/schemas/report.schema.json#/$defs/plan' });

const ofTheRun = ['report', 'planish', 'packs', 'facts', 'as_of', 'shard', 'run'];

function written(plans: readonly PlanReport[], given: RunHead = head): string {
  const form = ndjsonForm();
  return form.begin(given) + plans.map(form.plan).join('') + form.end(tail('cleared', plans.length, {}));
}

function read(text: string): readonly Record<string, unknown>[] {
  expect(text.endsWith('\n')).toBe(true);
  return text
    .slice(0, -1)
    .split('\n')
    .map((line) => JSON.parse(line) as Record<string, unknown>);
}

describe('lines', () => {
  test('one a plan, each with what is true of the run; the last says what it came to', () => {
    const lines = read(written([planReport(), planReport({ file: 'b.yaml' })]));
    expect(lines).toMatchObject([
      { report: 1, as_of: '2026-10-21', file: 'jobs/K-1.yaml', verdict: 'cleared' },
      { report: 1, as_of: '2026-10-21', file: 'b.yaml', run: { plans: 2, verdict: 'cleared' } },
    ]);
    expect(lines[0]).not.toHaveProperty('run');
  });

  test('a run of no plan is one line, so that an empty file is known to be none', () => {
    expect(read(written([]))).toMatchObject([{ report: 1, run: { plans: 0 } }]);
  });

  test('a line comes when the next plan does: memory holds one', () => {
    const form = ndjsonForm();
    form.begin(head);
    expect(form.plan(planReport())).toBe('');
    expect(read(form.plan(planReport({ file: 'b.yaml' })))).toMatchObject([{ file: 'jobs/K-1.yaml' }]);
  });

  test('the part of a job is named', () => {
    expect(read(written([planReport()], { ...head, shard: { index: 3, of: 16 } }))).toMatchObject([
      { shard: { index: 3, of: 16 } },
    ]);
  });
});

test('the schema refuses a line of neither plan nor run', () => {
  const [line] = read(written([planReport()]));
  const { file, run, ...rest } = line ?? {};
  expect([typeof file, typeof run, validate(rest)]).toEqual(['string', 'object', false]);
});

test.each(hostileTexts)('%j is data wherever it stands, and the plan is that of the JSON report', (text) => {
  const plan = hostilePlan(text);
  const lines = read(written([plan, plan]));
  expect(lines).toHaveLength(2);
  const form = jsonForm();
  const report = JSON.parse(form.begin(head) + form.plan(plan) + form.end(tail('held', 1, {}))) as {
    readonly plans: readonly unknown[];
  };
  for (const line of lines) {
    expect(validate(line) ? [] : validate.errors).toEqual([]);
    const part = Object.fromEntries(Object.entries(line).filter(([key]) => !ofTheRun.includes(key)));
    expect(validatePlan(part) ? [] : validatePlan.errors).toEqual([]);
    expect(part).toEqual(report.plans[0]);
    expect(part).toMatchObject({ file: text, findings: [{ message: text }, { rule: text }, { why: text }] });
  }
});
