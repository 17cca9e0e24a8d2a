import type { Fact } from '../facts/fact.ts';
import { factEntry } from '../packs/fact-dictionary.ts';
import type { FactDictionary } from '../packs/fact-dictionary.ts';
import { asSentence, factTitle } from './fact-title.ts';
import type { UsedFact } from './finding.ts';

/** The named facts as the report shows them. */
export function usedFacts(
  names: Iterable<string>,
  factOf: (name: string) => Fact,
  dictionary: FactDictionary,
): readonly UsedFact[] {
  const used: UsedFact[] = [];
  for (const name of new Set(names)) {
    const fact = factOf(name);
    if (!fact.known) {
      used.push({ name, from: 'unknown', note: fact.reason });
      continue;
    }
    const unit = factEntry(dictionary, name)?.unit;
    used.push({
      name,
      value: fact.value,
      ...(unit === undefined ? {} : { unit }),
      from: fact.from,
      ...(fact.note === undefined ? {} : { note: fact.note }),
    });
  }
  return used;
}

/** What was assumed on the way to a finding, each assumption once. */
export function assumptionsOf(facts: readonly UsedFact[], dictionary: FactDictionary): readonly string[] {
  const sentences = facts
    .filter((fact) => fact.from === 'assumed')
    .map((fact) => asSentence(fact.note ?? `${factTitle(dictionary, fact.name)} is assumed`));
  return [...new Set(sentences)];
}
