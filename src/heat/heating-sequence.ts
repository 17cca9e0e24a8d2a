import { cell } from './cell.ts';
import type { TemperatureHistory } from './point-history.ts';

/**
 * Several heatings of one place as one history, each beginning at the moment the one before ends: what walks it adds
 * their damage up. Rest between heatings does nothing below 27 °C and is left out.
 *
 * The order of two heatings at T1 < T2 matters little: the hotter one last does more, by at most log10(2)·(T2 − T1)/1000
 * of the tempering parameter, when each alone does equal damage. From 200 to 700 °C that is 6 HV on the steepest place
 * of the curve, and three points of the per cent at the safe end.
 */
export function oneAfterAnother(heatings: readonly TemperatureHistory[]): TemperatureHistory {
  const seconds: number[] = [];
  const celsius: number[] = [];
  let clock = 0;
  for (const heating of heatings) {
    const start = cell(heating.seconds, 0);
    for (const second of heating.seconds) seconds.push(clock + second - start);
    celsius.push(...heating.celsius);
    clock = cell(seconds, seconds.length - 1);
  }
  return { seconds, celsius };
}
