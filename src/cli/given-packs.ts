import { existsSync, readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { loadPackFolder } from '../packs/load-pack.ts';
import { checkCases } from '../judge/check-cases.ts';
import type { PackFault } from '../packs/pack-fault.ts';
import type { Pack } from '../packs/pack.ts';
import { dictionary } from './dictionary.ts';

export type GivenPacks =
  | { readonly ok: true; readonly packs: readonly Pack[] }
  | { readonly ok: false; readonly lines: readonly string[] };

/** The packs that the command line names: each a pack's folder, or a folder of such folders. */
export function loadGivenPacks(folders: readonly string[]): GivenPacks {
  const packs: Pack[] = [];
  const lines: string[] = [];
  for (const folder of folders) {
    const found = packFolders(folder);
    if (found === undefined) {
      lines.push(`${folder}: the folder cannot be read; who runs planish needs leave to read it.`);
      continue;
    }
    if (found.length === 0) lines.push(`${folder}: no rule pack lies here (a pack has a pack.yaml).`);
    for (const one of found) {
      const loaded = loadPackFolder(one, dictionary);
      if (!loaded.ok) {
        lines.push(...loaded.faults.map(faultLine));
        continue;
      }
      for (const { place, sentence } of checkCases(loaded.pack, loaded.placeOfCase)) {
        lines.push(place === undefined ? `${one}: ${sentence}` : faultLine({ ...place, sentence }));
      }
      packs.push(loaded.pack);
    }
  }
  return lines.length === 0 ? { ok: true, packs } : { ok: false, lines };
}

/** Undefined when the folder is there and cannot be read. */
function packFolders(folder: string): readonly string[] | undefined {
  if (existsSync(path.join(folder, 'pack.yaml'))) return [folder];
  if (statSync(folder, { throwIfNoEntry: false })?.isDirectory() !== true) return [];
  try {
    return readdirSync(folder)
      .sort()
      .map((name) => path.join(folder, name))
      .filter((inner) => existsSync(path.join(inner, 'pack.yaml')));
  } catch {
    return undefined;
  }
}

function faultLine({ file, line, column, sentence }: Omit<PackFault, 'nearest'>): string {
  return `${file}, line ${String(line)}, column ${String(column)}: ${sentence}`;
}
