import { wordsIn } from './words-in.ts';

/** What bears a number, how and by whom it was read: two of them at one place are still one place. */
const noPlace: ReadonlySet<string> = new Set([
  ...[
    'a',
    'an',
    'the',
    'in',
    'on',
    'at',
    'of',
    'under',
    'behind',
    'by',
    'from',
    'to',
    'and',
    'same',
    'again',
    'read',
  ],
  ...[
    'plate',
    'stamp',
    'sticker',
    'label',
    'number',
    'vin',
    'place',
    'second',
    'time',
    'as',
    'above',
    'ditto',
  ],
]);

/** Two words for one place. */
const sameWord: ReadonlyMap<string, string> = new Map([
  ['windshield', 'windscreen'],
  ['dash', 'dashboard'],
  ['rocker', 'sill'],
  ['firewall', 'bulkhead'],
]);

/**
 * Whether two texts name one place on a vehicle: the places that one of them names, the other names as well. A text that names none
 * ("as above", "same") is taken for the other's place. False where one is not written.
 */
export function isSamePlace(one: string | undefined, other: string | undefined): boolean {
  if (one === undefined || other === undefined) return false;
  const [first, second] = [placeWords(one), placeWords(other)];
  const [fewer, more] = first.size <= second.size ? [first, second] : [second, first];
  return [...fewer].every((word) => more.has(word));
}

function placeWords(text: string): ReadonlySet<string> {
  return new Set(
    wordsIn(text)
      .filter((word) => !noPlace.has(word))
      .map((word) => sameWord.get(word) ?? word),
  );
}
