import { keySynonyms } from './explain-entry.ts';
import { editDistance, nearestWords, normalise } from './nearest-word.ts';
import { allPlanKeys } from './schema-part.ts';

/** Words that stand for a key in most mouths and for something else in some: a person chooses. */
const tooWide: ReadonlySet<string> = new Set(['material', 'place', 'signature', 'signed']);

/** What somebody puts a name to is not brought into force by a spelling. */
const neverMeant: ReadonlySet<string> = new Set(['sign_off', 'deviations']);

/** Letters that a misspelt key must have for its likeness to be no accident, and for two slips in it. */
const leastForOneSlip = 5;
const leastForTwoSlips = 9;

/**
 * The key that a word at this place can only mean: the same but for capitals, blanks, hyphens and underscores, what the trade writes
 * for it, or one slip away (two in a long word) with no other key of a plan as near. Undefined where a person has to choose. A word
 * that is a key elsewhere in a plan stands at the wrong place, and is no misspelling.
 */
export function meantKey(word: string, known: readonly string[]): string | undefined {
  const meant = sameLetters(word, known) ?? synonymOf(word, known) ?? slipOf(word, known);
  return meant === undefined || neverMeant.has(meant) ? undefined : meant;
}

function sameLetters(word: string, known: readonly string[]): string | undefined {
  const [only, another] = known.filter((key) => joined(key) === joined(word));
  return another === undefined ? only : undefined;
}

/** `modelYear`, `Model Year` and `model-year` are `model_year`. */
function joined(word: string): string {
  return normalise(word).replaceAll(' ', '');
}

function synonymOf(word: string, known: readonly string[]): string | undefined {
  const plain = normalise(word).replaceAll(' ', '_');
  if (tooWide.has(plain) || allPlanKeys().has(plain)) return undefined;
  const synonym = keySynonyms.get(plain);
  return synonym !== undefined && known.includes(synonym) ? synonym : undefined;
}

function slipOf(word: string, known: readonly string[]): string | undefined {
  const plain = normalise(word);
  if (plain.length < leastForOneSlip || allPlanKeys().has(plain.replaceAll(' ', '_'))) return undefined;
  const [nearest, another] = nearestWords(word, [...allPlanKeys()]);
  if (nearest === undefined || another !== undefined || !known.includes(nearest)) return undefined;
  const meant = normalise(nearest);
  if (saysMore(plain, meant)) return undefined;
  return editDistance(plain, meant) <= (plain.length < leastForTwoSlips ? 1 : 2) ? nearest : undefined;
}

/** `grade2` is a second grade, `thickness_b` that of another sheet, and `unstructural` the opposite. */
function saysMore(word: string, key: string): boolean {
  const wordCount = (text: string): number => text.split(' ').length;
  const hasPrefix = word.endsWith(key) && word.length - key.length >= 2;
  return /\d/u.test(word) || wordCount(word) !== wordCount(key) || hasPrefix;
}
