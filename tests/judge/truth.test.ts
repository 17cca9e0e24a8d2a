import { describe, expect, test } from 'vitest';
import type { Fact } from '../../src/facts/fact.ts';
import { askRule } from '../../src/judge/ask-rule.ts';
import { isWithin, truthOf } from '../../src/judge/truth.ts';
import type { Line, Rule } from '../../src/packs/pack.ts';
import { answerRows, truthRows } from './truth-table.ts';

describe('what a line makes of a fact', () => {
  test.each(truthRows.map((row) => [row.line, row.fact, row] as const))('%s, %s', (_line, _fact, row) => {
    expect(truthOf(row.test, row.value)).toBe(row.truth);
  });

  test('an unknown fact that can only be one of some words is none of the others', () => {
    const fact = { known: false, reason: 'Nobody has read it.', among: ['mild', 'stainless'] } as const;
    expect(truthOf({ anyOf: ['aluminium', 'magnesium'] }, fact)).toBe('false');
    expect(truthOf({ anyOf: ['aluminium', 'mild'] }, fact)).toBe('unknown');
    expect(truthOf({ anyOf: ['mild', 'stainless'] }, fact)).toBe('unknown');
    expect(truthOf({ known: false }, fact)).toBe('true');
    expect(truthOf({ known: true }, fact)).toBe('false');
    expect(truthOf({ range: { above: 1 } }, fact)).toBe('unknown');
  });

  test('a fact of another type than the test is a defect, never a pass', () => {
    expect(() => truthOf({ anyOf: ['mild'] }, { known: true, value: 3, from: 'stated' })).toThrow(TypeError);
    expect(() => truthOf({ range: { above: 3 } }, { known: true, value: 'mild', from: 'stated' })).toThrow(
      TypeError,
    );
    expect(() =>
      truthOf({ range: { above: 3 } }, { known: true, value: Number.NaN, from: 'stated' }),
    ).toThrow(TypeError);
  });

  test('no limit set: the margin is minus infinity and over nothing', () => {
    expect(isWithin({ above: 0 }, Number.NEGATIVE_INFINITY)).toBe(false);
    expect(isWithin({ max: 0 }, Number.NEGATIVE_INFINITY)).toBe(true);
    expect(isWithin({ min: 0 }, Number.NEGATIVE_INFINITY)).toBe(false);
    expect(isWithin({ below: 0 }, Number.NEGATIVE_INFINITY)).toBe(true);
  });
});

describe('what a rule answers', () => {
  test.each(answerRows.map((row) => [row.because, JSON.stringify([row.when, row.unless]), row] as const))(
    '%s: %s',
    (_because, _shape, row) => {
      const facts: Record<string, Fact> = {};
      const lines = (truths: readonly string[], prefix: string): readonly Line[] =>
        truths.map((truth, index) => {
          const fact = `${prefix}.${String(index)}`;
          facts[fact] =
            truth === 'unknown'
              ? { known: false, reason: 'not stated' }
              : { known: true, value: truth === 'true', from: 'stated' };
          return { fact, test: { anyOf: [true] } };
        });
      const rule: Rule = {
        ...plainRule,
        when: lines(row.when, 'when'),
        unless: (row.unless ?? []).map((one, index) => lines(one, `unless${String(index)}`)),
      };
      expect(askRule(rule, (name) => facts[name] ?? { known: false, reason: 'none' }).kind).toBe(row.answer);
    },
  );
});

const plainRule: Rule = {
  id: 'a-rule',
  topic: 'heat',
  since: '1.0.0',
  judges: 'part',
  severity: 'stop',
  from: 'draft',
  when: [],
  unless: [],
  message: 'm',
  instead: 'i',
  why: 'w',
  source: { practice: 'common' },
  cases: { finds: [], passes: [], asks: [] },
};
