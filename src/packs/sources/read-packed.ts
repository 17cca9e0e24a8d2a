import { readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import type { PackFiles } from './read-pack-files.ts';
import { mostBytes, packFilesOf } from './read-pack-files.ts';
import { readTar } from './read-tar.ts';
import type { TarFile } from './read-tar.ts';

/** A pack as it was found, read and not yet judged. */
export interface FoundPack {
  /** Put before the names of its files where they are shown. */
  readonly where: string;
  readonly files: PackFiles;
}

export type FoundPacks =
  | { readonly ok: true; readonly packs: readonly FoundPack[] }
  | { readonly ok: false; readonly sentence: string };

/** What a packed file may unfold to: a pack, and what an npm package holds beside it. */
const mostUnfolded = 2 * mostBytes;

/** Whether a file's name says that packs are packed in it. */
export function isPacked(file: string): boolean {
  return /\.(?:tgz|tar\.gz|tar)$/iu.test(file);
}

/**
 * The packs in a packed file (.tgz as `npm pack` or `tar -cz` writes it, or .tar): every folder of it that holds a pack.yaml.
 * Sizes are limited before and while it is unfolded, so that a small file cannot become a large one.
 */
export function readPacked(file: string): FoundPacks {
  let packed: Uint8Array;
  try {
    if (statSync(file).size > mostUnfolded) return refuse(file, `is larger than ${mebibytes(mostUnfolded)}`);
    packed = readFileSync(file);
  } catch {
    return refuse(file, 'cannot be read');
  }
  let bytes = packed;
  if (packed[0] === 0x1f && packed[1] === 0x8b) {
    // Only now: it costs every start some milliseconds, and few packs are packed.
    // eslint-disable-next-line no-restricted-globals
    const { gunzipSync } = process.getBuiltinModule('node:zlib');
    try {
      bytes = gunzipSync(packed, { maxOutputLength: mostUnfolded });
    } catch (error) {
      const isTooLarge = error instanceof RangeError;
      return refuse(
        file,
        isTooLarge ? `unfolds to more than ${mebibytes(mostUnfolded)}` : 'is damaged: it cannot be unfolded',
      );
    }
  }
  const archive = readTar(bytes);
  if (!archive.ok) return refuse(file, `is refused: ${archive.sentence}`);
  const folders = new Map<string, TarFile[]>();
  for (const one of archive.files) {
    const folder = path.posix.dirname(path.posix.normalize(one.path));
    folders.set(folder, [...(folders.get(folder) ?? []), one]);
  }
  const packs = [...folders]
    .filter(([, files]) => files.some((one) => path.posix.basename(one.path) === 'pack.yaml'))
    .map(([folder, files]): FoundPack => {
      const where = path.join(file, folder);
      const entries = files.map((one) => ({
        name: path.posix.basename(one.path),
        kind: 'file' as const,
        bytes: one.bytes.length,
        read: () => one.bytes,
      }));
      return { where, files: packFilesOf(entries, where) };
    });
  return packs.length === 0
    ? refuse(file, 'holds no rule pack (a pack has a pack.yaml)')
    : { ok: true, packs };
}

function mebibytes(bytes: number): string {
  return `${String(bytes / 1024 / 1024)} MiB`;
}

function refuse(file: string, what: string): FoundPacks {
  return { ok: false, sentence: `${file}: the packed file ${what}.` };
}
