import {
  chmodSync,
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
import path from 'node:path';

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
    const { mode } = statSync(target);
    const name = path.join(path.dirname(target), `.${path.basename(target)}.${String(process.pid)}.part`);
    const descriptor = openSync(name, 'wx', mode);
    aside = name;
    try {
      writeFileSync(descriptor, text);
      // A disk may tell only now that it is full.
      fsyncSync(descriptor);
    } finally {
      closeSync(descriptor);
    }
    chmodSync(name, mode);
    renameSync(name, target);
    return undefined;
  } catch (error) {
    if (aside !== undefined) rmSync(aside, { force: true });
    const code = error instanceof Error && 'code' in error ? String(error.code) : 'with no reason';
    return `${file} cannot be written (the system answers ${code}); it is as it was.`;
  }
}
