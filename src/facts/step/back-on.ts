import type { Operation } from '../../generated/plan-types.ts';

/** The step at which what an operation takes off, cuts open or renews is in its place again. One that names none goes on at its own. */
export function backOnStep({ step, refit_step: refit }: Operation): number | undefined {
  return refit ?? step;
}

/** Whether a part is off at a step, by the steps of the operation that takes it off and puts it, or a new one, on. */
export function isOffBetween({ step, refit_step: refit }: Operation, at: number | undefined): boolean {
  return isBefore(step, at) && isBefore(at, refit);
}

/** Steps that are not written contradict nothing. */
export function isBefore(first: number | undefined, second: number | undefined): boolean {
  return first === undefined || second === undefined || first < second;
}
