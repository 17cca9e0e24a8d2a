import type { Operation } from '../../generated/plan-types.ts';
import { readFreeEnd } from '../../quantity/read-free-end.ts';

/** Where the heated sheet ends beyond the neighbours: at a length in mm, nowhere near, or nobody says. */
export type FreeEnd = number | 'runs on' | undefined;

export function freeEndOf({ free_end: text }: Operation): FreeEnd {
  if (text === undefined) return undefined;
  const reading = readFreeEnd(text);
  if (!reading.ok) return undefined;
  return 'runsOn' in reading ? 'runs on' : reading.value;
}

/** The free end as the engines take it; undefined for sheet that runs on, and where nobody says. */
export function statedEndMm(operation: Operation): number | undefined {
  const end = freeEndOf(operation);
  return typeof end === 'number' ? end : undefined;
}

/** Said of every answer that is computed for a place whose sheet may end there. */
export const endAtNeighbour =
  'No free end is stated: the sheet is taken to end at the neighbour, the hottest that it can be.';
