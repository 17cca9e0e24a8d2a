import { readdirSync } from 'node:fs';
import path from 'node:path';
import { factDictionary, factSchemaVersion, sheetKinds } from '../src/generated/fact-names.ts';
import { checkCases } from '../src/judge/check-cases.ts';
import { loadPackFolder } from '../src/packs/load-pack.ts';
import type { Pack } from '../src/packs/pack.ts';
import { header } from './generated-file.ts';
import { root } from './json-schema.ts';

const rules = 'rules';
const dictionary = { version: factSchemaVersion, facts: factDictionary, kinds: sheetKinds };

/**
 * The packs that come with planish, loaded and proved ahead. Each is one string of JSON, which costs next to nothing until it
 * is parsed. Throws with every fault of a pack that is not right.
 */
export function builtInPacksSource(): string {
  const packs = readdirSync(path.join(root, rules), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
    .map(load);
  const texts = packs.map((pack) => `  ${JSON.stringify(JSON.stringify(pack))},`);
  return `${header([rules])}/** Each pack as JSON, see src/packs/built-in.ts. */
export const builtInPackTexts: readonly string[] = [
${texts.join('\n')}
];
`;
}

function load(name: string): Pack {
  const folder = path.join(rules, name);
  const loaded = loadPackFolder(folder, dictionary);
  if (!loaded.ok) {
    const lines = loaded.faults.map(
      ({ file, line, column, sentence }) => `${file}, line ${String(line)}, column ${String(column)}: ${sentence}`,
    );
    throw new Error(lines.join('\n'));
  }
  const failed = checkCases(loaded.pack);
  if (failed.length > 0) throw new Error(failed.map(({ sentence }) => sentence).join('\n'));
  return loaded.pack;
}
