import { createHash } from 'node:crypto';

/**
 * A short, stable name for what makes a finding itself. 16 hexadecimal digits (64 bits of SHA-256): in an archive of a
 * million findings the chance of two alike is below one in ten million.
 */
export function fingerprint(identity: readonly string[]): string {
  return createHash('sha256').update(JSON.stringify(identity), 'utf8').digest('hex').slice(0, 16);
}
