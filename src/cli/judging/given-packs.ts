import { loadPackFiles } from '../../packs/load-pack.ts';
import { checkCases } from '../../judge/check-cases.ts';
import type { PackPlace } from '../../packs/pack-fault.ts';
import type { Pack } from '../../packs/pack.ts';
import type { FoundPack } from '../../packs/sources/read-packed.ts';
import { readPackSources } from '../../packs/sources/read-pack-sources.ts';
import { dictionary } from '../dictionary.ts';
import { packCache } from './pack-cache.ts';

export type GivenPacks =
  | { readonly ok: true; readonly packs: readonly Pack[] }
  | { readonly ok: false; readonly lines: readonly string[] };

/**
 * The packs that the command line names: each a pack's folder, a folder of such folders, a packed file or an npm package. One fault
 * in one of them and none is taken; all faults are told.
 */
export function loadGivenPacks(given: readonly string[]): GivenPacks {
  const packs: Pack[] = [];
  const lines: string[] = [];
  const cache = packCache();
  for (const one of given) {
    const found = readPackSources(one, process.cwd());
    if (!found.ok) {
      lines.push(found.sentence);
      continue;
    }
    for (const pack of found.packs) {
      const kept = cache.read(pack);
      if (kept !== undefined) {
        packs.push(kept);
        continue;
      }
      const { pack: loaded, lines: faults } = loadFound(pack);
      lines.push(...faults);
      if (loaded === undefined) continue;
      packs.push(loaded);
      if (faults.length === 0) cache.keep(pack, loaded);
    }
  }
  return lines.length === 0 ? { ok: true, packs } : { ok: false, lines };
}

/** One found pack; every fault of it as a line, those of its cases with the others. */
export function loadFound({ files, where }: FoundPack): {
  readonly pack?: Pack;
  readonly lines: readonly string[];
} {
  const loaded = loadPackFiles(files, where, dictionary);
  const { placeOfCase } = loaded;
  const failed = checkCases(loaded.ok ? loaded.pack : { rules: loaded.rules }, placeOfCase);
  const lines = [
    ...(loaded.ok ? [] : loaded.faults.map((fault) => faultLine(fault.sentence, fault))),
    ...failed.map(({ place, sentence }) => faultLine(sentence, place)),
  ];
  return { ...(loaded.ok ? { pack: loaded.pack } : {}), lines };
}

/** What is wrong, behind its place where there is one. */
export function faultLine(sentence: string, place: PackPlace | undefined): string {
  if (place === undefined) return sentence;
  return `${place.file}, line ${String(place.line)}, column ${String(place.column)}: ${sentence}`;
}
