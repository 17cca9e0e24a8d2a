import { isWeldedIn } from '../part/part-kinds.ts';
import { isNotAfter } from '../step/day-order.ts';
import { notAfter, whenOf } from '../quantity-of.ts';
import type { Survey } from '../survey.ts';
import { weldingMoments } from '../step/work-moments.ts';

/**
 * What the measurement of the clamped parts is dated before and cannot have been: nothing new is clamped in before the vehicle was made
 * safe, measured and pulled straight. On one day nobody can tell.
 */
export function fitCheckedBefore(survey: Survey): Before | undefined {
  const { plan, operations } = survey;
  const { low_voltage: low, restraints } = plan.make_safe ?? {};
  const { before, before_welding: fit } = plan.measurements ?? {};
  const first: readonly Before[] = [
    // What was made safe after the first weld is told as such.
    ...(isBeforeWelding(survey, low?.done)
      ? [{ name: 'the disconnecting of the batteries', done: low?.done, at: '/make_safe/low_voltage/done' }]
      : []),
    ...(isBeforeWelding(survey, restraints?.done)
      ? [
          {
            name: 'the making safe of the restraints',
            done: restraints?.done,
            at: '/make_safe/restraints/done',
          },
        ]
      : []),
    { name: 'the measuring before the repair', done: before, at: '/measurements/before' },
    ...operations
      // What is bolted on, and a skin, may be straightened any day.
      .filter(
        ({ straightens, part }) =>
          straightens === true && isWeldedIn(part.part.kind) && part.structural === true,
      )
      .map(({ operation, part, at }) => ({
        name: `the straightening of ${part.name}`,
        done: operation.done,
        at: `${at}/done`,
      })),
  ];
  return first.find(({ done }) => isNotAfter(done, fit) === false);
}

interface Before {
  readonly name: string;
  readonly done: string | undefined;
  readonly at: string;
}

function isBeforeWelding(survey: Survey, done: string | undefined): boolean {
  const own = whenOf(done);
  return own === undefined || weldingMoments(survey).every((when) => notAfter(own, when) !== false);
}
