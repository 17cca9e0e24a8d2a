import type { History, Rule } from './pack.ts';
import { compareVersions, readVersion } from './semantic-version.ts';

/** The rules that a version of a pack holds: from their `since` on, up to but without their `until`. */
export function rulesInForce(rules: readonly Rule[], version: string): readonly Rule[] {
  return inForce(rules, version);
}

/** What of a list a version holds. Of a version that cannot be read, nothing is known to be in force. */
export function inForce<Item extends History>(items: readonly Item[], version: string): readonly Item[] {
  const at = readVersion(version);
  if (at === undefined) return [];
  return items.filter((item) => {
    const since = item.since === undefined ? undefined : readVersion(item.since);
    const until = item.until === undefined ? undefined : readVersion(item.until);
    if (since !== undefined && compareVersions(at, since) < 0) return false;
    return until === undefined || compareVersions(at, until) < 0;
  });
}
