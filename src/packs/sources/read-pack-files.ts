import { lstatSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { decodeText } from '../../plan/decode-text.ts';
import { whyUnread } from '../../plan/read-file.ts';
import type { PackFile } from '../digest.ts';
import { FaultList } from '../reading/fault-list.ts';
import type { PackFault } from '../pack-fault.ts';

export interface PackFiles {
  /** Sorted by name. */
  readonly files: readonly PackFile[];
  readonly faults: readonly PackFault[];
  /** Whether the folder as a whole was refused, so that what it lacks cannot be told. */
  readonly isRefused: boolean;
}

/** A pack of 400 rules has half a megabyte; the rest is room. Bytes and files of one pack. */
export const mostBytes = 8 * 1024 * 1024;
export const mostFiles = 500;

/** One entry of a pack's folder, before anything of it is read. `read` may throw what the file system throws. */
export interface FolderEntry {
  readonly name: string;
  readonly kind: 'file' | 'link' | 'other';
  readonly bytes: number;
  readonly read: () => Uint8Array;
}

/** The `.yaml` files directly in a pack's folder; see `packFilesOf`. Faults name the folder as `shown`. */
export function readPackFiles(folder: string, shown = folder): PackFiles {
  try {
    const entries = readdirSync(folder)
      .filter(isYaml)
      .map((name) => entryIn(folder, name));
    return packFilesOf(entries, shown);
  } catch {
    return refuse(shown, 'There is no such folder, or it cannot be read.');
  }
}

function entryIn(folder: string, name: string): FolderEntry {
  const file = path.join(folder, name);
  const stats = lstatSync(file);
  const kind = stats.isSymbolicLink() ? 'link' : stats.isFile() ? 'file' : 'other';
  return { name, kind, bytes: stats.size, read: () => readFileSync(file) };
}

/**
 * The files of a pack among the entries of its folder, on disk or packed: those that end in `.yaml`. Sub-folders are passed over.
 * Links and another spelling of the ending are told: passed over in silence, the file's rules would be missed by nobody.
 * Sizes are asked before anything is read.
 */
export function packFilesOf(entries: readonly FolderEntry[], where: string): PackFiles {
  const named = entries.filter(({ name }) => isYaml(name)).toSorted((a, b) => (a.name < b.name ? -1 : 1));
  if (named.length > mostFiles)
    return refuse(where, `The folder holds more than ${String(mostFiles)} files.`);
  const files: PackFile[] = [];
  const faults: PackFault[] = [];
  let sum = 0;
  for (const { name, kind, bytes, read } of named) {
    const file = path.join(where, name);
    if (kind === 'other') continue;
    if (kind === 'link') {
      faults.push(
        faultIn(
          file,
          'This is a link. The files of a pack lie in its folder, so that its digest speaks for them.',
        ),
      );
      continue;
    }
    sum += bytes;
    if (sum > mostBytes) {
      return refuse(file, `With this file the pack is larger than ${String(mostBytes / 1024 / 1024)} MiB.`);
    }
    if (!name.endsWith('.yaml')) {
      faults.push(faultIn(file, 'Files of a pack end in .yaml; this one would not be read.'));
      continue;
    }
    try {
      const decoded = decodeText(read());
      if (decoded.ok) files.push({ name, text: decoded.text });
      else faults.push(...undecoded(file, decoded));
    } catch (error) {
      faults.push(faultIn(file, whyUnread(error)));
    }
  }
  return { files, faults, isRefused: false };
}

function isYaml(name: string): boolean {
  return /\.ya?ml$/iu.test(name);
}

function undecoded(
  file: string,
  { text, fault }: Extract<ReturnType<typeof decodeText>, { readonly ok: false }>,
): readonly PackFault[] {
  const list = new FaultList({ path: file, text }, undefined);
  list.atRange(fault.range, fault.sentence);
  return list.faults;
}

/** Nothing of the pack is read. */
function refuse(file: string, sentence: string): PackFiles {
  return { files: [], faults: [faultIn(file, sentence)], isRefused: true };
}

function faultIn(file: string, sentence: string): PackFault {
  return { file, line: 1, column: 1, sentence, nearest: [] };
}
