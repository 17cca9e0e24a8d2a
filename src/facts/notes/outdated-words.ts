import { tells } from './told-in-notes.ts';

/** Words of a note on a document by which it is no longer the one in force. English alone is read. */
const outdatedWords = {
  gate: [
    'superseded',
    'newer',
    'outdated',
    'out of date',
    'not load',
    'withdrawn',
    'no longer valid',
    'cancelled',
  ],
  says: /\b(?:superseded|newer (?:revision|edition|issue|version)|outdated|out of date|(?:would|did|does) not load|withdrawn|no longer valid|cancelled)\b/i,
  harmless: /\b(?:newest|current|latest|supersedes|replaces)\b/i,
  mended: false,
};

/** A note that tells that the document was withdrawn, or that a newer one is there. */
export function toldOutdated(note: string | undefined): string | undefined {
  return note !== undefined && tells(note, outdatedWords) ? note.trim() : undefined;
}
