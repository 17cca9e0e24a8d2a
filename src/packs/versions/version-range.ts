import { compareVersions } from './semantic-version.ts';
import type { Version } from './semantic-version.ts';

// Written here and held against package semver in the tests: to load the package costs each start 2 ms, and packs have no
// pre-releases, which are most of it.

/** From a version, itself included, up to but without another; open where left out. */
interface Span {
  readonly from?: Version;
  readonly before?: Version;
}

/** As far as it is written: `1.x` is `[1]`, `*` is `[]`. */
type Partial = readonly number[];

/** Longest range that is read; the longest useful one is a handful of versions joined by ||. */
const mostCharacters = 200;

/**
 * Whether a version lies in a range as npm writes ranges: `1` and `1.x` are every 1.x.y, `1.0.0` that one, and so on with `^1.1`,
 * `~1.1.0`, `>=1.1 <3`, `1.0.0 - 1.1.0` and `||`. Undefined when the range cannot be read, or one side of it is empty: what
 * was forgotten would be every version.
 */
export function fitsRange(version: Version, range: string): boolean | undefined {
  if (range.length > mostCharacters) return undefined;
  const alternatives = range.split('||').map(readAlternative);
  let fits = false;
  for (const spans of alternatives) {
    if (spans === undefined) return undefined;
    fits ||= spans.every((span) => isIn(version, span));
  }
  return fits;
}

function isIn(version: Version, { from, before }: Span): boolean {
  return (
    (from === undefined || compareVersions(version, from) >= 0) &&
    (before === undefined || compareVersions(version, before) < 0)
  );
}

/** All of them must hold; undefined when one cannot be read. */
function readAlternative(text: string): readonly Span[] | undefined {
  const hyphen = /^\s*(\S+)\s+-\s+(\S+)\s*$/u.exec(text);
  if (hyphen !== null) {
    const [from, to] = [readPartial(hyphen[1] ?? ''), readPartial(hyphen[2] ?? '')];
    return from === undefined || to === undefined ? undefined : [{ from: floor(from), ...upTo(to) }];
  }
  const words = text
    .replaceAll(/([<>=~^]+)\s+/gu, '$1')
    .split(/\s+/u)
    .filter((word) => word !== '');
  if (words.length === 0) return undefined;
  const spans = words.map(readComparator);
  return spans.some((span) => span === undefined) ? undefined : spans.filter((span) => span !== undefined);
}

function readComparator(word: string): Span | undefined {
  const [, sign, rest] = /^(>=|<=|>|<|=|~>?|\^)?(.*)$/u.exec(word) ?? [];
  const partial = readPartial(rest ?? '');
  if (partial === undefined) return undefined;
  const from = floor(partial);
  switch (sign) {
    case '>=':
      return { from };
    case '<':
      return { before: from };
    case '>':
      return { from: upTo(partial).before ?? beyondAll };
    case '<=':
      return upTo(partial);
    case '~':
    case '~>':
      return { from, ...upTo(partial.slice(0, 2)) };
    case '^':
      return { from, ...upTo(partial.slice(0, caretLength(partial))) };
    default:
      return { from, ...upTo(partial) };
  }
}

/** Nothing comes after every version. */
const beyondAll: Version = [Infinity, 0, 0];

/** A caret holds the first number that is not zero, and all before it. */
function caretLength(partial: Partial): number {
  const first = partial.findIndex((number) => number > 0);
  return first === -1 ? partial.length : first + 1;
}

function floor([major = 0, minor = 0, patch = 0]: Partial): Version {
  return [major, minor, patch];
}

/** Everything that begins as written. */
function upTo([major, minor, patch]: Partial): Span {
  if (major === undefined) return {};
  if (minor === undefined) return { before: [major + 1, 0, 0] };
  return { before: patch === undefined ? [major, minor + 1, 0] : [major, minor, patch + 1] };
}

function readPartial(text: string): Partial | undefined {
  const parts = text.replace(/^[v=]+/u, '').split('.');
  const isNumber = (part: string): boolean => /^(?:0|[1-9][0-9]{0,5})$/u.test(part);
  const isOpen = (part: string): boolean => /^[xX*]$/u.test(part);
  if (parts.length > 3 || !parts.every((part) => isNumber(part) || isOpen(part))) return undefined;
  const end = parts.findIndex(isOpen);
  return parts.slice(0, end === -1 ? undefined : end).map(Number);
}
