import { existsSync, lstatSync, mkdirSync } from 'node:fs';
import type { Stats } from 'node:fs';
import { homedir } from 'node:os';
import path from 'node:path';

/** Others may neither write nor, by writing to the folder, exchange what is in it. */
const writableByOthers = 0o022;

/**
 * The folder of planish in the user's cache: below XDG_CACHE_HOME where that is an absolute path, else below `~/.cache`.
 * Undefined with PLANISH_CACHE=off, and where the system does not tell owners (Windows).
 */
export function cacheFolder(environment: Readonly<Record<string, string | undefined>>): string | undefined {
  if (environment['PLANISH_CACHE'] === 'off' || process.getuid === undefined) return undefined;
  const { XDG_CACHE_HOME: given } = environment;
  const base = given !== undefined && path.isAbsolute(given) ? given : path.join(homedir(), '.cache');
  return path.join(base, 'planish', 'packs');
}

/** Makes the folder where it is not there; false when it is not the user's alone to write. */
export function ownFolder(folder: string): boolean {
  // One by one: Node's `recursive` never comes back where a system answers that the folder above is not there (/proc).
  const above = path.dirname(folder);
  for (const one of [path.dirname(above), above, folder]) {
    if (!existsSync(one)) mkdirSync(one, { mode: 0o700 });
  }
  return isOwnFolder(folder);
}

/** Whether the folder and the one above it are folders of the user that nobody else writes to. */
export function isOwnFolder(folder: string): boolean {
  return [path.dirname(folder), folder].every((one) => {
    const stats = lstatSync(one);
    return stats.isDirectory() && isOwn(stats);
  });
}

/** Owned by the user, and written to by nobody else. */
export function isOwn({ uid, mode }: Stats): boolean {
  return uid === process.getuid?.() && (mode & writableByOthers) === 0;
}
