import { describe, expect, test } from 'vitest';
import { dictionary } from '../../src/cli/dictionary.ts';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { classRules } from '../../src/judge/class-rules.ts';
import type { Rule } from '../../src/packs/pack.ts';

const rule: Rule = {
  id: 'invented',
  topic: 'heat',
  since: '1.0.0',
  judges: 'operation',
  severity: 'hold',
  from: 'draft',
  when: [
    { fact: 'part.class', test: { anyOf: ['mild', 'high-strength'] } },
    { fact: 'operation.temperature', test: { range: { above: 500 } } },
  ],
  unless: [],
  message: '{part.name} is {part.class} and gets {operation.temperature}[ at {operation.at}].',
  instead: 'Less.',
  why: 'So.',
  source: { practice: 'common' },
  cases: { finds: [], passes: [], asks: [] },
};

describe('what rules say of a class', () => {
  test('a bound stands in the sentence with its unit; what nobody knows of a class is left out', () => {
    expect(classRules([rule], 'mild', dictionary)).toEqual([
      {
        rule: 'invented',
        severity: 'hold',
        sentence: 'The part is mild and gets above 500 °C.',
        maker_may_permit: false,
      },
    ]);
  });

  test('a rule that names other classes, or none, is passed over', () => {
    expect(classRules([rule], 'press-hardened', dictionary)).toEqual([]);
    expect(classRules([{ ...rule, when: [] }], 'mild', dictionary)).toEqual([]);
    expect(
      classRules([{ ...rule, when: [{ fact: 'part.class', test: { known: true } }] }], 'mild', dictionary),
    ).toEqual([]);
  });

  test('what a maker may permit is said', () => {
    const lifted: Rule = { ...rule, unless: [[{ fact: 'provision.permits', test: { anyOf: [true] } }]] };
    expect(classRules([lifted], 'mild', dictionary)[0]?.maker_may_permit).toBe(true);
  });

  test('no sentence of the general pack on a class holds an unknown', () => {
    const rules = builtInPacks().flatMap((pack) => pack.rules);
    for (const strengthClass of [
      'mild',
      'high-strength',
      'advanced high-strength',
      'ultra-high-strength',
      'press-hardened',
      'aluminium',
      'stainless',
      'magnesium',
      'composite',
    ]) {
      for (const one of classRules(rules, strengthClass, dictionary)) {
        expect([one.rule, one.sentence.includes('unknown')]).toEqual([one.rule, false]);
      }
    }
    expect(classRules(rules, 'press-hardened', dictionary).length).toBeGreaterThanOrEqual(3);
  });
});
