import { dayOf, whenOf } from '../quantity-of.ts';
import type { Calibration } from './step-draft.ts';

/** The last day on which a floor was levelled or checked, and how long before the calibration that was. */
export interface FloorChecked {
  /** As written. */
  readonly day: string;
  /** Below nothing when the floor was checked after it. */
  readonly daysBefore: number;
}

/** Up to which day a check holds, or when the next one is due, is no day of a check. */
const ofNextCheck = /\b(?:next|until|till|due|valid|expir\w*|to)\b[^,;.]*$/i;

export function floorChecked({ done, conditions }: Calibration): FloorChecked | undefined {
  const floor = conditions?.floor;
  if (floor === undefined || done === undefined || !floor.includes('-')) return undefined;
  const made = whenOf(done)?.day;
  if (made === undefined) return undefined;
  return [...floor.matchAll(/\b\d{4}-\d{2}-\d{2}\b/g)]
    .filter(({ index }) => !ofNextCheck.test(floor.slice(0, index)))
    .flatMap(([day]): readonly FloorChecked[] => {
      const checked = dayOf(day);
      return checked === undefined ? [] : [{ day, daysBefore: made - checked }];
    })
    .toSorted((one, other) => one.daysBefore - other.daysBefore)[0];
}
