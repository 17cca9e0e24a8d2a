import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { rulesInForce } from '../../src/packs/versions/rules-in-force.ts';
import { runPlanish } from './run-planish.ts';

const plan = 'examples/plans/ring-sectioned-by-old-document.yaml';
const explain = (entry: string, ...more: readonly string[]) =>
  runPlanish(['check', '--as-of', '2026-10-21', '--explain', entry, ...more, plan]);

interface Line {
  readonly fact: string;
  readonly asked: string;
  readonly holds: string;
  readonly value?: unknown;
  readonly unknown?: string;
}
interface Asked {
  readonly rule: string;
  readonly severity: string;
  readonly outcome: string;
  readonly when: readonly Line[];
}
interface Sheet {
  readonly kind: string;
  readonly line: number;
  readonly rules: readonly Asked[];
}
const sheetsOf = (...args: Parameters<typeof explain>): readonly Sheet[] => {
  const answer: { readonly explanation: { readonly sheets: readonly Sheet[] } } = JSON.parse(
    explain(...args).stdout,
  );
  return answer.explanation.sheets;
};
const sheets = sheetsOf('ring-l/section', '--format', 'json');
const operation = sheets.find(({ kind }) => kind === 'operation');

describe('planish check --explain', () => {
  test('shows every rule on operations, and where the operation stands', () => {
    const [general] = builtInPacks();
    const asked = rulesInForce(general?.rules ?? [], general?.version ?? '').filter(
      ({ judges }) => judges === 'operation',
    );
    expect(operation?.rules.map(({ rule }) => rule)).toEqual(asked.map(({ id }) => id));
    expect(readFileSync(plan, 'utf8').split('\n')[(operation?.line ?? 0) - 1]).toContain('do: section');
  });

  test('what each line saw, why a rule found and why another did not', () => {
    const found = operation?.rules.find(({ rule }) => rule === 'section-press-hardened');
    expect([found?.outcome, found?.when]).toEqual([
      'found',
      [
        expect.objectContaining({
          fact: 'operation.cuts_part_way',
          asked: 'yes',
          value: true,
          holds: 'true',
        }),
        expect.objectContaining({
          fact: 'part.class',
          asked: 'press-hardened',
          value: 'press-hardened',
          holds: 'true',
        }),
      ],
    ]);
    const passed = operation?.rules.find(({ rule }) => rule === 'section-ultra-high-strength');
    expect(passed?.outcome).toBe('passed');
    expect(passed?.when).toContainEqual(expect.objectContaining({ fact: 'part.class', holds: 'false' }));
  });

  test('an outcome agrees with its lines, and an unknown says why', () => {
    const all = sheets.flatMap(({ rules }) => rules);
    for (const { outcome, when } of all) {
      if (outcome === 'passed') expect(when.some(({ holds }) => holds === 'false')).toBe(true);
      if (outcome === 'found') expect(when.every(({ holds }) => holds === 'true')).toBe(true);
    }
    const unknown = all.flatMap(({ when }) => when).filter((line) => line.holds === 'unknown');
    expect(unknown.length).toBeGreaterThan(0);
    expect(unknown.every((line) => (line.unknown ?? '') !== '')).toBe(true);
  });

  test('what is found is what the report finds on the operation', () => {
    const { stdout } = runPlanish(['check', '--as-of', '2026-10-21', '--format', 'json', plan]);
    const report: {
      readonly plans: readonly {
        readonly findings: readonly {
          readonly rule: string;
          readonly part?: string;
          readonly severity: string;
        }[];
      }[];
    } = JSON.parse(stdout);
    const stops = (report.plans[0]?.findings ?? []).filter(
      ({ severity, part }) => severity === 'stop' && part === 'ring-l',
    );
    const found = sheetsOf('ring-l', '--format', 'json').flatMap(({ rules }) =>
      rules.filter(({ outcome }) => outcome === 'found').map(({ rule }) => rule),
    );
    for (const { rule } of stops) expect(found).toContain(rule);
    expect(stops.length).toBeGreaterThan(0);
  });

  test('a margin over a limit that nobody sets is no unknown one', () => {
    const { stdout } = explain('ring-l');
    expect(stdout).toContain('exposure.over_limit: no limit is set (computed)');
    expect(stdout).not.toContain('unknown (computed)');
    const margins = sheetsOf('ring-l', '--format', 'json').flatMap(({ rules }) =>
      rules.flatMap(({ when }) =>
        when.filter(({ fact, value }) => fact === 'exposure.over_limit' && value === null),
      ),
    );
    expect(margins.length).toBeGreaterThan(0);
    for (const margin of margins) expect(margin.holds).not.toBe('unknown');
  });

  test('leaves the status of the plan, fits 80 columns, and takes the number of the operation or the name of the part', () => {
    const { status, stdout } = explain('ring-l/section');
    expect(status).toBe(1);
    // A digest is never cut.
    expect(stdout.split('\n').filter((line) => [...line].length > 80 && !line.includes('sha256'))).toEqual(
      [],
    );
    expect(explain('ring-l/1').stdout.split('\n').slice(3)).toEqual(stdout.split('\n').slice(3));
    const name = /id: ring-l\n\s+name: (.*)\n/u.exec(readFileSync(plan, 'utf8'))?.[1] ?? '';
    expect(explain(`${name}/section`).status).toBe(1);
  });

  test.each([
    ['rng-l', [], 'Nearest known: `ring-l`.'],
    ['ring-l/heat', [], 'has no operation `heat`; it has 1 section.'],
    ['ring-l', ['--format', 'sarif'], '--explain answers as text or json.'],
    ['ring-l', ['examples/plans/student-plan.yaml'], '--explain takes one plan.'],
  ])('%s %s is refused in one sentence', (entry, more, sentence) => {
    const { status, stdout, stderr } = explain(entry, ...more);
    expect([status, stdout, stderr.split('\n').length]).toEqual([2, '', 2]);
    expect(stderr).toContain(sentence);
  });
});
