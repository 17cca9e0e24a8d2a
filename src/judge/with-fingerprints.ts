import type { DraftFinding } from './draft-finding.ts';
import { fingerprint } from './fingerprint.ts';
import type { Finding } from './finding.ts';

/** Ordered drafts with their fingerprints; what has the same identity is told apart by its number in the order. */
export function withFingerprints(drafts: readonly DraftFinding[]): readonly Finding[] {
  const counts = new Map<string, number>();
  return drafts.map(({ identity, ...finding }) => {
    const key = JSON.stringify(identity);
    const count = (counts.get(key) ?? 0) + 1;
    counts.set(key, count);
    return { fingerprint: fingerprint([...identity, String(count)]), ...finding };
  });
}
