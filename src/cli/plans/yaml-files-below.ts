import { readdirSync, realpathSync, statSync } from 'node:fs';
import path from 'node:path';
import { lockName } from '../../packs/layers/read-lock.ts';
import { ignoreFileName, ignoreRulesAt } from './ignore-files.ts';
import type { IgnoreRules } from './ignore-files.ts';

export interface FolderContent {
  /** Full paths, in the order of their names. */
  readonly files: readonly string[];
  /** Folders that the system does not let us look into, each with the reason: what lies there stays unjudged, so it must be said. */
  readonly closed: readonly { readonly folder: string; readonly sentence: string }[];
  /** How many files and folders an ignore file passes over. */
  readonly passedOver: number;
}

export const closedSentence = 'This folder cannot be looked into.';

/** `.YAML` too: a file that a shop's computer wrote in capitals is a plan like any other. */
const yamlName = /\.ya?ml$/iu;

/** Folders of other people's files, and the lock, which is planish's own. */
const leftOut: ReadonlySet<string> = new Set(['node_modules', lockName]);

/**
 * The YAML files below a folder. Links are followed, since a plan that is linked in is one of the folder's plans, but no folder
 * is entered twice; a link that leads nowhere is listed and cannot be read. Names that begin with a dot are tools' own. What an
 * ignore file names is passed over and counted, for nobody may think that it was judged.
 */
export function yamlFilesBelow(folder: string): FolderContent {
  const files: string[] = [];
  const closed: { readonly folder: string; readonly sentence: string }[] = [];
  const entered = new Set<string>();
  let passedOver = 0;
  const enter = (inner: string, above: IgnoreRules | undefined): void => {
    try {
      const real = realpathSync(inner);
      if (entered.has(real)) return;
      entered.add(real);
      // By code units, so that the order is the same on every machine.
      const names = readdirSync(inner).sort();
      const rules =
        above === undefined
          ? ignoreRulesAt(inner)
          : names.includes(ignoreFileName)
            ? above.within(inner)
            : above;
      for (const name of names) look(path.join(inner, name), name, rules);
    } catch (error) {
      closed.push({ folder: inner, sentence: whyClosed(error) });
    }
  };
  const look = (full: string, name: string, rules: IgnoreRules): void => {
    if (name.startsWith('.') || leftOut.has(name)) return;
    const isInner = isFolder(full);
    if (!isInner && !yamlName.test(name)) return;
    if (rules.isPassedOver(full, isInner)) passedOver += 1;
    else if (isInner) enter(full, rules);
    else files.push(full);
  };
  enter(folder, undefined);
  return { files, closed, passedOver };
}

/** Of the files in a folder only its ignore file is opened here. */
function whyClosed(error: unknown): string {
  const file = error instanceof Error && 'path' in error ? String(error.path) : '';
  return path.basename(file) === ignoreFileName
    ? `This folder is not searched: its ${ignoreFileName} cannot be read.`
    : closedSentence;
}

function isFolder(file: string): boolean {
  try {
    return statSync(file).isDirectory();
  } catch {
    // A link that leads nowhere or in a ring: reading it will say why.
    return false;
  }
}
