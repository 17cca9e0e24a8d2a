import { daysIn } from './days-in.ts';
import { whenOf } from '../quantity-of.ts';
import type { Survey } from '../survey.ts';

/** The last day on which anything in the plan is said to have been done, from 1970-01-01; undefined where nothing is dated. */
export function lastDatedStep({ plan }: Survey): number | undefined {
  const { parts, make_safe, measurements, hold_points, finish, verify } = plan;
  const dated = daysIn({ parts, make_safe, measurements, hold_points, finish, verify }, () => true);
  const days = dated.map(({ written }) => whenOf(written)?.day).filter((day) => day !== undefined);
  return days.length === 0 ? undefined : Math.max(...days);
}
