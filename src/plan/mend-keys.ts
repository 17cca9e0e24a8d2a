import { fitsKey } from './fits-key.ts';
import { meantKey } from './meant-key.ts';
import type { LocatedNode, MapNode, Range } from './node.ts';
import { plainValue } from './plain-value.ts';
import { readYaml } from './read-yaml.ts';
import { schemaPartAt } from './schema-part.ts';

export interface MendedText {
  readonly text: string;
  /** How many keys were mended. */
  readonly keys: number;
}

interface Rename {
  readonly range: Range;
  readonly to: string;
}

/** A block under a mended key is looked into in the next round; a plan nests about ten deep. */
const mostRounds = 20;

/**
 * The text of a plan with its misspelt keys mended, as far as each can only mean one key: see `meantKey`. Nothing but letters of keys is
 * changed: values, comments, order and blanks stay as they are. A key is left alone where the meant one stands beside it, where two
 * would become one, or where what it holds is nothing that the meant key takes. Undefined when the text cannot be read.
 */
export function mendKeys(text: string): MendedText | undefined {
  let mended: MendedText = { text, keys: 0 };
  for (let round = 0; round < mostRounds; round += 1) {
    const yaml = readYaml(mended.text);
    if (!yaml.ok) return round === 0 ? undefined : { text, keys: 0 };
    const renames = renamesIn(yaml.root);
    if (renames.length === 0) return mended;
    mended = { text: renamed(mended.text, renames), keys: mended.keys + renames.length };
  }
  return mended;
}

function renamesIn(root: LocatedNode): readonly Rename[] {
  const plain = plainValue(root);
  const renames: Rename[] = [];
  const visit = (node: LocatedNode, steps: readonly string[]): void => {
    if (node.kind === 'list')
      node.items.forEach((item, index) => {
        visit(item, [...steps, String(index)]);
      });
    if (node.kind !== 'map') return;
    renames.push(...renamesOf(node, plain, steps));
    for (const { key, value } of node.entries.values()) visit(value, [...steps, key]);
  };
  visit(root, []);
  return renames;
}

function renamesOf(map: MapNode, plain: unknown, steps: readonly string[]): readonly Rename[] {
  const part = schemaPartAt(plain, steps);
  if (part?.properties === undefined || part.additionalProperties !== false) return [];
  const known = Object.keys(part.properties);
  const meant = [...map.entries.values()].flatMap((entry) => {
    if (known.includes(entry.key)) return [];
    const to = meantKey(entry.key, known);
    return to === undefined ? [] : [{ entry, to }];
  });
  return meant
    .filter(
      ({ entry, to }) =>
        !map.entries.has(to) &&
        meant.filter((one) => one.to === to).length === 1 &&
        fitsKey(plainValue(entry.value), plain, steps, to),
    )
    .map(({ entry, to }) => ({ range: entry.keyRange, to }));
}

function renamed(text: string, renames: readonly Rename[]): string {
  // From the back, so that the places of what is still to be mended stay right.
  return [...renames]
    .sort((a, b) => b.range.start - a.range.start)
    .reduce(
      (before, { range, to }) => `${before.slice(0, range.start)}${to}${before.slice(range.end)}`,
      text,
    );
}
