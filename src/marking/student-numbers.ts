import { createHash } from 'node:crypto';

export interface StudentNumber {
  readonly name: string;
  readonly called: string;
}

/**
 * A number for each name, so that marks can be shown without names. The order follows the digest of exercise and name: the same at
 * each run, and not that of the alphabet, from which the names could be read off.
 */
export function studentNumbers(names: readonly string[], scenario: string): readonly StudentNumber[] {
  const width = String(names.length).length;
  return names
    .map((name) => ({ name, digest: createHash('sha256').update(`${scenario}\0${name}`).digest('hex') }))
    .sort((a, b) => (a.digest < b.digest ? -1 : 1))
    .map(({ name }, index) => ({ name, called: `Student ${String(index + 1).padStart(width, '0')}` }));
}
