import { createHash } from 'node:crypto';

export interface PackFile {
  /** Name inside the pack's folder, without a path. */
  readonly name: string;
  readonly text: string;
}

/**
 * Digest of a pack: `sha256:` and the SHA-256 (FIPS 180-4) in lower-case hexadecimal of its canonical form.
 *
 * The canonical form is made of the pack's files (`pack.yaml` and every topic file, not `releases.yaml`), sorted by name,
 * comparing UTF-16 code units. For each file, one after the other with nothing between: the name in UTF-8, one LF, the
 * length of the text in bytes as a decimal number, one LF, the text. The text is UTF-8 without a byte order mark, and
 * every CR LF in it is an LF; nothing else is changed, so a comment counts. The length keeps two packs apart whose
 * files only meet at another place.
 */
export function packDigest(files: readonly PackFile[]): string {
  const hash = createHash('sha256');
  const sorted = [...files].sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  for (const file of sorted) {
    const text = Buffer.from(canonicalText(file.text), 'utf8');
    hash.update(`${file.name}\n${text.length}\n`, 'utf8').update(text);
  }
  return `sha256:${hash.digest('hex')}`;
}

function canonicalText(text: string): string {
  const unmarked = text.startsWith('\uFEFF') ? text.slice(1) : text;
  return unmarked.replaceAll('\r\n', '\n');
}
