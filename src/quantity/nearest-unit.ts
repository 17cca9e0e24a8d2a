import type { Dimension } from './dimension.ts';
import { units } from './units.ts';

/** Symbol of the unit of this dimension whose spelling is nearest, if one is near at all; the earlier one on a tie. */
export function nearestUnit(spelling: string, dimension: Dimension): string | undefined {
  // A prefix is no slip of the pen: `mA` is a million times less than `kA`.
  if (/^[mµuknM][A-Z]/u.test(spelling)) return undefined;
  const written = spelling.toLowerCase();
  let nearest: string | undefined;
  let shortest = Infinity;
  for (const unit of units[dimension]) {
    for (const known of [unit.symbol, ...(unit.also ?? [])]) {
      const longer = Math.max(written.length, known.length);
      const steps = editSteps(written, known.toLowerCase());
      // A third of the letters may differ, one always; but a unit with no letter in common is not near.
      if (steps < shortest && steps < longer && steps <= Math.max(1, Math.floor(longer / 3))) {
        shortest = steps;
        nearest = unit.symbol;
      }
    }
  }
  return nearest;
}

/** Letters to add, drop or change to get from one word to the other; two neighbours swapped count once. */
function editSteps(from: string, to: string): number {
  let beforeLast: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= to.length; column += 1) {
      const same = from[row - 1] === to[column - 1];
      let steps = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      if (row > 1 && column > 1 && from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1]) {
        steps = Math.min(steps, (beforeLast[column - 2] ?? 0) + 1);
      }
      current.push(steps);
    }
    beforeLast = last;
    last = current;
  }
  return last[to.length] ?? 0;
}
