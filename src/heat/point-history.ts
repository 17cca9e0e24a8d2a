import { cell } from './cell.ts';

/** Temperatures over time, as anything that walks a history (tempering, exposure) needs them. */
export interface TemperatureHistory {
  readonly seconds: readonly number[];
  readonly celsius: readonly number[];
}

/** What one place of the sheet goes through, from the start of the heating until it is cold again. */
export interface PointHistory extends TemperatureHistory {
  readonly peakCelsius: number;
  readonly peakAtSeconds: number;
  /**
   * Total time above a temperature, s; of several heatings at most, see `pointHistory`. Infinity when the place has not fallen below it by the end of the history
   * (a temperature within about 1 K of the surroundings) or when the temperature asked about is not a number.
   */
  secondsAbove(celsius: number): number;
}

/**
 * Reads peak and durations off a history, straight lines between its times.
 *
 * @param ceilingCelsius no place can later become warmer than this; it stands for the peak of a place that is still
 * warming when the history ends.
 * @param heatings how many heatings the history stands for as one hold of their whole time. Let cool in between, the place can
 * be warm for longer in all, but after each of them hardly for longer than after all in one: their number times as long is told. That
 * errs high; an argument from energy (the one hold has all of it at once), not a proof.
 */
export function pointHistory(
  history: TemperatureHistory,
  ceilingCelsius: number,
  heatings = 1,
): PointHistory {
  const { seconds, celsius } = history;
  const highest = celsius.reduce((best, value, n) => (value > cell(celsius, best) ? n : best), 0);
  const stillWarming = highest === celsius.length - 1;
  return {
    seconds,
    celsius,
    peakCelsius: stillWarming ? Math.max(cell(celsius, highest), ceilingCelsius) : cell(celsius, highest),
    peakAtSeconds: cell(seconds, highest),
    secondsAbove: (limit) => heatings * secondsAbove(history, limit),
  };
}

function secondsAbove({ seconds, celsius }: TemperatureHistory, limit: number): number {
  if (Number.isNaN(limit) || cell(celsius, celsius.length - 1) > limit) return Infinity;
  let total = 0;
  for (let n = 1; n < seconds.length; n++) {
    const cooler = Math.min(cell(celsius, n - 1), cell(celsius, n));
    const warmer = Math.max(cell(celsius, n - 1), cell(celsius, n));
    if (warmer <= limit) continue;
    const share = cooler >= limit ? 1 : (warmer - limit) / (warmer - cooler);
    total += share * (cell(seconds, n) - cell(seconds, n - 1));
  }
  return total;
}
