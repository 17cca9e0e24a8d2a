import { writeNewFiles } from './write-new-files.ts';

/**
 * Writes a file that is not there yet, or with `force` any: whole or not at all. Answers with one sentence where it cannot.
 */
export function writeNewFile(file: string, text: string, force: boolean): string | undefined {
  return writeNewFiles([{ file, text }], force);
}
