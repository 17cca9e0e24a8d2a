import { ownFact } from '../facts/sheet.ts';
import type { FactSheet } from '../facts/sheet.ts';
import { comparePointers } from './compare-pointers.ts';

/** What has to be known of the whole plan to order findings and to name them the same after an edit elsewhere. */
export interface PlanOrder {
  /** Ids of the parts, in the order of the plan. */
  readonly parts: readonly string[];
  /** Pointer of an operation → its word and which one of that word on its part it is: `section 2`. */
  readonly operations: ReadonlyMap<string, string>;
}

/** Read off the sheets, in whatever order they come. */
export function planOrder(sheets: readonly FactSheet[]): PlanOrder {
  const inOrder = sheets.filter((sheet) => sheet.kind === 'part' || sheet.kind === 'operation');
  // As a rule they come in order, and to see that costs less than to sort.
  const isSorted = inOrder.every(({ at }, index) => comparePointers(inOrder[index - 1]?.at ?? '', at) <= 0);
  if (!isSorted) inOrder.sort((a, b) => comparePointers(a.at, b.at));
  const parts = new Set<string>();
  const operations = new Map<string, string>();
  const counts = new Map<string, number>();
  for (const sheet of inOrder) {
    if (sheet.kind === 'part') {
      if (sheet.part !== undefined) parts.add(sheet.part);
      continue;
    }
    const word = ownFact(sheet, 'operation.do');
    const name = word?.known === true ? String(word.value) : '';
    const key = `${sheet.part ?? ''}\0${name}`;
    const count = (counts.get(key) ?? 0) + 1;
    counts.set(key, count);
    operations.set(sheet.operation ?? sheet.at, `${name} ${count}`);
  }
  return { parts: [...parts], operations };
}
