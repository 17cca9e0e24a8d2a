import {
  closeSync,
  fsyncSync,
  openSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { isWriteProtected, makeLikeBefore } from '../writing/like-before.ts';
import { nameAside } from '../writing/name-aside.ts';
import { reasonOf } from '../writing/output-file.ts';

/**
 * Puts a text in place of a file that was read before. It is written under a temporary name beside it and renamed, so that
 * whoever reads meanwhile, or an end in between, finds the old file or the new one whole. A file that was changed since it was
 * read is left alone. A link stays one: what it leads to is replaced. Answers with one sentence where it cannot.
 */
export function replaceFile(file: string, before: Uint8Array, text: string): string | undefined {
  let aside: string | undefined;
  try {
    const target = realpathSync(file);
    if (!Buffer.from(before).equals(readFileSync(target)))
      return `${file} was changed by somebody else meanwhile; nothing was written.`;
    const stats = statSync(target);
    if (isWriteProtected(target, stats)) return `${file} is write-protected; it is as it was.`;
    const name = nameAside(target);
    const descriptor = openSync(name, 'wx', stats.mode);
    aside = name;
    try {
      writeFileSync(descriptor, text);
      makeLikeBefore(descriptor, stats);
      // A disk may tell only now that it is full.
      fsyncSync(descriptor);
    } finally {
      closeSync(descriptor);
    }
    renameSync(name, target);
    return undefined;
  } catch (error) {
    if (aside !== undefined) rmSync(aside, { force: true });
    return `${file} cannot be written (${reasonOf(error)}); it is as it was.`;
  }
}
