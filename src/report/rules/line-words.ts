import { asSentence, factTitle } from '../../judge/fact-title.ts';
import type { FactDictionary } from '../../packs/fact-dictionary.ts';
import { factEntry } from '../../packs/fact-dictionary.ts';
import type { Bounds, Line, Test, Word } from '../../packs/pack.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';

/** One line of `when` or `unless` in words, with the name of the fact behind it: `Strength class: press-hardened (part.class)`. */
export function lineWords({ fact, test }: Line, dictionary: FactDictionary): string {
  const title = asSentence(factTitle(dictionary, fact)).replace(/\.$/u, '');
  return `${title}: ${testWords(test, factEntry(dictionary, fact)?.unit)} (${fact})`;
}

/** What a line asks of its fact: `section or butt weld`, `more than 650 °C`, `not known`. */
export function testWords(test: Test, unit: string | undefined): string {
  if ('known' in test) return test.known ? 'known' : 'not known';
  if ('anyOf' in test) return eitherOf(test.anyOf.map(wordText));
  return rangeWords(test.range, unit);
}

/** A bound is shown as it is, not as a workshop would read it. */
const mostDecimals = 6;

function rangeWords({ min, max, above, below }: Bounds, unit: string | undefined): string {
  const text = (value: number): string =>
    unit === undefined ? String(value) : formatQuantity(value, unit, mostDecimals).trimEnd();
  const ends = [
    above === undefined ? undefined : `more than ${text(above)}`,
    min === undefined ? undefined : `at least ${text(min)}`,
    below === undefined ? undefined : `less than ${text(below)}`,
    max === undefined ? undefined : `at most ${text(max)}`,
  ];
  return ends.filter((end) => end !== undefined).join(' and ');
}

function wordText(word: Word): string {
  if (typeof word === 'boolean') return word ? 'yes' : 'no';
  return String(word);
}

/** `a`, `a or b`, `a, b or c`. */
export function eitherOf(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1) ?? ''}`;
}
