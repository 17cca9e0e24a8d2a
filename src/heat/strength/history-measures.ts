import { pointHistory } from '../point-history.ts';
import type { PointHistory, TemperatureHistory } from '../point-history.ts';

/** Highest temperature of a history, °C. */
export function peakOf({ celsius }: TemperatureHistory): number {
  return celsius.reduce((most, one) => Math.max(most, one), -Infinity);
}

/**
 * Time above a temperature within a history, s, straight lines between its times. Unlike `PointHistory.secondsAbove` it
 * takes a history that ends hot as complete: a hold that is cut off there. Where a history tells that its time comes to more,
 * as of several heatings, that counts.
 */
export function secondsAboveIn(
  { seconds, celsius, secondsAbove }: TemperatureHistory & Partial<Pick<PointHistory, 'secondsAbove'>>,
  limitCelsius: number,
): number {
  const end = seconds[seconds.length - 1] ?? 0;
  const closed = { seconds: [...seconds, end], celsius: [...celsius, -273] };
  const own = pointHistory(closed, limitCelsius).secondsAbove(limitCelsius);
  const told = secondsAbove?.(limitCelsius) ?? own;
  return Number.isFinite(told) ? Math.max(own, told) : own;
}
