import { lstatSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { decodeText } from '../plan/decode-text.ts';
import type { PackFile } from './digest.ts';
import { FaultList } from './fault-list.ts';
import type { PackFault } from './pack-fault.ts';

export interface PackFiles {
  /** Sorted by name. */
  readonly files: readonly PackFile[];
  readonly faults: readonly PackFault[];
  /** Whether the folder as a whole was refused, so that what it lacks cannot be told. */
  readonly isRefused: boolean;
}

/** A pack of 400 rules has half a megabyte; the rest is room. */
const mostBytes = 8 * 1024 * 1024;
const mostFiles = 500;

/**
 * The `.yaml` files directly in a pack's folder, but for `releases.yaml`. Links and sub-folders are passed over. Another spelling
 * of the ending is told: passed over in silence, the file's rules would be missed by nobody.
 */
export function readPackFiles(folder: string): PackFiles {
  let names: readonly string[];
  try {
    names = readdirSync(folder)
      .filter((name) => /\.ya?ml$/iu.test(name) && name !== 'releases.yaml')
      .sort();
  } catch {
    return refuse(folder, 'There is no such folder, or it cannot be read.');
  }
  if (names.length > mostFiles) {
    return refuse(folder, `The folder holds more than ${String(mostFiles)} files.`);
  }
  const files: PackFile[] = [];
  const faults: PackFault[] = [];
  let bytes = 0;
  for (const name of names) {
    const file = path.join(folder, name);
    try {
      const stats = lstatSync(file);
      if (!stats.isFile()) continue;
      bytes += stats.size;
      if (bytes > mostBytes) {
        return refuse(file, `With this file the pack is larger than ${String(mostBytes / 1024 / 1024)} MiB.`);
      }
      if (!name.endsWith('.yaml')) {
        faults.push(faultIn(file, 'Files of a pack end in .yaml; this one would not be read.'));
        continue;
      }
      const decoded = decodeText(readFileSync(file));
      if (decoded.ok) files.push({ name, text: decoded.text });
      else faults.push(...undecoded(file, decoded));
    } catch {
      faults.push(faultIn(file, 'The file cannot be read.'));
    }
  }
  return { files, faults, isRefused: false };
}

function undecoded(
  file: string,
  { text, fault }: Extract<ReturnType<typeof decodeText>, { readonly ok: false }>,
): readonly PackFault[] {
  const list = new FaultList({ path: file, text }, undefined);
  list.atRange(fault.range, fault.sentence);
  return list.faults;
}

function refuse(file: string, sentence: string): PackFiles {
  return { files: [], faults: [faultIn(file, sentence)], isRefused: true };
}

function faultIn(file: string, sentence: string): PackFault {
  return { file, line: 1, column: 1, sentence, nearest: [] };
}
