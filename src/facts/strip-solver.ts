import { solveHeldSheet } from '../heat/held-sheet.ts';
import type { HeldSheet, SheetAnswer } from '../heat/held-sheet.ts';

/** Enough for any job folder with like heats; each takes half a megabyte. Beyond it the oldest answers go, so that memory stays flat. */
const mostKept = 64;

/** The strip solver of one run: equal heats are computed once. */
export function rememberingStripSolver(): (strip: HeldSheet) => SheetAnswer {
  const answers = new Map<string, SheetAnswer>();
  return (strip) => {
    const key = JSON.stringify(strip);
    const before = answers.get(key);
    if (before !== undefined) return before;
    const answer = solveHeldSheet(strip);
    const [oldest] = answers.keys();
    if (answers.size >= mostKept && oldest !== undefined) answers.delete(oldest);
    answers.set(key, answer);
    return answer;
  };
}
