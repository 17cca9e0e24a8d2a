import type { CheckNeeded } from './checks-needed.ts';
import { sideOfWords } from '../part/side-named.ts';
import type { Calibration } from './step-draft.ts';
import { endNamed } from './vehicle-end.ts';

/**
 * Why the radar of the other side is asked for as well: this row names one side, what befell a part that reaches across the vehicle befell
 * both, and no row names the other or both.
 */
export function otherSideOpen(
  one: Calibration,
  all: readonly Calibration[],
  needed: readonly CheckNeeded[],
): string | undefined {
  const { sensor = '' } = one;
  if (!isRadar(sensor)) return undefined;
  const side = sideOfWords(sensor);
  if (side === undefined) return undefined;
  const end = endNamed(sensor);
  const isSameEnd = (other: CheckNeeded['end']): boolean =>
    end === undefined || other === undefined || other === end;
  const because = needed.find(
    (need) => need.sensor.includes('radar') && need.across !== undefined && isSameEnd(need.end),
  )?.across;
  if (because === undefined) return undefined;
  const isAnswered = all.some(
    (other) =>
      other !== one &&
      isRadar(other.sensor ?? '') &&
      isSameEnd(endNamed(other.sensor ?? '')) &&
      sideOfWords(other.sensor) !== side &&
      (sideOfWords(other.sensor) !== undefined || /\bradars\b|\bboth\b/i.test(other.sensor ?? '')),
  );
  return isAnswered ? undefined : because;
}

function isRadar(sensor: string): boolean {
  return /radar/i.test(sensor);
}
