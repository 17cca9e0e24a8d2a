import { notAfter, whenOf } from '../quantity-of.ts';
import type { When } from '../quantity-of.ts';
import type { TriState } from '../tri-state.ts';

/** Whether one written moment lies before another or with it; cannot tell where one is not written, or the minutes are wanting. */
export function isNotAfter(first: string | undefined, second: string | undefined): TriState {
  const [one, other] = [whenOf(first), whenOf(second)];
  return one === undefined || other === undefined ? undefined : notAfter(one, other);
}

/** Seconds from one moment to another; undefined where the minutes of one are not written. */
export function secondsBetween(first: When | undefined, second: When | undefined): number | undefined {
  if (first?.minute === undefined || second?.minute === undefined) return undefined;
  return (second.day - first.day) * 86_400 + (second.minute - first.minute) * 60;
}
