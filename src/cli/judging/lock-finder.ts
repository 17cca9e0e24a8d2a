import { lstatSync } from 'node:fs';
import path from 'node:path';
import { lockName, readLock } from '../../packs/layers/read-lock.ts';
import type { LockReading } from '../../packs/layers/read-lock.ts';

/** A lock, and where it was found. */
export interface FoundLock {
  readonly file: string;
  readonly lock: LockReading;
}

/** The lock of a plan with its path as that of the plan is shown: whole beside a whole one, else from the working folder. */
export function lockBeside(plan: string, found: FoundLock | undefined): FoundLock | undefined {
  if (found === undefined || path.isAbsolute(plan)) return found;
  return { ...found, file: path.relative(process.cwd(), found.file) };
}

/** Gives the lock for the plans of a folder: the nearest one upward from it. Each folder is looked into once. */
export type LockFinder = (folder: string) => FoundLock | undefined;

export function lockFinder(): LockFinder {
  const found = new Map<string, FoundLock | undefined>();
  const find = (folder: string): FoundLock | undefined => {
    if (found.has(folder)) return found.get(folder);
    const file = path.join(folder, lockName);
    const above = path.dirname(folder);
    const answer = isThere(file)
      ? { file, lock: readLock(file) }
      : above === folder
        ? undefined
        : find(above);
    found.set(folder, answer);
    return answer;
  };
  return (folder) => find(path.resolve(folder));
}

/** A link that leads nowhere counts: whoever laid it meant the plans to be locked, and reading it says what is amiss. */
function isThere(file: string): boolean {
  try {
    return lstatSync(file, { throwIfNoEntry: false }) !== undefined;
  } catch {
    return false;
  }
}
