import { pointerTo } from '../../plan/pointer.ts';
import { whenOf } from '../quantity-of.ts';

/** Keys that say when something was done. A signature and a permit have rules of their own. */
const doneKeys: ReadonlySet<string> = new Set([
  ...['done', 'cured', 'before', 'before_welding', 'after', 'date', 'tightened'],
]);

export interface DayInPlan {
  readonly key: string;
  /** As it is written. */
  readonly written: string;
  readonly pointer: string;
}

/** Every day in a part of a plan on which something is said to have been done, of those that are wanted. `day` counts from 1970-01-01. */
export function daysIn(part: object, isWanted: (day: number) => boolean): readonly DayInPlan[] {
  const found: DayInPlan[] = [];
  // One walk over every value of every plan: steps are joined only where something is found.
  const steps: string[] = [];
  const walk = (value: object): void => {
    for (const key of Object.keys(value)) {
      const item: unknown = Reflect.get(value, key);
      if (typeof item === 'string') {
        if (!doneKeys.has(key)) continue;
        const day = whenOf(item)?.day;
        if (day === undefined || !isWanted(day)) continue;
        found.push({ key, written: item, pointer: [...steps, key].reduce(pointerTo, '') });
      } else if (typeof item === 'object' && item !== null) {
        steps.push(key);
        walk(item);
        steps.pop();
      }
    }
  };
  walk(part);
  return found;
}
