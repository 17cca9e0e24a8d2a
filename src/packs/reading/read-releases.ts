import { validatePack } from '../../generated/validate-pack.js';
import { readDate } from '../../quantity/iso-date.ts';
import { canonicalForm } from '../versions/canonical-form.ts';
import type { StatedPack } from '../versions/canonical-form.ts';
import { textDigest } from '../digest.ts';
import type { Release } from '../pack.ts';
import type { FileRead } from './read-pack-file.ts';
import { compareVersions, readVersion } from '../versions/semantic-version.ts';
import { tellSchemaErrors } from './tell-schema-errors.ts';

/** The name of the file that lists what was released of a pack. */
export const releasesName = 'releases.yaml';

/** The releases of a pack as its `releases.yaml` lists them; what cannot be right is told in the file's list. */
export function readReleases(
  { value, valueAt, list }: FileRead,
  packName: string | undefined,
): readonly Release[] {
  if (value === undefined) return [];
  if (!validatePack(value)) {
    tellSchemaErrors(validatePack.errors ?? [], valueAt, list);
    return [];
  }
  if (!('releases' in value)) {
    list.at('', 'This file lists the `releases` of the pack and nothing else.');
    return [];
  }
  if (packName !== undefined && value.pack !== packName) {
    list.at('/pack', `This file belongs to pack \`${value.pack}\`, not to \`${packName}\`.`);
  }
  let before: Release | undefined;
  let dayBefore: number | undefined;
  value.releases.forEach((release, index) => {
    const at = `/releases/${String(index)}`;
    const version = readVersion(release.version);
    const last = before === undefined ? undefined : readVersion(before.version);
    if (version === undefined) list.at(`${at}/version`, 'A version is three numbers: 1.0.0.');
    else if (last !== undefined && compareVersions(version, last) <= 0) {
      list.at(
        `${at}/version`,
        `Releases stand in order: ${release.version} does not come after ${before?.version ?? ''}.`,
      );
    }
    const date = readDate(release.date);
    if (!date.ok) list.at(`${at}/date`, date.reason);
    else if (dayBefore !== undefined && date.day < dayBefore) {
      list.at(`${at}/date`, 'This day lies before that of the release above it.');
    }
    if (!/^sha256:[0-9a-f]{64}$/u.test(release.digest)) {
      list.at(`${at}/digest`, 'A digest is `sha256:` and 64 digits 0-9 and a-f.');
    }
    before = release;
    if (date.ok) dayBefore = date.day;
  });
  return value.releases;
}

/** Tells each release that today's files no longer give: a released version never changes. */
export function checkDigests(releases: readonly Release[], stated: StatedPack, { list }: FileRead): void {
  releases.forEach((release, index) => {
    const digest = textDigest(canonicalForm(stated, release.version, release.facts));
    if (digest === release.digest) return;
    list.at(
      `/releases/${String(index)}/digest`,
      `The files give ${digest} for ${release.version}. A released version never changes: what is new begins with the next version, and what ends keeps its place with \`until\`.`,
    );
  });
}
