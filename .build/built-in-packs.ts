import { createHash } from 'node:crypto';
import { readdirSync } from 'node:fs';
import path from 'node:path';
import { checkCases } from '../src/judge/check-cases.ts';
import type { PackLoading } from '../src/packs/load-pack.ts';
import { versionsOf } from '../src/packs/versions/pack-at.ts';
import type { PackPlace } from '../src/packs/pack-fault.ts';
import type { Pack } from '../src/packs/pack.ts';
import { header } from './generated-file.ts';
import { root } from './json-schema.ts';

const rules = 'rules';

/**
 * The code that reads the packs that come with planish from the two texts below, which were loaded and proved ahead, and the digests
 * of all their versions. Throws with every fault of a pack that is not right.
 */
export async function builtInPacksSource(): Promise<string> {
  const packs = await sourcePacks();
  const digests = packs.flatMap((pack) =>
    versionsOf(pack).map(({ version, digest }) => [digest, { pack: pack.name, version }] as const),
  );
  return `${header([rules])}import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Cases, Pack } from '../packs/pack.ts';

/** Digest of every version of a built-in pack → which one it is. */
export const builtInDigests: Readonly<Record<string, { readonly pack: string; readonly version: string }>> =
  ${JSON.stringify(Object.fromEntries(digests))};

/** The packs that come with planish, proved ahead and without the cases that proved them. */
export function builtInPacks(): readonly Pack[] {
  const packs: readonly Pack[] = readJson(new URL('built-in-packs.json', import.meta.url), '${digestOf(packsText(packs))}');
  return packs;
}

/** The same with the cases of their rules. */
export function builtInPacksWithCases(): readonly Pack[] {
  const cases: Readonly<Record<string, readonly Cases[]>> = readJson(new URL('built-in-cases.json', import.meta.url), '${digestOf(casesText(packs))}');
  return builtInPacks().map((pack) => ({
    ...pack,
    rules: pack.rules.map((rule, index) => {
      const own = cases[pack.name]?.[index];
      return own === undefined ? rule : { ...rule, cases: own };
    }),
  }));
}

/** The JSON of a file that was made with this code; throws where it is another, so that nothing is judged by rules of another build. */
function readJson(file: URL, digest: string): any {
  const text = readFileSync(file, 'latin1');
  if (createHash('sha256').update(text, 'latin1').digest('hex') !== digest)
    throw new Error(\`\${file.pathname} does not belong to this build; install planish anew\`);
  return JSON.parse(text);
}
`;
}

/** The packs as JSON, in a file of its own: a start reads it sooner than as a part of the code, whose cache would hold it twice. */
export async function builtInPacksJson(): Promise<string> {
  return packsText(await sourcePacks());
}

/** The cases of their rules, which only authors look at. */
export async function builtInCasesJson(): Promise<string> {
  return casesText(await sourcePacks());
}

function packsText(packs: readonly Pack[]): string {
  return ascii(
    packs.map((pack) => ({ ...pack, rules: pack.rules.map(({ cases: _cases, ...rule }) => rule) })),
  );
}

function casesText(packs: readonly Pack[]): string {
  return ascii(
    Object.fromEntries(packs.map(({ name, rules: own }) => [name, own.map(({ cases }) => cases)])),
  );
}

/** JSON of ASCII alone, which is read as Latin-1. */
function ascii(value: unknown): string {
  const text = JSON.stringify(value).replaceAll(
    /[^\0-\x7f]/g,
    (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  return `${text}\n`;
}

function digestOf(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}

/** The packs below `rules`, read from their sources; without places, which only show as wrong beside other packs. */
export async function sourcePacks(): Promise<readonly Pack[]> {
  // Only now: the same run may just have made the dictionary and the validator of packs anew.
  const { loadPackFolder } = await import('../src/packs/load-pack.ts');
  const facts = await import('../src/generated/fact-names.ts');
  const dictionary = {
    version: facts.factSchemaVersion,
    facts: facts.factDictionary,
    kinds: facts.sheetKinds,
  };
  return readdirSync(path.join(root, rules), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
    .map((name) => proved(loadPackFolder(path.join(rules, name), dictionary)));
}

function proved(loaded: PackLoading): Pack {
  if (!loaded.ok) throw new Error(loaded.faults.map((fault) => atPlace(fault, fault.sentence)).join('\n'));
  const failed = checkCases(loaded.pack, loaded.placeOfCase);
  if (failed.length > 0) {
    throw new Error(failed.map(({ place, sentence }) => atPlace(place, sentence)).join('\n'));
  }
  const { places: _, ...pack } = loaded.pack;
  return pack;
}

function atPlace(place: PackPlace | undefined, sentence: string): string {
  if (place === undefined) return sentence;
  return `${place.file}, line ${String(place.line)}, column ${String(place.column)}: ${sentence}`;
}
