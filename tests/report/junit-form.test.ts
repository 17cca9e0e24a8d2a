import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { validateXML } from 'xmllint-wasm';
import { junitForm } from '../../src/report/forms/junit-form.ts';
import type { PlanReport } from '../../src/report/plan-report.ts';
import { visibleText } from '../../src/report/visible-text.ts';
import { hostilePlan } from './hostile-plan.ts';
import { hostileTexts } from './hostile-texts.ts';
import { head, placed, planReport, tail } from './invented-report.ts';
import { readXml } from './read-xml.ts';
import type { XmlElement } from './read-xml.ts';

// tests/published/schemas/README.md says where it is from.
const schema = readFileSync('tests/published/schemas/junit-10.xsd', 'utf8');

function written(plans: readonly PlanReport[]): string {
  const form = junitForm();
  return form.begin(head) + plans.map(form.plan).join('') + form.end(tail('held', plans.length, {}));
}

function casesOf(plan: PlanReport): readonly XmlElement[] {
  const [suite] = readXml(written([plan])).children;
  return suite?.children.filter(({ name }) => name === 'testcase') ?? [];
}

const outcomes = (plan: PlanReport): readonly (readonly [string | undefined, string])[] =>
  casesOf(plan).map(({ attributes, children }) => [attributes['name'], children[0]?.name ?? 'passed']);

const deviation = { by: 'R. Amsel', role: 'master', date: '2026-10-07', reason: 'r', expires: '2026-10-30' };

const mixed = planReport({
  verdict: 'stopped',
  findings: [
    placed({ rule: 'a', severity: 'stop', part: 'p', partName: 'Pillar' }),
    placed({ rule: 'a', severity: 'stop', part: 'p', partName: 'Pillar' }, 9),
    placed({ rule: 'b', severity: 'hold', part: 'p', partName: 'Pillar' }),
    placed({ rule: 'b', severity: 'hold', part: 'p', partName: 'Pillar', deviation }),
    placed({ rule: 'c', severity: 'note' }),
  ],
});

describe('cases', () => {
  test('one rule on one part is a case: stop and open hold fail, an accepted hold is skipped, a note passes', () => {
    expect(outcomes(mixed)).toEqual([
      ['Pillar: a', 'failure'],
      ['Pillar: b', 'failure'],
      ['Pillar: b (accepted)', 'skipped'],
      ['plan and vehicle: c', 'system-out'],
    ]);
    const [first] = casesOf(mixed);
    expect(first?.children[0]?.attributes).toEqual({ type: 'stop', message: 'found (and 1 more)' });
    expect(first?.children[0]?.text).toContain('jobs/K-1.yaml:9:5, rule a of pack invented');
  });

  test('no two cases of a plan have one name, for hosts take them for one', () => {
    const parts = ['p', 'q', 'r'].map((part) =>
      placed({ rule: 'a', severity: 'stop', part, partName: 'Pillar' }),
    );
    const asked = placed({ rule: 'a', severity: 'hold', part: 'p', partName: 'Pillar' });
    expect(outcomes(planReport({ verdict: 'stopped', findings: [...parts, asked] }))).toEqual([
      ['Pillar: a', 'failure'],
      ['Pillar: a (stop)', 'failure'],
      ['Pillar: a (stop 2)', 'failure'],
      ['Pillar: a (hold)', 'failure'],
    ]);
  });

  test('a hold of a draft is skipped, a stop of a draft fails', () => {
    const findings = [placed({ rule: 'a', severity: 'hold' }), placed({ rule: 'b', severity: 'stop' })];
    expect(
      outcomes(planReport({ stage: 'draft', verdict: 'stopped', findings })).map(([, how]) => how),
    ).toEqual(['skipped', 'failure']);
  });

  test('a cleared plan is seen to have been judged', () => {
    expect(outcomes(planReport())).toEqual([['verdict', 'passed']]);
  });

  test('a verdict that is none without a reason is no pass', () => {
    expect(outcomes(planReport({ verdict: 'not judged' }))).toEqual([['verdict', 'error']]);
  });

  test('what could not be judged is an error', () => {
    const notJudged = [{ sentence: 'Empty.' }, { sentence: 'Odd.', rule: 'x' }];
    expect(outcomes(planReport({ verdict: 'not judged', notJudged }))).toEqual([
      ['not judged', 'error'],
      ['not judged: x', 'error'],
    ]);
  });

  test('a suite counts its cases', () => {
    expect(readXml(written([mixed])).children[0]?.attributes).toMatchObject({
      name: 'jobs/K-1.yaml',
      tests: '4',
      failures: '2',
      errors: '0',
      skipped: '1',
      timestamp: '2026-10-21T00:00:00',
    });
  });
});

describe('the schema', () => {
  test('takes a run of every kind of plan', async () => {
    const xml = written([
      planReport(),
      mixed,
      planReport({ verdict: 'not judged', notJudged: [{ sentence: 'x' }] }),
    ]);
    expect(await validateXML({ xml, schema })).toMatchObject({ errors: [], valid: true });
    expect(await validateXML({ xml: written([]), schema })).toMatchObject({ valid: true });
  });

  test('refuses what is wrong', async () => {
    const xml = written([planReport()]).replace('classname=', 'file=');
    expect((await validateXML({ xml, schema })).valid).toBe(false);
  });

  test('takes every hostile text', async () => {
    const xml = written(hostileTexts.map(hostilePlan));
    expect((await validateXML({ xml, schema })).errors).toEqual([]);
  });
});

// XML has no room for most control characters, so what acts is shown by its number; all else comes back as it was.
const shown = (text: string): string =>
  text
    .split('\n')
    .map((line) => visibleText(line).replace(/\p{Surrogate}/gu, '\ufffd'))
    .join('\n');

test.each(hostileTexts)('%j is data wherever it stands', (text) => {
  const [suite] = readXml(written([hostilePlan(text)])).children;
  expect(suite?.attributes['name']).toBe(shown(text));
  const cases = suite?.children.filter(({ name }) => name === 'testcase') ?? [];
  expect(cases).toHaveLength(4);
  for (const { attributes } of cases) expect(attributes['classname']).toBe(shown(text));
  const stop = cases.find(({ children }) => children[0]?.attributes['type'] === 'stop')?.children[0];
  expect(stop?.attributes['message']).toBe(shown(text));
  expect(stop?.text).toContain(`Instead: ${shown(text)}\n`);
});
