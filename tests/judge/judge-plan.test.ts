import { describe, expect, test } from 'vitest';
import type { FactSheet } from '../../src/facts/sheet.ts';
import type { Outcome } from '../../src/judge/deviations.ts';
import { judgePlan } from '../../src/judge/judge-plan.ts';
import { box, compiled, known, rule, thing } from './invented-pack.ts';

// `thing` sheets stand for those of deviations and sign-off: they come only after the boxes were judged.

const rules = compiled([
  rule({
    id: 'reddish',
    judges: 'part',
    when: [{ fact: 'box.colour', test: { anyOf: ['red'] } }],
    severity: 'hold',
  }),
  rule({ id: 'sharp', judges: 'operation', when: [{ fact: 'thing.sharp', test: { anyOf: [true] } }] }),
]);
const deviation = { by: 'N', role: 'r', date: '2026-10-01', reason: 'x', expires: '2026-11-01' };
const a = box('a', 0, { 'box.colour': known('red') });

function afterSheet(sharp: boolean): FactSheet {
  return thing(a, 0, { 'thing.sharp': known(sharp) });
}

describe('two passes', () => {
  test('the second is derived from what the first found, without its words', () => {
    const seen: Outcome[] = [];
    judgePlan([a], rules, 'draft', (outcomes) => {
      seen.push(...outcomes);
      return { sheets: [], permits: [] };
    });
    expect(seen).toEqual([
      {
        rule: 'reddish',
        pack: 'invented',
        severity: 'hold',
        part: 'a',
        pointer: '/parts/0',
        standsForStop: false,
        fingerprint: seen[0]?.fingerprint,
      },
    ]);
  });

  test('sheets of the second pass are judged by the same rules and counted', () => {
    const judged = judgePlan([a], rules, 'draft', (outcomes) => ({
      sheets: [afterSheet(outcomes.some(({ rule: id }) => id === 'reddish'))],
      permits: [],
    }));
    expect(judged.findings.map(({ rule: id, severity }) => [id, severity])).toEqual([
      ['sharp', 'stop'],
      ['reddish', 'hold'],
    ]);
    expect(judged.verdict).toBe('stopped');
    expect(judged.counts).toEqual({
      asked: 2,
      passed: 0,
      found: 2,
      lifted: 0,
      couldNotTell: 0,
      failed: 0,
      notApplied: 0,
    });
  });

  test('a permit accepts nothing that the second pass found', () => {
    const holdRules = compiled([
      rule({
        id: 'sharp',
        judges: 'operation',
        when: [{ fact: 'thing.sharp', test: { anyOf: [true] } }],
        severity: 'hold',
      }),
    ]);
    const judged = judgePlan([box('a', 0, {})], holdRules, 'draft', () => ({
      sheets: [afterSheet(true)],
      permits: [{ rule: 'sharp', part: 'a', deviation }],
    }));
    expect(judged.findings.map(({ deviation: accepted }) => accepted)).toEqual([undefined]);
    expect(judged.verdict).toBe('held');
  });

  test('a rule that fails in the second pass leaves the plan not judged', () => {
    const judged = judgePlan([a], rules, 'draft', () => ({
      sheets: [thing(a, 0, { 'thing.sharp': known('very') })],
      permits: [],
    }));
    expect(judged.notJudged).toMatchObject([{ rule: 'sharp', pointer: '/parts/0/operations/0' }]);
    expect(judged.findings.map(({ rule: id }) => id)).toEqual(['reddish']);
    expect(judged.verdict).toBe('not judged');
  });

  test('rules put to no sheet are counted as not applied', () => {
    const judged = judgePlan([a], rules, 'draft', () => ({ sheets: [], permits: [] }));
    expect(judged.counts.notApplied).toBe(1);
  });
});
