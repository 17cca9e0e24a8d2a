import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { deckText } from './deck-text.ts';
import type { Deck } from './deck-text.ts';

/** Debian's calculix-ccx; the stored results are of its version 2.20. */
export const hasCalculix = (): boolean => spawnSync('ccx', ['-v']).error === undefined;

/** One row a printed time, the probes in the order of the deck, °C to 0.01. */
export function runDeck(deck: Deck): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'planish-deck-'));
  try {
    writeFileSync(path.join(folder, `${deck.name}.inp`), deckText(deck));
    const { error, status } = spawnSync('ccx', [deck.name], { cwd: folder, maxBuffer: 1e9 });
    if (error !== undefined || status !== 0) throw new Error(`ccx did not finish ${deck.name}`);
    return rowsOf(deck, readFileSync(path.join(folder, `${deck.name}.dat`), 'utf8'));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** CalculiX prints one block a time: a line ending in the time, then a line a node. */
function rowsOf({ probes }: Deck, printed: string): string {
  const rows = printed.split('temperatures for set PROBE and time').slice(1);
  return [
    ['t_s', ...probes.map(({ name }) => name)].join(','),
    ...rows.map((block) => {
      const [time = '', ...lines] = block.trim().split('\n');
      const celsius = new Map(
        lines.map((line): [number, number] => {
          const [node, value] = line.trim().split(/\s+/).map(Number);
          return [node ?? Number.NaN, value ?? Number.NaN];
        }),
      );
      return [
        Number(Number(time).toFixed(3)),
        ...probes.map(({ node }) => (celsius.get(node) ?? Number.NaN).toFixed(2)),
      ].join(',');
    }),
    '',
  ].join('\n');
}
