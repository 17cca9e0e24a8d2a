import { statSync } from 'node:fs';
import path from 'node:path';
import { isDynamicPattern } from 'tinyglobby';
import { lockName } from '../../packs/layers/read-lock.ts';

/** A folder that is watched. Never a file: one that an editor saves under a new name and renames is another file afterwards. */
export interface WatchPlace {
  readonly folder: string;
  readonly isDeep: boolean;
  /** Whether a change of this name, as the system tells it, may matter; a change without a name always does. */
  readonly matters: (name: string) => boolean;
}

/** Plans, packs and locks, packed packs, and what says which plans are passed over. */
const mattering = /(?:\.ya?ml|\.tgz|\.planishignore)$/iu;

/** What is to be watched for the plans and packs that a command names, each folder once in each way. */
export function watchPlaces(args: readonly string[], workingFolder: string): readonly WatchPlace[] {
  const places = new Map<string, WatchPlace>();
  for (const arg of args) {
    const place = placeOf(path.resolve(workingFolder, arg), arg, workingFolder);
    places.set(
      `${String(place.isDeep)} ${place.isDeep ? place.folder : path.resolve(workingFolder, arg)}`,
      place,
    );
  }
  return [...places.values()];
}

function placeOf(full: string, arg: string, workingFolder: string): WatchPlace {
  const stats = statSync(full, { throwIfNoEntry: false });
  if (stats?.isDirectory() === true) return deep(full);
  if (stats === undefined && isDynamicPattern(arg)) return deep(path.resolve(workingFolder, stillPart(arg)));
  const own = path.basename(full);
  return {
    folder: path.dirname(full),
    isDeep: false,
    matters: (name) => name === own || name === lockName,
  };
}

function deep(folder: string): WatchPlace {
  return { folder, isDeep: true, matters: (name) => mattering.test(name) };
}

/** The folders of a pattern before its first part that is one. */
function stillPart(pattern: string): string {
  const parts = pattern.split(/[\\/]/u);
  const first = parts.findIndex((part) => isDynamicPattern(part));
  const still = parts.slice(0, first).join('/');
  return still === '' ? (pattern.startsWith('/') ? '/' : '.') : still;
}
