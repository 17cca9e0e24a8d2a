import { describe, expect, test } from 'vitest';
import { azureForm } from '../../src/report/forms/azure-form.ts';
import { githubForm } from '../../src/report/forms/github-form.ts';
import { gitlabForm } from '../../src/report/forms/gitlab-form.ts';
import type { PlanReport, ReportForm } from '../../src/report/plan-report.ts';
import { hostilePlan } from './hostile-plan.ts';
import { hostileTexts } from './hostile-texts.ts';
import { head, placed, planReport, tail } from './invented-report.ts';

function written(form: ReportForm, plans: readonly PlanReport[]): string {
  return form.begin(head) + plans.map(form.plan).join('') + form.end(tail('held', plans.length, {}));
}

interface Command {
  readonly name: string;
  readonly properties: Readonly<Record<string, string>>;
  readonly message: string;
}

/** GitHub Actions, workflow commands: `::name key=value,key=value::data`, escapes as the toolkit has them. */
function githubCommands(text: string): readonly Command[] {
  const unescaped = (value: string): string =>
    value.replace(/%(?:25|0D|0A|3A|2C)/gu, (code) => String.fromCharCode(Number.parseInt(code.slice(1), 16)));
  return linesOf(text).map((line) => {
    const match = /^::(error|warning|notice) (.*?)::(.*)$/su.exec(line);
    if (match === null) throw new Error(`no command: ${line}`);
    const [, name = '', properties = '', message = ''] = match;
    return {
      name,
      properties: Object.fromEntries(properties.split(',').map((one) => pairOf(one, unescaped))),
      message: unescaped(message),
    };
  });
}

/** Azure Pipelines, logging commands: `##vso[area.action key=value;key=value]data`. */
function azureCommands(text: string): readonly Command[] {
  const unescaped = (value: string): string =>
    value
      .replace(/%(?:0D|0A|3B|5D)/gu, (code) => String.fromCharCode(Number.parseInt(code.slice(1), 16)))
      .replaceAll('%AZP25', '%');
  return linesOf(text).map((line) => {
    const match = /^##vso\[task\.logissue ([^\]]*)\](.*)$/su.exec(line);
    if (match === null) throw new Error(`no command: ${line}`);
    const [, properties = '', message = ''] = match;
    const pairs = Object.fromEntries(properties.split(';').map((one) => pairOf(one, unescaped)));
    return { name: pairs['type'] ?? '', properties: pairs, message: unescaped(message) };
  });
}

function pairOf(text: string, unescaped: (value: string) => string): readonly [string, string] {
  const mark = text.indexOf('=');
  return [text.slice(0, mark), unescaped(text.slice(mark + 1))];
}

function linesOf(text: string): readonly string[] {
  expect(text.endsWith('\n')).toBe(true);
  // Hosts end a line at LF and at CR.
  return text.slice(0, -1).split(/\r\n|\n|\r/u);
}

const plan = planReport({
  verdict: 'stopped',
  findings: [
    placed({ rule: 'b', severity: 'note', message: 'Note.' }),
    placed({ rule: 'a', severity: 'stop', partName: 'Pillar', message: 'Cut.' }, 12, 3),
  ],
});

describe('GitHub', () => {
  test('worst first, with the place in the message too', () => {
    expect(githubCommands(written(githubForm(), [plan]))).toEqual([
      {
        name: 'error',
        properties: {
          file: 'jobs/K-1.yaml',
          line: '12',
          endLine: '12',
          col: '3',
          endColumn: '7',
          title: 'STOP: Pillar',
        },
        message: 'Cut.\nInstead: do otherwise\n(jobs/K-1.yaml:12:3, rule a)',
      },
      expect.objectContaining({ name: 'notice' }),
    ]);
  });

  test('a cleared plan without notes says nothing', () => {
    expect(written(githubForm(), [planReport()])).toBe('');
  });

  test('a hold warns; one that is accepted is a notice that says by whom', () => {
    const deviation = { by: 'R. Amsel', role: 'm', date: '2026-10-07', reason: 'r', expires: '2026-10-30' };
    const findings = [
      placed({ rule: 'a', severity: 'hold' }),
      placed({ rule: 'b', severity: 'hold', deviation }),
    ];
    const commands = githubCommands(written(githubForm(), [planReport({ findings })]));
    expect(commands.map(({ name }) => name)).toEqual(['warning', 'notice']);
    expect(commands[1]?.message).toContain('Accepted by R. Amsel until 2026-10-30.');
  });
});

test.each(hostileTexts)('%j is data in commands of GitHub and Azure: none of a plan is one', (text) => {
  const github = githubCommands(written(githubForm(), [hostilePlan(text)]));
  expect(github).toHaveLength(4);
  for (const { properties, message } of github) {
    expect(properties['file']).toBe(text);
    expect(message).toContain(text);
  }
  const azure = azureCommands(written(azureForm(), [hostilePlan(text)]));
  expect(azure).toHaveLength(4);
  for (const { properties, message } of azure) {
    expect(properties['sourcepath']).toBe(text);
    expect(message).toContain(text);
  }
});

describe('GitLab', () => {
  interface Entry {
    readonly description: string;
    readonly fingerprint: string;
    readonly severity: string;
    readonly location: { readonly path: string };
  }
  const entries = (plans: readonly PlanReport[]): readonly Entry[] =>
    JSON.parse(written(gitlabForm(), plans)) as readonly Entry[];

  test('what the host asks of an entry is there', () => {
    expect(entries([plan])[0]).toEqual({
      description: 'STOP: Pillar: Cut. Instead: do otherwise (jobs/K-1.yaml:12:3, rule a)',
      check_name: 'a',
      fingerprint: expect.stringMatching(/^[0-9a-f]{64}$/u),
      severity: 'blocker',
      location: { path: 'jobs/K-1.yaml', lines: { begin: 12, end: 12 } },
    });
  });

  test('no plan gives an empty list', () => {
    expect(entries([])).toEqual([]);
  });

  test('equal findings of two files are two; a finding that moves to another line is the same', () => {
    const of = (file: string, line: number): string =>
      entries([
        planReport({ file, findings: [placed({ rule: 'a', severity: 'stop', fingerprint: 'f' }, line)] }),
      ])[0]?.fingerprint ?? '';
    expect(of('a.yaml', 1)).toBe(of('a.yaml', 99));
    expect(of('a.yaml', 1)).not.toBe(of('b.yaml', 1));
  });

  test.each(hostileTexts)('%j is data', (text) => {
    const found = entries([hostilePlan(text)]);
    expect(found).toHaveLength(4);
    expect(new Set(found.map(({ fingerprint }) => fingerprint)).size).toBe(4);
    for (const { location } of found) expect(location.path).toBe(text);
  });
});
