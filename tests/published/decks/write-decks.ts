// Writes the CalculiX decks of this folder and, where ccx is installed, runs them and stores their results beside them.
// Run: tsx tests/published/decks/write-decks.ts
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { deckText } from './deck-text.ts';
import { decks } from './decks.ts';
import { hasCalculix, runDeck } from './run-deck.ts';

const here = import.meta.dirname;
const solving = hasCalculix();
for (const deck of decks) {
  writeFileSync(path.join(here, `${deck.name}.inp`), deckText(deck));
  if (solving) writeFileSync(path.join(here, `${deck.name}.csv`), runDeck(deck));
}
if (!solving) process.stdout.write('ccx is not installed: decks written, results left as they were\n');
