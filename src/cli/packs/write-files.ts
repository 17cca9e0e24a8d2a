import { mkdirSync } from 'node:fs';
import path from 'node:path';
import type { PackFile } from '../../packs/digest.ts';
import { openOutputFile, reasonOf } from '../output-file.ts';
import type { OutputFile } from '../output-file.ts';

/** Writes the files of a folder, which is made where it is not there: all under other names first, then named. Answers with one sentence where it cannot. */
export function writeFiles(folder: string, files: readonly PackFile[], force: boolean): string | undefined {
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    return `${folder} cannot be made (${reasonOf(error)}).`;
  }
  const opened: OutputFile[] = [];
  const drop = (sentence: string): string => {
    for (const file of opened) file.drop();
    return sentence;
  };
  for (const { name, text } of files) {
    const one = openOutputFile(path.join(folder, name), force);
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
