import { readFileSync, statSync } from 'node:fs';
import type { Stats } from 'node:fs';
import type { ReadFault } from './fault.ts';
import { limits } from './limits.ts';

export type FileReading =
  { readonly ok: true; readonly bytes: Uint8Array } | { readonly ok: false; readonly fault: ReadFault };

/**
 * The bytes of a plan's file. It is looked at before it is opened: a pipe would wait for ever for someone to write,
 * and a file of gigabytes would be read before its size is known.
 */
export function readPlanFile(path: string): FileReading {
  try {
    const stats = statSync(path);
    const unfit = whyUnfit(stats);
    if (unfit !== undefined) return refuse(unfit);
    return { ok: true, bytes: readFileSync(path) };
  } catch (error) {
    return refuse(whyUnread(error));
  }
}

function refuse(sentence: string): FileReading {
  return { ok: false, fault: { sentence } };
}

function whyUnfit(stats: Stats): string | undefined {
  if (stats.isDirectory()) return 'This is a folder, not a file.';
  if (!stats.isFile()) return 'This is not an ordinary file (it is a pipe, a socket or a device).';
  if (stats.size <= limits.bytes) return undefined;
  const megabytes = (stats.size / 1024 / 1024).toFixed(1);
  return `The file holds ${megabytes} MiB; a plan never takes more than ${limits.bytes / 1024 / 1024} MiB.`;
}

/** Why the system does not give a file, in one sentence. */
export function whyUnread(error: unknown): string {
  const code = codeOf(error);
  switch (code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return 'There is no such file.';
    case 'EACCES':
    case 'EPERM':
      return 'The file cannot be read: its permissions do not allow it.';
    case 'EISDIR':
      return 'This is a folder, not a file.';
    case 'ELOOP':
      return 'The file is a link that leads back to itself.';
    case 'ENAMETOOLONG':
      return 'The file name is longer than the system allows.';
    default:
      return `The file cannot be read (the system answers ${code}).`;
  }
}

function codeOf(error: unknown): string {
  if (error instanceof Error && 'code' in error && typeof error.code === 'string') return error.code;
  return 'with no reason';
}
