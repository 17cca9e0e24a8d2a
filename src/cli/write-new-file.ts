import { openOutputFile } from './output-file.ts';

/**
 * Writes a file that is not there yet, or with `force` any: whole or not at all. Answers with one sentence where it cannot.
 */
export function writeNewFile(file: string, text: string, force: boolean): string | undefined {
  const opened = openOutputFile(file, force);
  return opened.ok ? (opened.file.write(text) ?? opened.file.finish()) : opened.sentence;
}
