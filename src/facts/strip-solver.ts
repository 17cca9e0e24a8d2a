import { solveHeldStrip } from '../heat/held-strip.ts';
import type { HeldStrip, StripAnswer } from '../heat/held-strip.ts';

/** Enough for any job folder with like heats; each takes half a megabyte. Beyond it the oldest answers go, so that memory stays flat. */
const mostKept = 64;

/** The strip solver of one run: equal heats are computed once. */
export function rememberingStripSolver(): (strip: HeldStrip) => StripAnswer {
  const answers = new Map<string, StripAnswer>();
  return (strip) => {
    const key = JSON.stringify(strip);
    const before = answers.get(key);
    if (before !== undefined) return before;
    const answer = solveHeldStrip(strip);
    const [oldest] = answers.keys();
    if (answers.size >= mostKept && oldest !== undefined) answers.delete(oldest);
    answers.set(key, answer);
    return answer;
  };
}
