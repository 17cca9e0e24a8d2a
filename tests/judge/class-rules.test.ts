import { describe, expect, test } from 'vitest';
import { dictionary } from '../../src/cli/dictionary.ts';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { classLimits } from '../../src/judge/class-limits.ts';
import type { MaterialKnown } from '../../src/judge/class-rules.ts';
import { classRules } from '../../src/judge/class-rules.ts';
import type { Rule } from '../../src/packs/pack.ts';
import { strengthClasses } from '../../src/steel/strength-class.ts';

const mild = { class: 'mild', ambiguous: false };

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
    expect(classRules([rule], mild, dictionary)).toEqual([
      {
        rule: 'invented',
        severity: 'hold',
        sentence: 'The part is mild and gets more than 500 °C.',
        maker_may_permit: false,
      },
    ]);
  });

  test('a rule that names other classes, or none, is passed over', () => {
    expect(classRules([rule], { class: 'press-hardened', ambiguous: false }, dictionary)).toEqual([]);
    expect(classRules([{ ...rule, when: [] }], mild, dictionary)).toEqual([]);
    expect(
      classRules([{ ...rule, when: [{ fact: 'part.class', test: { known: true } }] }], mild, dictionary),
    ).toEqual([]);
  });

  test('what is known beside the class has its rules, in the part and in a sheet of a joint', () => {
    const of = (fact: string, word: string | boolean): Rule => ({
      ...rule,
      when: [{ fact, test: { anyOf: [word] } }],
    });
    const worked = { class: '', ambiguous: false, also: { fact: 'part.cold_worked', value: true } };
    expect(classRules([of('part.cold_worked', true)], worked, dictionary)).toHaveLength(1);
    expect(classRules([of('joint.cold_worked', true)], worked, dictionary)).toHaveLength(1);
    expect(
      classRules([of('part.cold_worked', false), of('part.laminated', true), rule], worked, dictionary),
    ).toEqual([]);
    expect(classRules([of('part.cold_worked', true)], mild, dictionary)).toEqual([]);
    const casting = { class: '', ambiguous: false, also: { fact: 'part.aluminium', value: 'casting' } };
    const named: Rule = {
      ...rule,
      message: '{part.name}: {part.aluminium}.',
      when: [{ fact: 'part.aluminium', test: { anyOf: ['casting', '7xxx'] } }],
    };
    expect(classRules([named], casting, dictionary)[0]?.sentence).toBe('The part: casting.');
  });

  test('what a maker may permit is said', () => {
    const lifted: Rule = { ...rule, unless: [[{ fact: 'provision.permits', test: { anyOf: [true] } }]] };
    expect(classRules([lifted], mild, dictionary)[0]?.maker_may_permit).toBe(true);
  });

  test('a class in a joint counts as one of the part; an unknown class and an unsure grade have rules of their own', () => {
    const joint: Rule = { ...rule, when: [{ fact: 'joint.classes', test: { anyOf: ['mild'] } }] };
    expect(classRules([joint], mild, dictionary)).toHaveLength(1);
    const open: Rule = { ...rule, when: [{ fact: 'part.class', test: { known: false } }] };
    expect(classRules([open], { ambiguous: false }, dictionary)).toHaveLength(1);
    expect(classRules([open], mild, dictionary)).toEqual([]);
    const unsure: Rule = { ...rule, when: [{ fact: 'part.material_ambiguous', test: { anyOf: [true] } }] };
    expect(classRules([unsure], { class: 'mild', ambiguous: true }, dictionary)).toHaveLength(1);
    expect(classRules([unsure], mild, dictionary)).toEqual([]);
  });

  const general = builtInPacks().find((pack) => pack.name === 'general');
  const rules = general?.rules ?? [];
  const idsOf = (material: MaterialKnown): readonly string[] =>
    classRules(rules, material, dictionary).map((one) => one.rule);

  test('of press-hardened steel: heat, cuts, and arcs on a sheet of a joint', () => {
    expect(idsOf({ class: 'press-hardened', ambiguous: false })).toEqual(
      expect.arrayContaining(['heat-press-hardened', 'section-press-hardened', 'arc-on-hardened-steel']),
    );
  });

  test('of what is not known or not sure: what stops or holds it', () => {
    expect(idsOf({ ambiguous: false })).toContain('structural-strength-unknown');
    expect(idsOf({ class: 'mild', ambiguous: true })).toContain('ambiguous-material-worked');
  });

  test('no sentence of the general pack leaves a gap or contradicts the permission behind it', () => {
    const materials: readonly MaterialKnown[] = [
      ...strengthClasses.map((one) => ({ class: one, ambiguous: true })),
      { ambiguous: false },
    ];
    for (const material of materials) {
      for (const { rule: id, sentence } of classRules(rules, material, dictionary)) {
        expect([id, sentence]).toEqual([
          id,
          expect.not.stringMatching(/\bunknown\b|\babove 2 times|[{}]|\s{2}/),
        ]);
        expect([id, sentence]).toEqual([id, expect.stringMatching(/^[A-Z].*\.$/)]);
      }
    }
  });

  test('limits of a class beside hot work are those of the pack for its victim', () => {
    const limits = general?.limits ?? [];
    const own = limits.find((one) => one.victim === 'hardened or multi-phase steel');
    const told = classLimits(rules, limits, 'press-hardened');
    expect(told.map((one) => one.rule)).toEqual(
      expect.arrayContaining(['neighbour-too-hot', 'neighbour-near-its-limit']),
    );
    expect(told.find((one) => one.rule === 'neighbour-too-hot')?.sentence).toContain(
      `${own?.stopAboveCelsius ?? ''} °C`,
    );
    // Plain steel has no limit of its own in the pack.
    expect(classLimits(rules, limits, 'mild')).toEqual([]);
  });
});
