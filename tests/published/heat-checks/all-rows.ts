import type { CheckRow } from './check-row.ts';
import { finiteElementRows } from './finite-elements.ts';
import { ownDeckRows } from './own-decks.ts';
import { jsonRows } from './read-rows.ts';
import { temperingHoldoutRows } from './tempering-holdout.ts';

/** Every check of the heat room against the outside: rows of the JSON files, then those that need a table of results. */
export function allRows(): readonly CheckRow[] {
  return [...jsonRows(), ...finiteElementRows(), ...ownDeckRows(), ...temperingHoldoutRows()];
}
