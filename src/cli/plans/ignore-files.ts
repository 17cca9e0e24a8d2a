import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import ignore from 'ignore';
import type { Ignore } from 'ignore';

/** The file whose lines, in the syntax of .gitignore, name what a search of folders passes over. */
export const ignoreFileName = '.planishignore';

/** What the ignore files of a folder and of those above it say. */
export interface IgnoreRules {
  readonly isPassedOver: (full: string, isFolder: boolean) => boolean;
  /** With the ignore file of a folder below. */
  readonly within: (folder: string) => IgnoreRules;
}

interface Layer {
  readonly folder: string;
  readonly lines: Ignore;
}

/**
 * The rules in force at a folder that is searched: of its own ignore file and of those above it up to the top of its repository. So
 * the answer is the same from whatever folder planish is started. Throws the system's error when one cannot be read.
 */
export function ignoreRulesAt(folder: string): IgnoreRules {
  const layers = foldersUpToRepository(folder)
    .filter((one) => existsSync(path.join(one, ignoreFileName)))
    .map(readLayer);
  return rulesOf(layers);
}

function rulesOf(layers: readonly Layer[]): IgnoreRules {
  return {
    isPassedOver: (full, isFolder) => {
      // The nearest file that says anything decides, as git has it.
      for (const { folder, lines } of layers.toReversed()) {
        const below = path.relative(folder, full).replaceAll(path.sep, '/');
        const { ignored, unignored } = lines.test(isFolder ? `${below}/` : below);
        if (ignored || unignored) return ignored;
      }
      return false;
    },
    within: (folder) => rulesOf([...layers, readLayer(folder)]),
  };
}

function readLayer(folder: string): Layer {
  return { folder, lines: ignore().add(readFileSync(path.join(folder, ignoreFileName), 'utf8')) };
}

/** From the top down. Outside of a repository only the folder itself counts. */
function foldersUpToRepository(folder: string): readonly string[] {
  const folders = [folder];
  for (let one = folder; !existsSync(path.join(one, '.git'));) {
    const above = path.dirname(one);
    if (above === one) return [folder];
    folders.unshift(above);
    one = above;
  }
  return folders;
}
