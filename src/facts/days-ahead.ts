import type { EntryFault } from '../plan/entry-fault.ts';
import { formatDay } from '../quantity/format-day.ts';
import { pointerTo } from '../plan/pointer.ts';
import { whenOf } from './quantity-of.ts';
import type { Survey } from './survey.ts';

/** Keys that say when something was done. A signature and a permit have rules of their own. */
const doneKeys: ReadonlySet<string> = new Set(['done', 'cured', 'before', 'before_welding', 'after', 'date']);

/** Every day in the plan on which something is said to have been done and that has not come yet. */
export function daysAhead({ plan, context }: Survey): readonly EntryFault[] {
  const { asOfDay } = context;
  const found: EntryFault[] = [];
  // One walk over every value of every plan: steps are joined only where something is found.
  const steps: string[] = [];
  const walk = (value: object): void => {
    const entries: readonly (readonly [string, unknown])[] = Object.entries(value);
    for (const [key, item] of entries) {
      if (typeof item === 'string') {
        if (!doneKeys.has(key)) continue;
        const day = whenOf(item)?.day;
        if (day === undefined || day <= asOfDay) continue;
        found.push({
          fault: 'dated ahead',
          pointer: [...steps, key].reduce(pointerTo, ''),
          sentence: `\`${item}\` has not come: the plan is judged as of ${formatDay(asOfDay)}.`,
        });
      } else if (typeof item === 'object' && item !== null) {
        steps.push(key);
        walk(item);
        steps.pop();
      }
    }
  };
  const { parts, make_safe, measurements, finish, verify } = plan;
  walk({ parts, make_safe, measurements, finish, verify });
  return found;
}
