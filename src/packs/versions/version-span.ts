import type { History } from '../pack.ts';
import { compareVersions, readVersion } from './semantic-version.ts';

/** Whether some version holds both; histories that cannot be read count as open. */
export function overlaps(one: History, other: History): boolean {
  return beginsBeforeEnd(one.since, other.until) && beginsBeforeEnd(other.since, one.until);
}

function beginsBeforeEnd(since: string | undefined, until: string | undefined): boolean {
  const from = since === undefined ? undefined : readVersion(since);
  const to = until === undefined ? undefined : readVersion(until);
  return from === undefined || to === undefined || compareVersions(from, to) < 0;
}
