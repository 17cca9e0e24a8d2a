import type { History, Pack } from '../pack.ts';
import { compareVersions, readVersion } from './semantic-version.ts';
import type { Version } from './semantic-version.ts';

/** A version of a pack beside the one before it, of the same major. */
export interface VersionStep {
  readonly from: Version;
  readonly to: Version;
  readonly step: 'patch' | 'minor';
  /** The pack in the earlier version. */
  readonly old: Pack;
}

/** Whether something is held by the later version and not yet by the earlier one. */
export function begins({ since }: History, { from, to }: VersionStep): boolean {
  const at = since === undefined ? undefined : readVersion(since);
  return at !== undefined && compareVersions(at, from) > 0 && compareVersions(at, to) <= 0;
}

/** Whether the earlier version was the last to hold it. */
export function ends({ until }: History, { from, to }: VersionStep): boolean {
  const at = until === undefined ? undefined : readVersion(until);
  return at !== undefined && compareVersions(at, from) > 0 && compareVersions(at, to) <= 0;
}
