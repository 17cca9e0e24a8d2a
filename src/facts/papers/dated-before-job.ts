import { daysIn } from '../step/days-in.ts';
import { dayOf } from '../quantity-of.ts';
import type { Survey } from '../survey.ts';

export interface TooEarly {
  /** The moment as it is written. */
  readonly written: string;
  readonly pointer: string;
}

/** The first entry that is dated before the job was opened, and before its first estimate. */
export function datedBeforeJob({ plan }: Survey): TooEarly | undefined {
  const begun = [dayOf(plan.job?.opened), dayOf(plan.job?.first_estimate)].filter((day) => day !== undefined);
  if (begun.length === 0) return undefined;
  const first = Math.min(...begun);
  const { parts, make_safe, measurements, hold_points, finish, verify } = plan;
  const early = daysIn({ make_safe, parts, measurements, hold_points, finish, verify }, (day) => day < first);
  // A coupon may have been torn for another job with the same adhesive; how old it may be has rules of its own.
  return early.find(({ key }) => key !== 'date');
}
