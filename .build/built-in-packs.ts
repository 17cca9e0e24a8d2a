import { readdirSync } from 'node:fs';
import path from 'node:path';
import { checkCases } from '../src/judge/check-cases.ts';
import type { PackLoading } from '../src/packs/load-pack.ts';
import type { PackPlace } from '../src/packs/pack-fault.ts';
import type { Pack } from '../src/packs/pack.ts';
import { header } from './generated-file.ts';
import { root } from './json-schema.ts';

const rules = 'rules';

/**
 * The packs that come with planish, loaded and proved ahead, in a function that makes them when they are asked for. Throws with
 * every fault of a pack that is not right.
 */
export async function builtInPacksSource(): Promise<string> {
  // Only now: the same run may just have made the dictionary and the validator of packs anew.
  const { loadPackFolder } = await import('../src/packs/load-pack.ts');
  const facts = await import('../src/generated/fact-names.ts');
  const dictionary = {
    version: facts.factSchemaVersion,
    facts: facts.factDictionary,
    kinds: facts.sheetKinds,
  };
  const packs = readdirSync(path.join(root, rules), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
    .map((name) => proved(loadPackFolder(path.join(rules, name), dictionary)));
  return `${header([rules])}import type { Pack } from '../packs/pack.ts';

export function builtInPacks(): readonly Pack[] {
  return [
${packs.map((pack) => `    ${JSON.stringify(pack)},`).join('\n')}
  ];
}
`;
}

function proved(loaded: PackLoading): Pack {
  if (!loaded.ok) throw new Error(loaded.faults.map((fault) => atPlace(fault, fault.sentence)).join('\n'));
  const failed = checkCases(loaded.pack, loaded.placeOfCase);
  if (failed.length > 0) {
    throw new Error(failed.map(({ place, sentence }) => atPlace(place, sentence)).join('\n'));
  }
  return loaded.pack;
}

function atPlace(place: PackPlace | undefined, sentence: string): string {
  if (place === undefined) return sentence;
  return `${place.file}, line ${String(place.line)}, column ${String(place.column)}: ${sentence}`;
}
