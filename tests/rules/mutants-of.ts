import type { Bounds, Line, Rule } from '../../src/packs/pack.ts';

export interface Mutant {
  readonly what: string;
  readonly mutant: Rule;
}

/**
 * A rule with one thing changed: a line of `when` dropped; the end of a range moved across its limit, so that the limit itself
 * falls on the other side; a range turned round; a `known` turned round; one word of a list dropped; an exception dropped; a line
 * of an exception dropped. A rule that is left without `when` is none.
 */
export function mutantsOf(rule: Rule): readonly Mutant[] {
  const { when, unless } = rule;
  const ofWhen = when.flatMap((line, index): readonly Mutant[] => {
    const without = when.filter((_, other) => other !== index);
    return [
      ...(without.length === 0 ? [] : [{ what: `without ${line.fact}`, mutant: { ...rule, when: without } }]),
      ...turned(line).map(({ what, line: other }) => ({
        what: `${line.fact} ${what}`,
        mutant: { ...rule, when: when.with(index, other) },
      })),
    ];
  });
  const ofUnless = unless.flatMap((lines, index): readonly Mutant[] => [
    {
      what: `without exception ${String(index + 1)}`,
      mutant: { ...rule, unless: unless.filter((_, other) => other !== index) },
    },
    // The only line of an exception dropped would lift always; that the exception is dropped says as much.
    ...(lines.length < 2 ? [] : lines).map((line, at) => ({
      what: `exception ${String(index + 1)} without ${line.fact}`,
      mutant: { ...rule, unless: unless.with(index, lines.filter((_, other) => other !== at)) },
    })),
  ]);
  return [...ofWhen, ...ofUnless];
}

function turned({ fact, test }: Line): readonly { readonly what: string; readonly line: Line }[] {
  if ('known' in test) return [{ what: 'known the other way', line: { fact, test: { known: !test.known } } }];
  if ('anyOf' in test) {
    const { anyOf } = test;
    if (anyOf.length < 2) return [];
    return anyOf.map((word) => ({
      what: `without the word ${String(word)}`,
      line: { fact, test: { anyOf: anyOf.filter((other) => other !== word) } },
    }));
  }
  const { min, max, above, below } = test.range;
  const crossed: Bounds = { ...end('min', above), ...end('above', min), ...end('max', below), ...end('below', max) };
  const around: Bounds = { ...end('max', above), ...end('below', min), ...end('min', below), ...end('above', max) };
  return [
    { what: 'with its limit on the other side', line: { fact, test: { range: crossed } } },
    { what: 'turned round', line: { fact, test: { range: around } } },
  ];
}

function end(key: keyof Bounds, value: number | undefined): Bounds {
  return value === undefined ? {} : { [key]: value };
}
