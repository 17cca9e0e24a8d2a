import { readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { isPacked, readPacked } from './read-packed.ts';
import type { FoundPacks } from './read-packed.ts';
import { readPackFiles } from './read-pack-files.ts';

/**
 * The packs that a person names: a pack's folder, a folder of such folders, a packed file, or an npm package by its name, which is
 * looked up in node_modules from the working folder upward. Of a package only its YAML is read; nothing of it runs, and
 * nothing is fetched.
 */
export function readPackSources(given: string, workingFolder: string): FoundPacks {
  const full = path.resolve(workingFolder, given);
  const kind = kindOf(full);
  if (kind === 'file') {
    return isPacked(full)
      ? readPacked(given)
      : refuse(given, 'a pack is a folder with a pack.yaml, a packed file (.tgz) or an npm package');
  }
  if (kind === 'folder') return fromFolder(given, full);
  if (kind === 'closed') return refuse(given, 'this cannot be looked up; is it a ring of links?');
  const installed = installedPackage(given, workingFolder);
  if (installed !== undefined) return fromFolder(path.relative(workingFolder, installed), installed);
  return refuse(
    given,
    packageName.test(given)
      ? 'there is no such folder or file, and node_modules holds no such package.'
      : 'no rule pack lies here (a pack has a pack.yaml).',
  );
}

const closedSentence = 'the folder cannot be read; who runs planish needs leave to read it.';

function fromFolder(shown: string, full: string): FoundPacks {
  const here = namesIn(full);
  if (here === undefined) {
    return refuse(shown, closedSentence);
  }
  if (here.includes('pack.yaml')) {
    return { ok: true, packs: [{ where: shown, files: readPackFiles(full, shown) }] };
  }
  const inner = here.filter((name) => name !== 'node_modules' && kindOf(path.join(full, name)) === 'folder');
  // It may be a pack, and plans judged without it could pass.
  const closed = inner.find((name) => namesIn(path.join(full, name)) === undefined);
  if (closed !== undefined) return refuse(path.join(shown, closed), closedSentence);
  const lost = here.find((name) => !name.startsWith('.') && isLost(kindOf(path.join(full, name))));
  if (lost !== undefined)
    return refuse(path.join(shown, lost), 'this link leads nowhere, and a pack may be meant.');
  const folders = inner
    .filter((name) => namesIn(path.join(full, name))?.includes('pack.yaml') === true)
    .sort();
  if (folders.length === 0) return refuse(shown, 'no rule pack lies here (a pack has a pack.yaml).');
  return {
    ok: true,
    packs: folders.map((name) => {
      const where = path.join(shown, name);
      return { where, files: readPackFiles(path.join(full, name), where) };
    }),
  };
}

const packageName = /^(?:@[a-z0-9~-][a-z0-9._~-]*\/)?[a-z0-9~-][a-z0-9._~-]*$/u;

function installedPackage(name: string, workingFolder: string): string | undefined {
  if (!packageName.test(name)) return undefined;
  for (let folder = path.resolve(workingFolder); ; folder = path.dirname(folder)) {
    const candidate = path.join(folder, 'node_modules', name);
    if (kindOf(candidate) === 'folder') return candidate;
    if (folder === path.dirname(folder)) return undefined;
  }
}

function kindOf(full: string): 'file' | 'folder' | 'none' | 'closed' {
  try {
    const stats = statSync(full, { throwIfNoEntry: false });
    if (stats === undefined) return 'none';
    return stats.isDirectory() ? 'folder' : 'file';
  } catch {
    return 'closed';
  }
}

function isLost(kind: ReturnType<typeof kindOf>): boolean {
  return kind === 'none' || kind === 'closed';
}

function namesIn(folder: string): readonly string[] | undefined {
  try {
    return readdirSync(folder);
  } catch {
    return undefined;
  }
}

function refuse(given: string, what: string): FoundPacks {
  return { ok: false, sentence: `${given}: ${/[.?]$/u.test(what) ? what : `${what}.`}` };
}
