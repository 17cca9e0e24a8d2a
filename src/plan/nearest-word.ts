/** Longer than any word of a plan; keeps the work small whatever is in the file. */
const longest = 60;

/** Share of the letters that must agree. Below this a suggestion misleads more than it helps. */
const leastSimilarity = 0.6;

/**
 * The words of a vocabulary that come nearest to what was written, all that tie, in the vocabulary's own order. A word that
 * the trade uses for the same thing (`splice` for `section`) is answered before any likeness of letters.
 * Capitals, underscores and hyphens do not count as differences.
 */
export function nearestWords(
  given: string,
  known: readonly string[],
  synonyms?: ReadonlyMap<string, string>,
): readonly string[] {
  if (given.length > longest) return [];
  const plain = normalise(given);
  const synonym = synonyms?.get(given) ?? synonyms?.get(plain);
  if (synonym !== undefined) return [synonym];
  let nearest: string[] = [];
  let least = Infinity;
  for (const word of known) {
    if (word.length > longest) continue;
    const distance = editDistance(plain, normalise(word));
    const similarity = 1 - distance / Math.max(plain.length, word.length, 1);
    if (similarity < leastSimilarity || distance > least) continue;
    if (distance < least) nearest = [];
    least = distance;
    nearest.push(word);
  }
  return nearest;
}

/** As words are compared: capitals, underscores and hyphens make no difference. */
export function normalise(word: string): string {
  return word.toLowerCase().replace(/[_-]/g, ' ').trim();
}

/** Insertions, deletions, substitutions, and two neighbouring letters swapped counted once (Damerau 1964). */
export function editDistance(a: string, b: string): number {
  let beforeLast: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min(at(last, j) + 1, at(row, j - 1) + 1, at(last, j - 1) + same);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) cost = Math.min(cost, at(beforeLast, j - 2) + 1);
      row.push(cost);
    }
    beforeLast = last;
    last = row;
  }
  return at(last, b.length);
}

function at(row: readonly number[], column: number): number {
  return row[column] ?? Infinity;
}
