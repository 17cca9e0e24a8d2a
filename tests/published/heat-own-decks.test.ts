import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { deckText } from './decks/deck-text.ts';
import { decks } from './decks/decks.ts';
import { hasCalculix, runDeck } from './decks/run-deck.ts';

const stored = (name: string): string => readFileSync(new URL(`decks/${name}`, import.meta.url), 'utf8');

test.each(decks)('the stored deck $name is the one that is written', (deck) => {
  expect(deckText(deck)).toBe(stored(`${deck.name}.inp`));
});

/*
 * Some 100 s of CalculiX in all, so only where PLANISH_CCX is set and ccx (Debian: calculix-ccx) is there; else skipped.
 * What the engine makes of the stored results stands in heat-checks/own-decks.ts and always runs.
 */
const run = process.env['PLANISH_CCX'] !== undefined && hasCalculix();
describe.skipIf(!run)('CalculiX gives the stored results again', () => {
  test.each(decks)('$name', { timeout: 600_000 }, (deck) => {
    const numbers = (csv: string): number[] =>
      csv.trim().split('\n').slice(1).join(',').split(',').map(Number);
    const before = numbers(stored(`${deck.name}.csv`));
    const now = numbers(runDeck(deck));
    expect(now).toHaveLength(before.length);
    now.forEach((value, n) => {
      expect(Math.abs(value - (before[n] ?? Number.NaN))).toBeLessThan(0.03);
    });
  });
});
