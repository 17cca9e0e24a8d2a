import { isNotAfter } from '../step/day-order.ts';
import type { Survey } from '../survey.ts';

/**
 * What the measurement of the clamped parts is dated before and cannot have been: nothing new is clamped in before the vehicle was made
 * safe, measured and pulled straight. On one day nobody can tell.
 */
export function fitCheckedBefore({ plan, operations }: Survey): string | undefined {
  const { low_voltage: low, restraints } = plan.make_safe ?? {};
  const { before, before_welding: fit } = plan.measurements ?? {};
  const first: readonly (readonly [name: string, done: string | undefined])[] = [
    ['the disconnecting of the batteries', low?.done],
    ['the making safe of the restraints', restraints?.done],
    ['the measuring before the repair', before],
    ...operations
      .filter(({ straightens }) => straightens === true)
      .map(({ operation, part }) => [`the straightening of ${part.name}`, operation.done] as const),
  ];
  return first.find(([, done]) => isNotAfter(done, fit) === false)?.[0];
}
