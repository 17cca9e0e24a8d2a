import { readdirSync, realpathSync, statSync } from 'node:fs';
import path from 'node:path';
import { lockName } from '../packs/read-lock.ts';

export interface FolderContent {
  /** Full paths, in the order of their names. */
  readonly files: readonly string[];
  /** Folders that the system does not let us look into: what lies there stays unjudged, so it must be said. */
  readonly closed: readonly string[];
}

/** `.YAML` too: a file that a shop's computer wrote in capitals is a plan like any other. */
const yamlName = /\.ya?ml$/iu;

/** Folders of other people's files, and the lock, which is planish's own. */
const leftOut: ReadonlySet<string> = new Set(['node_modules', lockName]);

/**
 * The YAML files below a folder. Links are followed, since a plan that is linked in is one of the folder's plans, but no folder
 * is entered twice; a link that leads nowhere is listed and cannot be read. Names that begin with a dot are tools' own.
 */
export function yamlFilesBelow(folder: string): FolderContent {
  const files: string[] = [];
  const closed: string[] = [];
  const entered = new Set<string>();
  const enter = (inner: string): void => {
    try {
      const real = realpathSync(inner);
      if (entered.has(real)) return;
      entered.add(real);
      // By code units, so that the order is the same on every machine.
      for (const name of readdirSync(inner).sort()) look(path.join(inner, name), name);
    } catch {
      closed.push(inner);
    }
  };
  const look = (full: string, name: string): void => {
    if (name.startsWith('.') || leftOut.has(name)) return;
    if (isFolder(full)) enter(full);
    else if (yamlName.test(name)) files.push(full);
  };
  enter(folder);
  return { files, closed };
}

function isFolder(file: string): boolean {
  try {
    return statSync(file).isDirectory();
  } catch {
    // A link that leads nowhere or in a ring: reading it will say why.
    return false;
  }
}
