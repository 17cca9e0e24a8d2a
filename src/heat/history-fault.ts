import { cell } from './cell.ts';
import type { TemperatureHistory } from './point-history.ts';

/** What is wrong with a history, as a reason; undefined when it can be computed with. */
export function historyFault({ seconds, celsius }: TemperatureHistory): string | undefined {
  if (seconds.length < 2 || seconds.length !== celsius.length)
    return 'the temperature history is not complete';
  if (celsius.some((one) => !(one >= -60 && one <= 1600)))
    return 'the temperature history holds no real temperature';
  const backwards = seconds.some((one, n) => !(n === 0 ? Number.isFinite(one) : one >= cell(seconds, n - 1)));
  return backwards ? 'the times of the temperature history do not run forward' : undefined;
}
