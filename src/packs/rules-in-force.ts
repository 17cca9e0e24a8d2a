import type { Rule } from './pack.ts';
import { compareVersions, readVersion } from './semantic-version.ts';

/** The rules that a version of a pack holds: from their `since` on, up to but without their `until`. */
export function rulesInForce(rules: readonly Rule[], version: string): readonly Rule[] {
  const at = readVersion(version);
  if (at === undefined) return [];
  return rules.filter((rule) => {
    const since = readVersion(rule.since);
    const until = rule.until === undefined ? undefined : readVersion(rule.until);
    if (since !== undefined && compareVersions(at, since) < 0) return false;
    return until === undefined || compareVersions(at, until) < 0;
  });
}
