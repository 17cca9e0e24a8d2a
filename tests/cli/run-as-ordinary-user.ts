import { spawnSync } from 'node:child_process';
import { chmodSync, chownSync, mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { RunResult } from './run-planish.ts';

const bin = path.resolve('bin/planish.js');
/** Nobody, by the number that Linux gives it. */
const nobody = 65_534;
const isRoot = process.getuid?.() === 0;
const drop = [`--reuid=${String(nobody)}`, `--regid=${String(nobody)}`, '--clear-groups'];

const start = (args: readonly string[], folder: string): ReturnType<typeof spawnSync> => {
  const words = [process.execPath, bin, ...args];
  const [command = '', ...rest] = isRoot ? ['setpriv', ...drop, ...words] : words;
  return spawnSync(command, rest, {
    cwd: folder,
    env: { PATH: process.env['PATH'] ?? '', PLANISH_CACHE: 'off' },
    encoding: 'utf8',
  });
};

/** Whether a user can be had whom the rights of files bind, as they do not bind root, and who can read this checkout. */
export const hasOrdinaryUser = start(['--version'], '/').status === 0;

/** A folder that belongs to that user. */
export function folderOfUser(): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'planish-rights-'));
  give(folder);
  chmodSync(folder, 0o755);
  return folder;
}

/** Gives a file or a folder with all in it to that user. */
export function give(file: string): void {
  if (!isRoot) return;
  chownSync(file, nobody, nobody);
  let names: readonly string[] = [];
  try {
    names = readdirSync(file);
  } catch {
    // A file.
  }
  for (const name of names) give(path.join(file, name));
}

/** Runs the built planish as that user. */
export function runAsUser(args: readonly string[], folder: string): RunResult {
  const { status, stdout, stderr } = start(args, folder);
  return { status, stdout: String(stdout), stderr: String(stderr) };
}
