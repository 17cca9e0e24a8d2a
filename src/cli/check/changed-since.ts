import { spawnSync } from 'node:child_process';
import { existsSync, realpathSync } from 'node:fs';
import path from 'node:path';

export type Changes =
  | {
      readonly ok: true;
      readonly isChanged: (full: string) => boolean;
      /** Whether anything below a folder differs; a folder outside of the repository never does. */
      readonly isChangedBelow: (folder: string) => boolean;
      /** Whether a file of this name differs anywhere. */
      readonly isNameChanged: (name: string) => boolean;
    }
  | { readonly ok: false; readonly sentence: string };

/**
 * Which files differ from where the branch left `reference`, new ones that git does not know yet included. What lies outside of the
 * repository of the working folder counts as changed: of it nothing is known.
 */
export function changesSince(reference: string, workingFolder: string): Changes {
  if (reference === '' || reference.startsWith('-')) return refuse(reference, 'it is no name that git takes');
  const top = git(workingFolder, ['rev-parse', '--show-toplevel']);
  if (!top.ok) return refuse(reference, top.reason);
  const root = realpathSync(top.text.replace(/\r?\n$/u, ''));
  const base = git(workingFolder, ['merge-base', reference, 'HEAD']);
  if (!base.ok) return refuse(reference, base.reason);
  const differing = git(root, [
    ...['diff', '--name-only', '-z', '--no-renames', '--no-ext-diff', '--no-textconv'],
    ...[base.text.trim(), '--'],
  ]);
  if (!differing.ok) return refuse(reference, differing.reason);
  const unknown = git(root, ['ls-files', '--others', '-z', '--', '.', ':(exclude,glob)**/node_modules/**']);
  if (!unknown.ok) return refuse(reference, unknown.reason);
  const changed = new Set(
    `${differing.text}${unknown.text}`
      .split('\0')
      .filter((name) => name !== '')
      .map((name) => realOf(path.join(root, name))),
  );
  return {
    ok: true,
    isChanged: (full) => {
      const real = realOf(full);
      // A name that leads nowhere is for the reader of the file to tell.
      return changed.has(real) || path.relative(root, real).startsWith('..') || !existsSync(full);
    },
    isChangedBelow: (folder) => {
      const start = `${realOf(path.resolve(workingFolder, folder))}${path.sep}`;
      return [...changed].some((file) => file.startsWith(start));
    },
    isNameChanged: (name) => [...changed].some((file) => path.basename(file) === name),
  };
}

type GitAnswer =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly reason: string };

function git(folder: string, args: readonly string[]): GitAnswer {
  const { status, stdout, stderr, error } = spawnSync('git', ['-C', folder, ...args], {
    encoding: 'utf8',
    maxBuffer: 256 * 1024 * 1024,
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, LC_ALL: 'C', GIT_OPTIONAL_LOCKS: '0' },
  });
  if (error !== undefined) return { ok: false, reason: 'git is not there or cannot be run' };
  if (status === 0) return { ok: true, text: stdout };
  const [said = ''] = stderr.split('\n');
  return {
    ok: false,
    reason:
      said === '' ? 'the two have no commit in common; a shallow clone may lack it' : `git says: ${said}`,
  };
}

function realOf(file: string): string {
  try {
    return realpathSync(file);
  } catch {
    return file;
  }
}

function refuse(reference: string, reason: string): Changes {
  return { ok: false, sentence: `--changed-since ${reference}: ${reason}.` };
}
