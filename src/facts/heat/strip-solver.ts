import { solveHeldLap } from '../../heat/sheet/held-lap.ts';
import { solveHeldSheet } from '../../heat/sheet/held-sheet.ts';
import type { DerivationContext } from '../context.ts';

/** Enough for any job folder with like heats; each takes half a megabyte. Beyond it the oldest answers go, so that memory stays flat. */
const mostKept = 64;

/** The strip solver of one run: equal heats are computed once. */
export function rememberingStripSolver(): DerivationContext['solveStrip'] {
  return remembering(solveHeldSheet);
}

/** The same for laps. */
export function rememberingLapSolver(): DerivationContext['solveLap'] {
  return remembering(solveHeldLap);
}

function remembering<Task, Answer>(solve: (task: Task) => Answer): (task: Task) => Answer {
  const answers = new Map<string, Answer>();
  return (task) => {
    const key = JSON.stringify(task);
    const before = answers.get(key);
    if (before !== undefined) return before;
    const answer = solve(task);
    const [oldest] = answers.keys();
    if (answers.size >= mostKept && oldest !== undefined) answers.delete(oldest);
    answers.set(key, answer);
    return answer;
  };
}
