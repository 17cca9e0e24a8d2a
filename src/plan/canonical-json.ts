/**
 * JSON as RFC 8785 (JSON Canonicalization Scheme) writes it: the keys of objects sorted by UTF-16 code units, no white space,
 * numbers and texts as ECMAScript writes them. Of plain data; a number that JSON does not have is a RangeError, since two
 * that differ would come out alike.
 */
export function canonicalJson(value: unknown): string {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new RangeError('JSON has no such number');
  if (isList(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries: readonly (readonly [string, unknown])[] = Object.entries(value);
  const sorted = entries
    .filter(([, one]) => one !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
    .map(([key, one]) => `${JSON.stringify(key)}:${canonicalJson(one)}`);
  return `{${sorted.join(',')}}`;
}

function isList(value: unknown): value is readonly unknown[] {
  return Array.isArray(value);
}
