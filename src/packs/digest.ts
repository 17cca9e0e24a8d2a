import { createHash } from 'node:crypto';

export interface PackFile {
  /** Name inside the pack's folder, without a path. */
  readonly name: string;
  readonly text: string;
}

/** `sha256:` and the SHA-256 (FIPS 180-4) of a text in UTF-8, in lower-case hexadecimal. */
export function textDigest(text: string): string {
  return `sha256:${createHash('sha256').update(text, 'utf8').digest('hex')}`;
}
