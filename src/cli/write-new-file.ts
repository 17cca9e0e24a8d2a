import { writeFileSync } from 'node:fs';

/** Writes a file that is not there yet, or with `force` any; answers with one sentence where it cannot. */
export function writeNewFile(file: string, text: string, force: boolean): string | undefined {
  if (file === '') return 'an empty name is no file.';
  try {
    writeFileSync(file, text, { flag: force ? 'w' : 'wx' });
    return undefined;
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : 'with no reason';
    return code === 'EEXIST'
      ? `${file} is there already; another name, or --force, writes it.`
      : `${file} cannot be written (the system answers ${code}).`;
  }
}
