import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { jsonForm } from '../../src/report/forms/json-form.ts';
import type { PlanReport } from '../../src/report/plan-report.ts';
import { head, placed, planReport, tail } from './invented-report.ts';

const schema: object = JSON.parse(readFileSync('schemas/report.schema.json', 'utf8'));
const validate = new Ajv2020({ strict: true, allErrors: true, allowUnionTypes: true }).compile(schema);

function written(plans: readonly PlanReport[], given = tail('cleared', plans.length, {})): string {
  const form = jsonForm();
  return form.begin(head) + plans.map(form.plan).join('') + form.end(given);
}

function read(plans: readonly PlanReport[]): { readonly plans: readonly Record<string, never>[] } {
  const report: { readonly plans: readonly Record<string, never>[] } = JSON.parse(written(plans));
  expect([validate(report), validate.errors]).toEqual([true, null]);
  return report;
}

describe('the report as JSON', () => {
  test('names planish, packs with version and digest, fact schema and as-of date; the verdict is last', () => {
    const text = written([planReport()], tail('held', 1, { held: 1 }));
    const report: object = JSON.parse(text);
    expect(Object.keys(report)).toEqual([
      ...['report', 'planish', 'packs', 'facts', 'as_of', 'plans', 'verdicts', 'verdict'],
    ]);
    expect(report).toMatchObject({
      report: 1,
      planish: '9.8.7',
      packs: [
        { pack: 'general', version: '1.0.0', digest: `sha256:${'a'.repeat(64)}`, released: false },
        { pack: 'corvane-tarn', version: '2026.2.0', released: true },
      ],
      facts: 1,
      as_of: '2026-10-21',
      verdicts: { cleared: 0, held: 1, stopped: 0, 'not judged': 0 },
      verdict: 'held',
    });
    expect(text.endsWith('}\n')).toBe(true);
  });

  test.each([0, 1, 2, 3])('is well formed with %i plans, indented as JSON.stringify does', (count) => {
    const plans = Array.from({ length: count }, (_, n) => planReport({ file: `${String(n)}.yaml` }));
    const text = written(plans);
    expect(text).toBe(`${JSON.stringify(JSON.parse(text), null, 2)}\n`);
    expect(read(plans).plans.map((plan) => plan['file'])).toEqual(plans.map(({ file }) => file));
  });

  test('a finding has its place with start and end, its facts with units and where they come from', () => {
    const found = placed(
      {
        ...{ rule: 'no-heat', severity: 'stop', part: 'ring-l', partName: 'Ring', operation: 'heat' },
        ...{
          pointer: '/parts/0/operations/0',
          fingerprint: 'f'.repeat(16),
          assumptions: ['30 K are added.'],
        },
        severity: 'stop',
        facts: [
          { name: 'exposure.peak', value: 437.5, unit: '°C', from: 'computed', note: 'Conduction.' },
          {
            name: 'exposure.limit',
            value: Number.NEGATIVE_INFINITY,
            unit: '°C',
            from: 'computed',
            note: 'None.',
          },
          { name: 'exposure.victim', from: 'unknown', note: 'Not stated.' },
          { name: 'joint.classes', value: ['mild', 'press-hardened'], from: 'computed' },
          { name: 'exposure.stays', value: false, from: 'computed' },
          { name: 'joint.count', value: 0, from: 'stated' },
        ],
      },
      81,
      15,
    );
    const [plan] = read([planReport({ verdict: 'stopped', findings: [found] })]).plans;
    expect(plan).toMatchObject({
      file: 'jobs/K-1.yaml',
      stage: 'start',
      digest: `sha256:${'c'.repeat(64)}`,
      verdict: 'stopped',
      counts: { stop: 1, hold: 0, note: 0, accepted: 0 },
    });
    expect(plan?.['findings']).toEqual([
      {
        rule: 'no-heat',
        pack: 'invented',
        severity: 'stop',
        part: 'ring-l',
        part_name: 'Ring',
        operation: 'heat',
        message: 'found',
        instead: 'do otherwise',
        why: 'because',
        source: 'common practice',
        at: { line: 81, column: 15, end_line: 81, end_column: 19 },
        pointer: '/parts/0/operations/0',
        asks_unknown: false,
        facts: [
          { name: 'exposure.peak', value: 437.5, unit: '°C', from: 'computed', note: 'Conduction.' },
          { name: 'exposure.limit', from: 'computed', note: 'None.' },
          { name: 'exposure.victim', from: 'unknown', note: 'Not stated.' },
          { name: 'joint.classes', value: ['mild', 'press-hardened'], from: 'computed' },
          { name: 'exposure.stays', value: false, from: 'computed' },
          { name: 'joint.count', value: 0, from: 'stated' },
        ],
        assumptions: ['30 K are added.'],
        fingerprint: 'f'.repeat(16),
      },
    ]);
  });

  test('a deviation, a lift and what could not be judged', () => {
    const deviation = { by: 'A', role: 'master', date: '2026-10-07', reason: 'r', expires: '2026-10-30' };
    const lifted = [
      {
        rule: 'no-cut',
        pack: 'general',
        part: 'ring-l',
        operation: 'section',
        pointer: '/parts/0',
        by: 'D-1',
      },
    ];
    const place = { line: 3, column: 9, endLine: 4, endColumn: 2 };
    const [held, bad] = read([
      planReport({ findings: [placed({ rule: 'a', severity: 'hold', deviation })], lifted }),
      {
        file: 'bad.yaml',
        verdict: 'not judged',
        counts: { stop: 0, hold: 0, note: 0, accepted: 0 },
        lifted: [],
        findings: [],
        notJudged: [
          { sentence: 'No.', place },
          { sentence: 'Odd.', rule: 'x' },
        ],
      },
    ]).plans;
    expect(held).toMatchObject({ counts: { hold: 1, accepted: 1 }, findings: [{ deviation }], lifted });
    expect(bad).not.toHaveProperty('stage');
    expect(bad).not.toHaveProperty('digest');
    expect(bad?.['not_judged']).toEqual([
      { sentence: 'No.', at: { line: 3, column: 9, end_line: 4, end_column: 2 } },
      { sentence: 'Odd.', rule: 'x' },
    ]);
  });

  test('a number without an end has no value, for JSON knows none', () => {
    const facts = [
      { name: 'exposure.time_above_limit', value: Infinity, unit: 's', from: 'computed' as const },
    ];
    const [plan] = read([planReport({ findings: [placed({ rule: 'a', severity: 'hold', facts })] })]).plans;
    expect(plan).toMatchObject({
      findings: [{ facts: [{ name: 'exposure.time_above_limit', from: 'computed' }] }],
    });
  });

  test('text of the plan is data, whatever it holds', () => {
    const message = 'a "b" \\ \n \u2028 \u0000 ]}, 🚗 \ud800';
    const [plan] = read([planReport({ findings: [placed({ rule: 'a', severity: 'note', message })] })]).plans;
    expect(plan).toMatchObject({ findings: [{ message }] });
  });

  test('the title for people is no data', () => {
    expect(written([planReport()])).not.toContain('job K-1,');
    expect(written([planReport()])).not.toContain('"title"');
  });
});
