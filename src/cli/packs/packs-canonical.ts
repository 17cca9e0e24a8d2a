import { existsSync } from 'node:fs';
import { builtInPacks } from '../../generated/built-in-packs.ts';
import { loadPackFiles } from '../../packs/load-pack.ts';
import { versionsOf } from '../../packs/versions/pack-at.ts';
import { readPackSources } from '../../packs/sources/read-pack-sources.ts';
import { dictionary } from '../dictionary.ts';
import { faultLine } from '../judging/given-packs.ts';
import { shipped } from '../shipped.ts';
import { writeOut } from '../write-out.ts';
import { refuse } from '../complain.ts';

/** The command `packs canonical`: prints the canonical form of one version of a pack, and gives the exit status. */
export function canonical(given: string, version: string | undefined): 0 | 2 {
  const found = readPackSources(builtInFolder(given) ?? given, process.cwd());
  if (!found.ok) return refuse([found.sentence]);
  const [first, ...more] = found.packs;
  if (first === undefined || more.length > 0) return refuse([`${given}: name one pack.`]);
  const loaded = loadPackFiles(first.files, first.where, dictionary);
  if (!loaded.ok) return refuse(loaded.faults.map((fault) => faultLine(fault.sentence, fault)));
  const { pack, canonicalForm } = loaded;
  const asked = version ?? pack.version;
  const versions = versionsOf(pack);
  if (!versions.some((one) => one.version === asked)) {
    const known = versions.map((one) => one.version).join(', ');
    return refuse([`${given}: ${pack.name} has no version ${asked}; it has ${known}.`]);
  }
  const facts = pack.releases?.find((release) => release.version === asked)?.facts ?? pack.facts;
  writeOut(canonicalForm(asked, facts));
  return 0;
}

/** The files of the pack that comes with planish, unless something of that name lies here. */
function builtInFolder(given: string): string | undefined {
  const isBuiltIn = builtInPacks().some(({ name }) => name === given);
  return isBuiltIn && !existsSync(given) ? shipped(`rules/${given}`) : undefined;
}
