import type { Plan } from '../../generated/plan-types.ts';
import type { EntryFault } from '../../plan/entry-fault.ts';
import { pointerSteps } from '../../plan/pointer.ts';
import { formatDay } from '../../quantity/format-day.ts';
import { daysIn } from './days-in.ts';

/** Every day in the plan on which something is said to have been done and that has not come yet. */
export function daysAhead(plan: Plan, asOfDay: number): readonly EntryFault[] {
  const { parts, make_safe, measurements, hold_points, finish, verify } = plan;
  return daysIn({ parts, make_safe, measurements, hold_points, finish, verify }, (day) => day > asOfDay).map(
    ({ written, pointer }) => ({
      fault: 'dated ahead',
      pointer,
      sentence: `\`${written}\` has not come: the plan is judged as of ${formatDay(asOfDay)}.`,
    }),
  );
}

/**
 * The plan without those days. A day that has not come says nothing of the order of the work: it is told for itself, and what hangs on
 * it is unknown.
 */
export function withoutDaysAhead(plan: Plan, ahead: readonly EntryFault[]): Plan {
  if (ahead.length === 0) return plan;
  const copy = structuredClone(plan);
  for (const { pointer } of ahead) takeOut(copy, pointerSteps(pointer));
  return copy;
}

function takeOut(value: unknown, [step, ...rest]: readonly string[]): void {
  if (step === undefined || typeof value !== 'object' || value === null) return;
  if (rest.length === 0) Reflect.deleteProperty(value, step);
  else takeOut(Reflect.get(value, step), rest);
}
