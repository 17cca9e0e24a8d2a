import { isAlias, isMap, isScalar, isSeq } from 'yaml';
import type { Pair, ParsedNode, Scalar, YAMLMap, YAMLSeq } from 'yaml';
import { excerpt } from './excerpt.ts';
import type { ReadFault } from './fault.ts';
import { findControlCharacter } from './control-character.ts';
import { limits } from './limits.ts';
import type { ListNode, LocatedNode, MapEntry, MapNode, Range, ScalarNode } from './node.ts';
import { placeOf } from './source-text.ts';
import type { SourceText } from './source-text.ts';
import { markFault } from './yaml-fault.ts';

export interface LocatedTree {
  readonly root: LocatedNode;
  /** What the parser lets through and a plan may not hold; `root` is of no use when there is any. */
  readonly faults: readonly ReadFault[];
}

interface Walk {
  readonly source: SourceText;
  readonly faults: ReadFault[];
}

type ParsedMap = YAMLMap<ParsedNode, ParsedNode | null>;

/**
 * The parser's tree as planish's own, in one walk. It recurses: the depth of the text is limited before.
 * An anchor that nothing repeats is let be; an alias is refused, since a value in force at two places can be neither
 * pointed at nor counted (a few lines of aliases can stand for billions of values).
 */
export function locateNodes(contents: ParsedNode, text: string): LocatedTree {
  const walk: Walk = { source: { path: '', text }, faults: [] };
  return { root: locate(contents, walk), faults: walk.faults };
}

function locate(node: ParsedNode, walk: Walk): LocatedNode {
  if (isScalar(node)) return locateScalar(node, walk);
  if (isMap<ParsedNode, ParsedNode | null>(node)) return locateMap(node, walk);
  if (isSeq<ParsedNode>(node)) return locateList(node, walk);
  const range = rangeOf(node);
  const written = excerpt(walk.source.text.slice(range.start, range.end));
  const sentence = isAlias(node)
    ? `\`${written}\` repeats a value from another place; write the value out here.`
    : `\`${written}\` is neither a value nor a list nor an entry with keys.`;
  return unusable(sentence, range, walk);
}

function locateList(list: YAMLSeq<ParsedNode>, walk: Walk): ListNode {
  const items: LocatedNode[] = [];
  for (const item of list.items) items.push(locate(item, walk));
  return { kind: 'list', items, range: extentOf(list, items[items.length - 1]?.range) };
}

function locateMap(map: ParsedMap, walk: Walk): MapNode {
  const entries = new Map<string, MapEntry>();
  let last: Range | undefined;
  for (const pair of map.items) {
    const entry = locateEntry(pair, walk);
    last = entry.value.range;
    const earlier = entries.get(entry.key);
    if (earlier !== undefined) {
      walk.faults.push(doubleKey(earlier, entry, walk));
      continue;
    }
    entries.set(entry.key, entry);
    if (entries.size > limits.keysPerEntry) {
      const sentence = `More than ${limits.keysPerEntry} keys stand in one entry; a plan needs no more than fifty.`;
      walk.faults.push({ sentence, range: entry.keyRange });
      break;
    }
  }
  return { kind: 'map', entries, range: extentOf(map, last) };
}

function locateEntry(pair: Pair<ParsedNode, ParsedNode | null>, walk: Walk): MapEntry {
  const keyRange = rangeOf(pair.key);
  const key = isScalar(pair.key) && typeof pair.key.value === 'string' ? pair.key.value : '';
  if (keyRange.start === keyRange.end) {
    walk.faults.push(noKey(keyRange, walk.source.text));
  } else if (key === '<<' && walk.source.text.startsWith('<<', keyRange.start)) {
    walk.faults.push({
      sentence: '`<<` merges keys from another place; write the keys out here.',
      range: keyRange,
    });
  } else {
    checkEscapes(key, keyRange, walk);
  }
  return { key, keyRange, value: pair.value === null ? missing(keyRange.end) : locate(pair.value, walk) };
}

/** `[?]` and `- ?` are read as an entry with an empty key; nobody means one. */
function noKey(keyRange: Range, text: string): ReadFault {
  const mark = text.slice(0, keyRange.start).trimEnd().length - 1;
  return text[mark] === '?'
    ? markFault(mark)
    : { sentence: 'A value stands here without a key before its colon.', range: keyRange };
}

/** What `{a, b: 1}` leaves for `a`. */
function missing(at: number): ScalarNode {
  return { kind: 'scalar', value: null, source: '', range: { start: at, end: at } };
}

function locateScalar(scalar: Scalar, walk: Walk): ScalarNode {
  const range = rangeOf(scalar);
  if (scalar.type === 'BLOCK_LITERAL' || scalar.type === 'BLOCK_FOLDED') dropLineEnd(range, walk.source.text);
  const source = walk.source.text.slice(range.start, range.end);
  const value = scalar.value;
  if (typeof value === 'string') {
    checkEscapes(value, range, walk);
  } else if (typeof value === 'number') {
    checkNumber(value, source, range, walk);
  } else if (typeof value !== 'boolean' && value !== null) {
    return unusable(`\`${excerpt(source)}\` is of a kind that a plan has no use for.`, range, walk);
  }
  return { kind: 'scalar', value, source, range };
}

/** Beyond 2^53 a number no longer holds the digits that were written, and a tiny one becomes a zero. */
function checkNumber(value: number, source: string, range: Range, walk: Walk): void {
  const kept = value === 0 ? !/^[^eE]*[1-9]/.test(source) : Math.abs(value) <= Number.MAX_SAFE_INTEGER;
  if (kept) return;
  const sentence = `\`${excerpt(source)}\` cannot be kept as a number; put it in quotes if it is a document or serial number.`;
  walk.faults.push({ sentence, range });
}

/** The text holds no such character itself, but `"\e"` in double quotes spells one. */
function checkEscapes(value: string, range: Range, walk: Walk): void {
  if (walk.source.text.charCodeAt(range.start) !== 0x22) return;
  const control = findControlCharacter(value);
  if (control === undefined) return;
  walk.faults.push({
    sentence: `The character ${control.name} is spelled here; a plan may not hold it.`,
    range,
  });
}

function doubleKey(earlier: MapEntry, later: MapEntry, walk: Walk): ReadFault {
  const first = placeOf(walk.source, earlier.keyRange).line;
  const second = placeOf(walk.source, later.keyRange).line;
  const where = first === second ? `twice on line ${first}` : `on line ${first} and again on line ${second}`;
  return {
    sentence: `The key \`${excerpt(later.key)}\` stands ${where}; one of them has to go.`,
    range: later.keyRange,
  };
}

function unusable(sentence: string, range: Range, walk: Walk): ScalarNode {
  walk.faults.push({ sentence, range });
  return { kind: 'scalar', value: null, source: '', range };
}

function rangeOf(node: { readonly range?: readonly [number, number, number] | null }): {
  start: number;
  end: number;
} {
  const range = node.range;
  return range ? { start: range[0], end: range[1] } : { start: 0, end: 0 };
}

/** The parser lets an indented entry run on over blank lines and comments; here it ends with its last value. */
function extentOf(node: ParsedMap | YAMLSeq<ParsedNode>, last: Range | undefined): Range {
  const range = rangeOf(node);
  if (node.flow !== true && last !== undefined) range.end = last.end;
  return range;
}

function dropLineEnd(range: { start: number; end: number }, text: string): void {
  if (text[range.end - 1] === '\n') range.end -= text[range.end - 2] === '\r' ? 2 : 1;
}
