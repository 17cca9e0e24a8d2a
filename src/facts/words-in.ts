/** Nearly every text of a plan is ASCII; the classes of Unicode take a millisecond to compile at each start. */
const beyondAscii = /[^\0-\x7f]/;

/** The words of a text, letters and digits alone, in small letters: "A-post, upper" → a, post, upper. */
export function wordsIn(text: string): readonly string[] {
  const small = text.normalize('NFKC').toLowerCase();
  return (beyondAscii.test(small) ? small.match(/[\p{L}\p{M}\p{N}]+/gu) : small.match(/[a-z0-9]+/g)) ?? [];
}
