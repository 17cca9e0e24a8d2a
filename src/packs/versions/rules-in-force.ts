import type { History, Rule } from '../pack.ts';
import { compareVersions, readVersion } from './semantic-version.ts';

/** The rules that a version of a pack holds: from their `since` on, up to but without their `until`. */
export function rulesInForce(rules: readonly Rule[], version: string): readonly Rule[] {
  return inForce(rules, version);
}

/** What of a list a version holds. Of a version that cannot be read, nothing is known to be in force. */
export function inForce<Item extends History>(items: readonly Item[], version: string): readonly Item[] {
  const at = readVersion(version);
  if (at === undefined) return [];
  // Hundreds of items name the same few versions.
  const places = new Map<string, number>();
  const placeOf = (text: string): number => {
    let place = places.get(text);
    if (place === undefined) {
      const read = readVersion(text);
      place = read === undefined ? Number.NaN : compareVersions(at, read);
      places.set(text, place);
    }
    return place;
  };
  return items.filter(({ since, until }) => {
    // What cannot be read leaves its end open, so that nothing is lost.
    if (since !== undefined && placeOf(since) < 0) return false;
    return until === undefined || !(placeOf(until) >= 0);
  });
}
