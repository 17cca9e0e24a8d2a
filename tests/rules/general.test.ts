import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { builtInPacks } from '../../src/generated/built-in-packs.ts';
import { askRule } from '../../src/judge/ask-rule.ts';
import { checkCases } from '../../src/judge/check-cases.ts';
import type { Line, Pack, Rule } from '../../src/packs/pack.ts';

const general = builtInPacks().find(({ name }) => name === 'general');
if (general === undefined) throw new Error('the general pack is not built in');
const pack: Pack = general;

test('every case of every rule comes out as its rule claims', () => {
  expect(checkCases(pack)).toEqual([]);
});

test('there are at least sixty rules, each with a find and a near miss', () => {
  expect(pack.rules.length).toBeGreaterThanOrEqual(60);
  for (const { id, cases } of pack.rules) {
    expect([id, cases.finds.length > 0, cases.passes.length > 0]).toEqual([id, true, true]);
  }
});

test('every rule of the folder is in the pack that is built in', () => {
  const ids = readdirSync('rules/general')
    .filter((name) => name !== 'pack.yaml')
    .flatMap((name): readonly string[] => {
      const file: { readonly rules?: readonly { readonly id: string }[] } = parse(readFileSync(`rules/general/${name}`, 'utf8'));
      return (file.rules ?? []).map(({ id }) => id);
    });
  expect(pack.rules.map(({ id }) => id).sort()).toEqual(ids.sort());
  expect(new Set(ids).size).toBe(ids.length);
});

test('messages speak the trade’s language', () => {
  for (const { id, message, instead, why } of pack.rules) {
    expect([id, /\b(?:invalid|please|illegal)\b/iu.test(`${message} ${instead} ${why}`)]).toEqual([id, false]);
    if (!message.startsWith('{entry.path}')) expect(message).toMatch(/[.}\]]$/u);
    expect(instead).toMatch(/[.}\]]$/u);
    expect(why).toMatch(/\.$/u);
  }
});

// A rule is only proved when a change of it would be noticed: each line of `when` dropped in turn, each end of a range moved to
// the other side of its limit. One of the rule's own cases must then come out otherwise.
describe('mutants of the stops are caught by their cases', () => {
  const stops = pack.rules.filter(({ severity }) => severity === 'stop');

  test.each(stops.map((rule) => [rule.id, rule] as const))('%s', (_id, rule) => {
    const survivors = mutantsOf(rule).filter(({ mutant }) => !isCaught(mutant));
    expect(survivors.map(({ what }) => what)).toEqual([]);
  });
});

interface Mutant {
  readonly what: string;
  readonly mutant: Rule;
}

function mutantsOf(rule: Rule): readonly Mutant[] {
  const dropped = rule.when.map((line, index): Mutant => ({
    what: `without ${line.fact}`,
    mutant: { ...rule, when: rule.when.filter((_, other) => other !== index) },
  }));
  const moved = rule.when.flatMap((line, index): readonly Mutant[] => {
    if (!('range' in line.test)) return [];
    const { min, max, above, below } = line.test.range;
    const closed = {
      ...(above === undefined ? {} : { min: above }),
      ...(min === undefined ? {} : { above: min }),
      ...(below === undefined ? {} : { max: below }),
      ...(max === undefined ? {} : { below: max }),
    };
    const moved: Line = { fact: line.fact, test: { range: closed } };
    return [{ what: `the end of ${line.fact} on the other side`, mutant: { ...rule, when: rule.when.with(index, moved) } }];
  });
  const lifted = rule.unless.length === 0 ? [] : [{ what: 'without unless', mutant: { ...rule, unless: [] } }];
  return [...dropped, ...moved, ...lifted].filter(({ mutant }) => mutant.when.length > 0);
}

function isCaught(mutant: Rule): boolean {
  const kinds = { finds: ['found'], passes: ['passed', 'lifted'], asks: ['unknown'] } as const;
  return (['finds', 'passes', 'asks'] as const).some((list) =>
    mutant.cases[list].some((one) => {
      const { kind } = askRule(mutant, (name) => {
        const value = Object.hasOwn(one, name) ? one[name] : undefined;
        return value === undefined ? { known: false, reason: 'not in the case' } : { known: true, value, from: 'stated' };
      });
      return !kinds[list].some((claimed) => claimed === kind);
    }),
  );
}
