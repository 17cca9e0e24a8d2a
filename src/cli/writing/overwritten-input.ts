import { statSync } from 'node:fs';
import path from 'node:path';

/**
 * The first file to be written that is one of those that are read, also by another name for it; undefined where there is none. What was
 * read would be lost, and --force is not meant for that. Only a file that is there already can be one of them.
 */
export function overwrittenInput(written: readonly string[], read: readonly string[]): string | undefined {
  const there = written.filter((file) => identity(file) !== undefined);
  if (there.length === 0) return undefined;
  const inputs = new Set(read.flatMap((file) => [path.resolve(file), identity(file) ?? path.resolve(file)]));
  return there.find((file) => inputs.has(path.resolve(file)) || inputs.has(identity(file) ?? ''));
}

/** Says so. */
export function overwrittenSentence(file: string): string {
  return `${file} is read by this run; what is written needs another name.`;
}

/** What a link and what it leads to have in common; undefined where nothing is there. */
function identity(file: string): string | undefined {
  try {
    const { dev, ino } = statSync(file, { bigint: true });
    return `${String(dev)} ${String(ino)}`;
  } catch {
    return undefined;
  }
}
