import { mkdirSync, rmdirSync } from 'node:fs';
import path from 'node:path';
import type { PackFile } from '../../packs/digest.ts';
import { reasonOf } from '../writing/output-file.ts';
import { writeNewFiles } from '../writing/write-new-files.ts';

/** Writes the files of a folder, which is made where it is not there: all of it or nothing. Answers with one sentence where it cannot. */
export function writeFiles(folder: string, files: readonly PackFile[], force: boolean): string | undefined {
  let made: string | undefined;
  try {
    made = mkdirSync(folder, { recursive: true });
  } catch (error) {
    return `${folder} cannot be made (${reasonOf(error)}).`;
  }
  const wanted = files.map(({ name, text }) => ({ file: path.join(folder, name), text }));
  const fault = writeNewFiles(wanted, force);
  if (fault !== undefined && made !== undefined) takeAway(path.resolve(folder), path.resolve(made));
  return fault;
}

/** The folders that were made, from the innermost up; one that somebody has put something into meanwhile stays. */
function takeAway(folder: string, highest: string): void {
  try {
    for (let one = folder; one.length >= highest.length; one = path.dirname(one)) rmdirSync(one);
  } catch {
    // What cannot be taken away is empty and does no harm.
  }
}
