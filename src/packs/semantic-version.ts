/** Major, minor, patch. */
export type Version = readonly [number, number, number];

/** `1.2.3` as three numbers; undefined for anything else. Pre-releases are not known: a pack is released or it is not. */
export function readVersion(text: string): Version | undefined {
  const numbers = readNumbers(text);
  return numbers?.length === 3 ? [numbers[0] ?? 0, numbers[1] ?? 0, numbers[2] ?? 0] : undefined;
}

/** Negative, zero or positive, as `a` comes before, with or after `b`. */
export function compareVersions(a: Version, b: Version): number {
  return a[0] - b[0] || a[1] - b[1] || a[2] - b[2];
}

/**
 * Whether a version lies in a range. A range is the beginning of a version: `1` is every 1.x.y, `1.0` every 1.0.y, `1.0.0`
 * that one. Undefined when the range cannot be read.
 */
export function fitsRange(version: Version, range: string): boolean | undefined {
  return readNumbers(range)?.every((number, index) => number === version[index]);
}

function readNumbers(text: string): readonly number[] | undefined {
  const parts = text.split('.');
  if (parts.length > 3 || !parts.every((part) => /^(?:0|[1-9][0-9]{0,5})$/u.test(part))) return undefined;
  return parts.map(Number);
}
