import type { Manifest } from '../../generated/pack-types.ts';
import type { FaultList } from './fault-list.ts';
import type { Gathered } from './gather-topic.ts';
import { placeKey } from '../pack.ts';
import type { PackLayer, Provision, Release } from '../pack.ts';
import type { PackPlace } from '../pack-fault.ts';
import type { PackHead } from './read-manifest.ts';
import { compareVersions, readVersion } from '../versions/semantic-version.ts';

/** What can only be told of a pack of which no rule is missing. `list` is that of its pack.yaml. */
export function checkWhole(
  manifest: Manifest,
  { version, facts, layer }: PackHead,
  releases: readonly Release[],
  { rules, ids, provisions, places }: Gathered,
  list: FaultList,
): void {
  checkReleases(manifest, { version, facts }, releases, list);
  checkPermissions(layer, manifest.pack, provisions, places, list);
  const now = readVersion(version);
  for (const rule of rules) {
    const place = ids.get(rule.id);
    const since = readVersion(rule.since);
    if (now !== undefined && since !== undefined && compareVersions(since, now) > 0) {
      place?.list.at(
        `${place.pointer}/since`,
        `The rule begins with ${rule.since} and the pack is ${version}: it would not judge.`,
      );
    }
    if (rule.replacedBy !== undefined && !ids.has(rule.replacedBy)) {
      place?.list.at(
        `${place.pointer}/replaced_by`,
        `The pack has no rule \`${rule.replacedBy}\`.`,
        place.list.nearest(rule.replacedBy, [...ids.keys()]),
      );
    }
  }
}

/** `released` is proved by releases.yaml; where pack.yaml says it too, the two must agree. */
function checkReleases(
  manifest: Manifest,
  { version, facts }: Pick<PackHead, 'version' | 'facts'>,
  releases: readonly Release[],
  list: FaultList,
): void {
  const now = readVersion(version);
  const same = releases.find((release) => release.version === version);
  if (manifest.released === true && same === undefined) {
    list.at(
      '/released',
      `No release ${version} with its digest stands in releases.yaml: this version is not released.`,
    );
  }
  if (manifest.released === false && same !== undefined) {
    list.at('/released', `releases.yaml lists ${version} as released.`);
  }
  if (same !== undefined && same.facts !== facts) {
    list.at(
      '/facts',
      `releases.yaml says that ${version} was written for fact schema ${String(same.facts)}.`,
    );
  }
  const last = releases.at(-1);
  const newest = last === undefined ? undefined : readVersion(last.version);
  if (now !== undefined && newest !== undefined && last !== undefined && compareVersions(now, newest) < 0) {
    list.at('/version', `releases.yaml goes to ${last.version}, which comes after ${version}.`);
  }
}

/** Only the maker permits: a statement of another layer that permits would loosen the layers below. */
function checkPermissions(
  layer: PackLayer,
  name: string,
  provisions: readonly Provision[],
  places: Readonly<Record<string, PackPlace>>,
  list: FaultList,
): void {
  if (layer === 'vehicle') return;
  provisions.forEach(({ may, shall }, index) => {
    if (may.length + shall.length === 0) return;
    const place = places[placeKey('provision', index)];
    const sentence = `The pack ${name} is of the ${layer} layer and may forbid, not permit: what the maker’s document permits belongs into a vehicle pack.`;
    if (place === undefined) list.at('', sentence);
    else list.faults.push({ ...place, sentence, nearest: [] });
  });
}
