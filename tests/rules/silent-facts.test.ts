import { expect, test } from 'vitest';
import { builtInPacksWithCases } from '../../src/generated/built-in-packs.ts';
import type { Rule } from '../../src/packs/pack.ts';
import { silentFacts } from './silent-facts.ts';

// A rule that says nothing where its fact is unknown rewards whoever leaves that fact out, unless another one asks for it.

const rules = builtInPacksWithCases()
  .flatMap(({ name, rules: all }) => (name === 'general' ? all : []))
  .filter(({ until, severity }) => until === undefined && severity !== 'note');

/** The facts that a rule lets be where they are unknown: of each alternative of `unless` that says only that. */
function silentIn({ unless }: Rule): readonly string[] {
  return unless.flatMap(([line, ...more]) =>
    line !== undefined && 'known' in line.test && !line.test.known && more.length === 0 ? [line.fact] : [],
  );
}

const silent = new Set(rules.flatMap(silentIn));
const isAskedFor = (fact: string): boolean =>
  rules.some((rule) => rule.when.some((line) => line.fact === fact) && !silentIn(rule).includes(fact));
const open = [...silent].filter((fact) => !isAskedFor(fact)).sort();

test('whatever a stop or a hold lets be where it is unknown is asked for, or somebody wrote down why not', () => {
  expect(open.length).toBeGreaterThan(40);
  expect(open.filter((fact) => !(fact in silentFacts))).toEqual([]);
});

test('nothing stands in that list that no rule lets be any more', () => {
  expect(Object.keys(silentFacts).filter((fact) => !open.includes(fact))).toEqual([]);
});

test('each rule that is said to ask is one that stops or holds', () => {
  const ids = new Set(rules.map(({ id }) => id));
  const wrong = Object.entries(silentFacts).filter(
    ([, standing]) => 'askedBy' in standing && !ids.has(standing.askedBy),
  );
  expect(wrong).toEqual([]);
});
