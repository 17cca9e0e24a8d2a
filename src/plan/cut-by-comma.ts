import type { EntryExplanation } from './explain-entry.ts';
import { excerpt } from './excerpt.ts';
import type { MapEntry, MapNode } from './node.ts';

/** Where a text was cut: not at all, at an earlier comma that is told already, or behind the value of the key `of`. */
export type Cut = 'nowhere' | 'before' | { readonly of: string };

/**
 * Whether a key of a map in braces is the rest of a text that holds a comma: in `{ note: no, it stays, cable on }` the note is `no`, and
 * `it stays` and `cable on` are keys without colon and value.
 */
export function cutByComma(map: MapNode, key: string): Cut {
  const entries = [...map.entries.values()];
  const at = entries.findIndex((entry) => entry.key === key);
  const own = entries[at];
  if (own === undefined || !hasNoColon(own)) return 'nowhere';
  const before = entries.slice(0, at).findLastIndex((entry) => !hasNoColon(entry));
  const cut = entries[before];
  if (cut?.value.kind !== 'scalar' || cut.value.value === null) return 'nowhere';
  // A text in quotes does not end at a comma.
  if (/^["']/u.test(cut.value.source)) return 'nowhere';
  return before === at - 1 ? { of: cut.key } : 'before';
}

/** In a map in braces a key may stand alone; one of a block has its colon, so that its empty value begins behind it. */
function hasNoColon({ keyRange, value }: MapEntry): boolean {
  return value.kind === 'scalar' && value.value === null && value.range.start === keyRange.end;
}

export function explainCutText(of: string, key: string): EntryExplanation {
  return {
    fault: 'unknown key',
    sentence: `A comma ended the text of \`${excerpt(of)}\` before \`${excerpt(key)}\`: between braces, put the whole text in quotes.`,
  };
}
