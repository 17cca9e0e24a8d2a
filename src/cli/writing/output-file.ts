import {
  closeSync,
  existsSync,
  fsyncSync,
  linkSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import type { Stats } from 'node:fs';
import { isWriteProtected, makeLikeBefore } from './like-before.ts';
import { nameAside } from './name-aside.ts';
import { isSignedPlan } from './signed-plan-there.ts';

/** A file that comes into being whole or not at all. Every method answers with one sentence where it cannot. */
export interface OutputFile {
  readonly write: (text: string) => string | undefined;
  /** Gives the file its name. */
  readonly finish: () => string | undefined;
  /** Leaves no trace. */
  readonly drop: () => void;
}

export type OpenedFile =
  { readonly ok: true; readonly file: OutputFile } | { readonly ok: false; readonly sentence: string };

/**
 * Opens a file under a temporary name in the folder of its own, so that the last step is a rename. A file that is there is
 * replaced only with `force`; a folder, a device or a pipe never.
 */
export function openOutputFile(target: string, force: boolean): OpenedFile {
  if (target === '') return refuse('an empty name is no file.');
  const unfit = whyUnfit(target, force);
  if (unfit !== undefined) return refuse(unfit);
  let full: string;
  let aside: string;
  let before: Stats | undefined;
  let descriptor: number;
  try {
    before = statSync(target, { throwIfNoEntry: false });
    // A link stays one: what it leads to is replaced.
    full = before === undefined ? target : realpathSync(target);
    aside = nameAside(full);
    descriptor = openSync(aside, 'wx', before?.mode ?? 0o666);
  } catch (error) {
    return refuse(`${target} cannot be written (${reasonOf(error)}).`);
  }
  const drop = (): void => {
    attempt(() => {
      closeSync(descriptor);
    });
    attempt(() => {
      rmSync(aside, { force: true });
    });
  };
  const guarded = (act: () => void): string | undefined => {
    const error = attempt(act);
    if (error === undefined) return undefined;
    drop();
    return `${target} was not written (${reasonOf(error)}).`;
  };
  return {
    ok: true,
    file: {
      write: (text) =>
        guarded(() => {
          let bytes = new TextEncoder().encode(text);
          while (bytes.length > 0) bytes = bytes.subarray(writeSync(descriptor, bytes));
        }),
      finish: () =>
        guarded(() => {
          if (before !== undefined) makeLikeBefore(descriptor, before);
          // A disk may tell only now that it is full.
          fsyncSync(descriptor);
          closeSync(descriptor);
          if (force) renameSync(aside, full);
          else giveName(aside, full);
        }),
      drop,
    },
  };
}

/** Why a file cannot be written, asked ahead of the writing; leaves no trace. */
export function whyNotWritable(target: string, force: boolean): string | undefined {
  const opened = openOutputFile(target, force);
  if (!opened.ok) return opened.sentence;
  opened.file.drop();
  return undefined;
}

/** A second name and then the first one taken away: unlike a rename this never replaces a file that came meanwhile. */
function giveName(aside: string, target: string): void {
  try {
    linkSync(aside, target);
  } catch (error) {
    if (codeOf(error) === 'EEXIST' || existsSync(target)) throw error;
    // Some file systems know no second names.
    renameSync(aside, target);
    return;
  }
  rmSync(aside, { force: true });
}

function whyUnfit(target: string, force: boolean): string | undefined {
  let stats;
  try {
    stats = statSync(target, { throwIfNoEntry: false });
  } catch (error) {
    return `${target} cannot be written (${reasonOf(error)}).`;
  }
  if (stats === undefined) return undefined;
  if (stats.isDirectory()) return `${target} is a folder.`;
  if (!stats.isFile()) return `${target} is no ordinary file (it is a pipe, a socket or a device).`;
  if (!force) return `${target} is there already; another name, or --force, writes it.`;
  if (isWriteProtected(target, stats)) return `${target} is write-protected and is left as it is.`;
  if (isSignedPlan(target))
    return `${target} is a plan that bears a signature, and --force replaces none; another name writes it.`;
  return undefined;
}

function attempt(act: () => void): unknown {
  try {
    act();
    return undefined;
  } catch (error) {
    return error ?? new Error('with no reason');
  }
}

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : 'with no reason';
}

/** What the system answered, in words where they are known. */
export function reasonOf(error: unknown): string {
  const code = codeOf(error);
  switch (code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return 'its folder is not there';
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return 'the permissions of its folder do not allow it';
    case 'ENOSPC':
    case 'EDQUOT':
    case 'EFBIG':
      return `the disk is full: ${code}`;
    case 'EEXIST':
      return 'a file of this name has come meanwhile';
    case 'EPIPE':
      return 'who reads it has gone away';
    default:
      return `the system answers ${code}`;
  }
}

function refuse(sentence: string): OpenedFile {
  return { ok: false, sentence };
}
