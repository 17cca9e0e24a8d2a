import { openOutputFile } from './output-file.ts';
import type { OutputFile } from './output-file.ts';

export interface NewFile {
  readonly file: string;
  readonly text: string;
}

/**
 * Writes files that are not there yet, or with `force` any: all under other names first, then named, so that one that cannot be written
 * keeps the others from coming into being. Answers with one sentence where it cannot.
 */
export function writeNewFiles(wanted: readonly NewFile[], force: boolean): string | undefined {
  const opened: OutputFile[] = [];
  const drop = (sentence: string): string => {
    for (const file of opened) file.drop();
    return sentence;
  };
  for (const { file, text } of wanted) {
    const one = openOutputFile(file, force);
    if (!one.ok) return drop(one.sentence);
    opened.push(one.file);
    const fault = one.file.write(text);
    if (fault !== undefined) return drop(fault);
  }
  for (const file of opened) {
    const fault = file.finish();
    if (fault !== undefined) return drop(fault);
  }
  return undefined;
}
