import { pointHistory } from './point-history.ts';
import type { TemperatureHistory } from './point-history.ts';

/** Highest temperature of a history, °C. */
export function peakOf({ celsius }: TemperatureHistory): number {
  return celsius.reduce((most, one) => Math.max(most, one), -Infinity);
}

/**
 * Time above a temperature within a history, s, straight lines between its times. Unlike `PointHistory.secondsAbove` it
 * takes a history that ends hot as complete: a hold that is cut off there.
 */
export function secondsAboveIn({ seconds, celsius }: TemperatureHistory, limitCelsius: number): number {
  const end = seconds[seconds.length - 1] ?? 0;
  const closed = { seconds: [...seconds, end], celsius: [...celsius, -273] };
  return pointHistory(closed, limitCelsius).secondsAbove(limitCelsius);
}
