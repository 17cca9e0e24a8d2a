import type { Layer } from './layers/resolve-packs.ts';
import type { Pack, Rule } from './pack.ts';
import { sourceSentence } from './source-sentence.ts';

/** What rules say of the least strength and the least distance beside heat, read off the rules themselves. */

/** Least tensile strength left, %, below which a rule stops; the strictest. */
export function leastTensileLeft(layers: readonly Layer[]): number | undefined {
  return strictest(
    stops(layers).flatMap(({ when }) =>
      when.filter(({ fact }) => fact === 'exposure.tensile_left').map(below),
    ),
  );
}

/** The rule that stops hot work of this kind nearest to a victim that stays fitted, and the distance from which it no longer does. */
export function keepOffRule(
  layers: readonly Layer[],
  victim: string,
  from: string,
): { readonly distanceMm: number; readonly rule: string } | undefined {
  let found: { readonly distanceMm: number; readonly rule: string } | undefined;
  for (const rule of stops(layers)) {
    if (!names(rule, 'exposure.victim', victim) || !names(rule, 'exposure.from', from)) continue;
    const distanceMm = strictest([
      ...rule.when.filter(({ fact }) => fact === 'exposure.distance').map(below),
      ...rule.unless.flatMap((lines) => (lines.length === 1 ? lines : [])).map(atLeast),
    ]);
    if (distanceMm !== undefined && distanceMm > (found?.distanceMm ?? 0))
      found = { distanceMm, rule: rule.id };
  }
  return found;
}

/** The packs that set a limit for a victim, with version and source: what a report names beside the number. */
export function limitSource(packs: readonly Pack[], victim: string): string | undefined {
  const named = packs.flatMap(({ name, version, limits }) =>
    limits
      .filter((limit) => limit.victim === victim)
      .map(({ source }) => `pack ${name} ${version}: ${sourceSentence(source)}`),
  );
  return named.length === 0 ? undefined : named.join('; ');
}

type Line = Rule['when'][number];

function stops(layers: readonly Layer[]): readonly Rule[] {
  return layers
    .flatMap(({ rules }) => rules)
    .filter(({ judges, severity }) => judges === 'exposure' && severity === 'stop');
}

function names({ when }: Rule, fact: string, word: string): boolean {
  return when.some(({ fact: asked, test }) => asked === fact && 'anyOf' in test && test.anyOf.includes(word));
}

function below({ test }: Line): number | undefined {
  return 'range' in test ? test.range.below : undefined;
}

function atLeast({ fact, test }: Line): number | undefined {
  return fact === 'exposure.distance' && 'range' in test ? test.range.min : undefined;
}

function strictest(values: readonly (number | undefined)[]): number | undefined {
  const known = values.filter((value) => value !== undefined);
  return known.length === 0 ? undefined : Math.max(...known);
}
