import Range from 'semver/classes/range.js';

/** Major, minor, patch. */
export type Version = readonly [number, number, number];

/** `1.2.3` as three numbers; undefined for anything else. Pre-releases are not known: a pack is released or it is not. */
export function readVersion(text: string): Version | undefined {
  const parts = text.split('.');
  if (parts.length !== 3 || !parts.every((part) => /^(?:0|[1-9][0-9]{0,5})$/u.test(part))) return undefined;
  const [major = 0, minor = 0, patch = 0] = parts.map(Number);
  return [major, minor, patch];
}

/** Negative, zero or positive, as `a` comes before, with or after `b`. */
export function compareVersions(a: Version, b: Version): number {
  return a[0] - b[0] || a[1] - b[1] || a[2] - b[2];
}

/** Longest range that is read; the longest useful one is a handful of versions joined by ||. */
const mostCharacters = 200;

/**
 * Whether a version lies in a range as package semver reads it: `1` and `1.x` are every 1.x.y, `1.0.0` that one, and so on with
 * `^1.1`, `~1.1.0`, `>=1.1 <3`, `1.0.0 - 1.1.0` and `||`. Undefined when the range cannot be read, or is empty: one that
 * was forgotten would be every version.
 */
export function fitsRange(version: Version, range: string): boolean | undefined {
  if (range.trim() === '' || range.length > mostCharacters) return undefined;
  try {
    return new Range(range).test(version.join('.'));
  } catch {
    return undefined;
  }
}
