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
