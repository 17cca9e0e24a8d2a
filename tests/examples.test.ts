import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { blanksIn } from './blanks-in.ts';
import { judgeText, ruleIds } from './judge-text.ts';

interface Expected {
  readonly verdict: string;
  readonly packs?: boolean;
  readonly rules: readonly string[];
  readonly lifted?: readonly string[];
}

const expected: { readonly plans: Readonly<Record<string, Expected>> } = parse(
  readFileSync('examples/expected.yaml', 'utf8'),
);

describe('the example plans come out as written by hand beside them', () => {
  test('every plan is spoken for', () => {
    const files = readdirSync('examples/plans').filter((name) => name.endsWith('.yaml'));
    expect(Object.keys(expected.plans).sort()).toEqual(files.sort());
  });

  test.each(Object.entries(expected.plans))('%s', (file, wanted) => {
    const report = judgeText(
      readFileSync(`examples/plans/${file}`, 'utf8'),
      wanted.packs === true ? 'examples/rules/corvane-tarn' : undefined,
    );
    expect(report.verdict).toBe(wanted.verdict);
    expect(ruleIds(report)).toEqual(wanted.rules);
    expect(blanksIn(report)).toEqual([]);
    expect([...new Set(report.lifted.map(({ rule }) => rule))].sort()).toEqual(wanted.lifted ?? []);
  });

  const packs = readdirSync('examples/rules').map((name) => `examples/rules/${name}`);
  const good = Object.entries(expected.plans).filter(([, { verdict }]) => verdict === 'cleared');

  test('what the shop does well, it does until the car goes: a plan of each good job is at the stage of release', () => {
    const jobs = good.map(([file]) => jobOf(readFileSync(`examples/plans/${file}`, 'utf8')));
    const released = new Set(jobs.filter(({ stage }) => stage === 'release').map(({ number }) => number));
    expect(jobs.map(({ number }) => number).filter((number) => !released.has(number))).toEqual([]);
  });

  test.each(good)('%s keeps to the house rules and the rules of its market as well', (file) => {
    const report = judgeText(readFileSync(`examples/plans/${file}`, 'utf8'), packs);
    expect([report.verdict, ruleIds(report)]).toEqual(['cleared', []]);
  });
});

function jobOf(text: string): { readonly number: string; readonly stage: string } {
  const plan = parse(text) as { readonly stage: string; readonly job: { readonly number: string } };
  return { stage: plan.stage, number: plan.job.number };
}
