import type { FaultList } from './fault-list.ts';
import type { History } from '../pack.ts';
import { compareVersions, readVersion } from '../versions/semantic-version.ts';

/** `since` and `until` of an item as they are written; what cannot be right in them is told. `what` names the item in a sentence. */
export function readHistory(stated: History, at: string, what: string, faults: FaultList): History {
  const since = stated.since === undefined ? undefined : readVersion(stated.since);
  const until = stated.until === undefined ? undefined : readVersion(stated.until);
  if (stated.since !== undefined && since === undefined) {
    faults.at(`${at}/since`, 'A version is three numbers: 1.0.0.');
  }
  if (stated.until !== undefined && until === undefined) {
    faults.at(`${at}/until`, 'A version is three numbers: 1.0.0.');
  }
  if (since !== undefined && until !== undefined && compareVersions(until, since) <= 0) {
    faults.at(
      `${at}/until`,
      `The ${what} ends with ${stated.until ?? ''}, which does not come after ${stated.since ?? ''}.`,
    );
  }
  return {
    ...(stated.since === undefined ? {} : { since: stated.since }),
    ...(stated.until === undefined ? {} : { until: stated.until }),
  };
}
