import { accessSync, constants, fchmodSync, fchownSync } from 'node:fs';
import type { Stats } from 'node:fs';

/** Gives a file that takes the place of another one its rights, and where the system allows it its owner. */
export function makeLikeBefore(descriptor: number, before: Stats): void {
  try {
    fchownSync(descriptor, before.uid, before.gid);
  } catch {
    // Only the superuser gives files away; of anybody else they are their own.
  }
  // After the owner, whose change takes some rights away.
  fchmodSync(descriptor, before.mode & 0o7777);
}

/**
 * Whether a file is guarded against changes. A rename would pass over that, for it asks the folder alone; and the superuser may write
 * everywhere, though whoever took the right to write from everybody meant something by it.
 */
export function isWriteProtected(file: string, { mode }: Stats): boolean {
  if ((mode & 0o222) === 0) return true;
  try {
    accessSync(file, constants.W_OK);
    return false;
  } catch {
    return true;
  }
}
