/** One file of an archive, its path as the archive writes it, with `/`. */
export interface TarFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

export type TarReading =
  | { readonly ok: true; readonly files: readonly TarFile[] }
  | { readonly ok: false; readonly sentence: string };

const block = 512;
const mostEntries = 5000;

/**
 * The regular files of a tar archive (POSIX.1-1988 ustar, with the pax headers of POSIX.1-2001 and the long names of GNU tar: what
 * tar, git archive and npm pack write). Nothing is put on disk. An archive with a link, a device, a path that leads out of
 * it, one path twice or a damaged header is refused as a whole.
 */
export function readTar(bytes: Uint8Array): TarReading {
  const files = new Map<string, TarFile>();
  let longPath: string | undefined;
  let at = 0;
  for (let entries = 0; ; entries += 1) {
    if (at + block > bytes.length) return refuse('it ends in the middle of an entry');
    if (isEmpty(bytes.subarray(at, at + block))) break;
    if (entries >= mostEntries) return refuse(`it holds more than ${String(mostEntries)} entries`);
    const header = readHeader(bytes.subarray(at, at + block));
    if (typeof header === 'string') return refuse(header);
    const start = at + block;
    const data = bytes.subarray(start, start + header.size);
    if (data.length < header.size) return refuse('it ends in the middle of a file');
    at = start + Math.ceil(header.size / block) * block;
    if (header.type === 'x' || header.type === 'L') {
      longPath = header.type === 'L' ? text(data) : (paxPath(text(data)) ?? longPath);
      continue;
    }
    if (header.type === 'g') continue;
    const path = longPath ?? header.path;
    longPath = undefined;
    if (leadsOut(path)) return refuse(`the path \`${path}\` leads out of it`);
    if (header.type === '5') continue;
    if (header.type !== '0') return refuse(`\`${path}\` is a link or a device, not a file`);
    if (files.has(path)) return refuse(`\`${path}\` stands in it twice`);
    files.set(path, { path, bytes: data });
  }
  return { ok: true, files: [...files.values()] };
}

interface Header {
  readonly path: string;
  readonly size: number;
  readonly type: string;
}

/** The header of an entry, or what is wrong with it. */
function readHeader(header: Uint8Array): Header | string {
  const size = octal(header.subarray(124, 136));
  const sum = octal(header.subarray(148, 156));
  if (size === undefined) return 'an entry has no size that can be read';
  // The checksum is taken with its own field as eight blanks.
  let counted = 8 * 0x20;
  header.forEach((byte, index) => {
    if (index < 148 || index >= 156) counted += byte;
  });
  if (sum !== counted) return 'it is no tar archive, or it is damaged';
  const isUstar = text(header.subarray(257, 262)) === 'ustar';
  // GNU tar keeps times where ustar keeps the beginning of the path.
  const isGnu = text(header.subarray(257, 265)) === 'ustar  ';
  const prefix = isUstar && !isGnu ? text(header.subarray(345, 500)) : '';
  const name = text(header.subarray(0, 100));
  const type = String.fromCharCode(header[156] ?? 0);
  return { path: prefix === '' ? name : `${prefix}/${name}`, size, type: type === '\0' ? '0' : type };
}

/** A number in octal digits; not the binary form of GNU tar, which is for sizes that no pack has. */
function octal(field: Uint8Array): number | undefined {
  const digits = text(field).trim();
  return /^[0-7]{1,11}$/u.test(digits) ? Number.parseInt(digits, 8) : undefined;
}

/** Up to the first NUL. */
function text(field: Uint8Array): string {
  const end = field.indexOf(0);
  return new TextDecoder().decode(end === -1 ? field : field.subarray(0, end));
}

/** The record `path` of a pax header: `<length> path=<value>` and a line feed. */
function paxPath(records: string): string | undefined {
  return /^\d+ path=(.*)$/mu.exec(records)?.[1];
}

function leadsOut(path: string): boolean {
  return (
    path === '' || /^(?:[/\\]|[A-Za-z]:)/u.test(path) || path.includes('\\') || path.split('/').includes('..')
  );
}

function isEmpty(bytes: Uint8Array): boolean {
  return bytes.every((byte) => byte === 0);
}

function refuse(sentence: string): TarReading {
  return { ok: false, sentence };
}
