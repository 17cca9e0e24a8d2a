import type { EntryFault } from '../../plan/entry-fault.ts';
import { formatDay } from '../../quantity/format-day.ts';
import { daysIn } from './days-in.ts';
import type { Survey } from '../survey.ts';

/** Every day in the plan on which something is said to have been done and that has not come yet. */
export function daysAhead({ plan, context }: Survey): readonly EntryFault[] {
  const { parts, make_safe, measurements, hold_points, finish, verify } = plan;
  return daysIn(
    { parts, make_safe, measurements, hold_points, finish, verify },
    (day) => day > context.asOfDay,
  ).map(({ written, pointer }) => ({
    fault: 'dated ahead',
    pointer,
    sentence: `\`${written}\` has not come: the plan is judged as of ${formatDay(context.asOfDay)}.`,
  }));
}
