import { rememberingLapSolver, rememberingStripSolver } from '../../facts/heat/strip-solver.ts';
import type { PlanStage } from '../../facts/context.ts';
import type { Pack } from '../../packs/pack.ts';
import { dictionary } from '../dictionary.ts';
import type { LockFinder } from './lock-finder.ts';
import type { JudgingRun } from './pinned-rules.ts';

/** What a command asks of its run beside packs and day; see `JudgingRun`. */
export interface RunWishes {
  readonly stage?: PlanStage | undefined;
  readonly lockFor?: LockFinder;
  readonly mustBeLocked?: boolean;
  readonly passesOverMissing?: boolean;
}

/** A run that begins: nothing is remembered yet of what is computed and resolved once for all its plans. */
export function judgingRun(
  packs: readonly Pack[],
  asOfDay: number,
  { stage, ...others }: RunWishes = {},
): JudgingRun {
  return {
    ...{ packs, dictionary, asOfDay, ...others },
    ...(stage === undefined ? {} : { stage }),
    solveStrip: rememberingStripSolver(),
    solveLap: rememberingLapSolver(),
    resolved: new Map(),
  };
}
