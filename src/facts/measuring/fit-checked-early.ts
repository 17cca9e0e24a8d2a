import { isWeldedIn } from '../part/part-kinds.ts';
import { isNotAfter } from '../step/day-order.ts';
import { notAfter, whenOf } from '../quantity-of.ts';
import type { Survey } from '../survey.ts';
import { weldingMoments } from '../step/work-moments.ts';

/**
 * What the measurement of the clamped parts is dated before and cannot have been: nothing new is clamped in before the vehicle was made
 * safe, measured and pulled straight. On one day nobody can tell.
 */
export function fitCheckedBefore(survey: Survey): string | undefined {
  const { plan, operations } = survey;
  const { low_voltage: low, restraints } = plan.make_safe ?? {};
  const { before, before_welding: fit } = plan.measurements ?? {};
  const first: readonly (readonly [name: string, done: string | undefined])[] = [
    // What was made safe after the first weld is told as such.
    ...(isBeforeWelding(survey, low?.done)
      ? [['the disconnecting of the batteries', low?.done] as const]
      : []),
    ...(isBeforeWelding(survey, restraints?.done)
      ? [['the making safe of the restraints', restraints?.done] as const]
      : []),
    ['the measuring before the repair', before],
    ...operations
      // What is bolted on, and a skin, may be straightened any day.
      .filter(
        ({ straightens, part }) =>
          straightens === true && isWeldedIn(part.part.kind) && part.structural === true,
      )
      .map(({ operation, part }) => [`the straightening of ${part.name}`, operation.done] as const),
  ];
  return first.find(([, done]) => isNotAfter(done, fit) === false)?.[0];
}

function isBeforeWelding(survey: Survey, done: string | undefined): boolean {
  const own = whenOf(done);
  return own === undefined || weldingMoments(survey).every((when) => notAfter(own, when) !== false);
}
