import { designationKey } from '../designation-key.ts';

/**
 * The part of a text whose comparison key is `key`, as it was written; the key itself where no run of the text gives it, as when an
 * abbreviation was spelled out. Meant for messages: the text is short, and the answer is not read again.
 */
export function asWritten(text: string, key: string): string {
  const words = [...text.matchAll(/[^\s,;]+/g)];
  for (const [from, first] of words.entries()) {
    for (const last of words.slice(from).toReversed()) {
      const run = text.slice(first.index, last.index + last[0].length);
      if (designationKey(run) === key) return run;
    }
  }
  return key;
}
