import { readQuantity } from '../../quantity/read-quantity.ts';
import type { When } from '../quantity-of.ts';

export interface Cure {
  /** The shortest time that is named, s: before that nothing of it has set, whichever way it was cured. */
  readonly shortestSeconds: number;
  /** The longest, s: after that it has set. */
  readonly longestSeconds: number;
  /** Only temperatures that no workshop has of itself are named: somebody has to have warmed it. */
  readonly isWarm: boolean;
  /** The highest temperature that is named, °C; undefined where none is. */
  readonly warmestCelsius?: number;
}

/** One number or a range, and the word after it: `24 h`, `24-48 hours`, `1,5 h`. */
const numbers = /(\d+(?:[.,]\d+)?)(?:\s*(?:-|–|\/|to|or)\s*(\d+(?:[.,]\d+)?))?\s*(°\s*[CF]|[a-z]+)/giu;

/** No workshop is as warm as this, °C. */
const warmCelsius = 40;

/** What a sentence on curing names, such as `24 h at 23 °C, or 30 min at 80 °C`. Undefined where it names no time. */
export function readCure(text: string | undefined): Cure | undefined {
  const found = [...(text ?? '').matchAll(numbers)];
  const valuesOf = (dimension: 'time' | 'temperature'): readonly number[] =>
    found.flatMap(([, first, last, unit = '']) =>
      [first, last].flatMap((number) => {
        if (number === undefined) return [];
        const written = dimension === 'time' ? unit.toLowerCase() : unit.replace(/\s/gu, '');
        const reading = readQuantity(`${number.replace(',', '.')} ${written}`, dimension);
        return reading.ok && reading.value > 0 ? [reading.value] : [];
      }),
    );
  const [seconds, celsius] = [valuesOf('time'), valuesOf('temperature')];
  if (seconds.length === 0) return undefined;
  return {
    shortestSeconds: Math.min(...seconds),
    longestSeconds: Math.max(...seconds),
    isWarm: celsius.length > 0 && Math.min(...celsius) >= warmCelsius,
    ...(celsius.length === 0 ? {} : { warmestCelsius: Math.max(...celsius) }),
  };
}

/** The least and the most that can lie between two moments, s. A day without its minutes may be any minute of it. */
export function secondsApart(
  first: When,
  second: When,
): { readonly atLeast: number; readonly atMost: number } {
  return { atLeast: startOf(second) - endOf(first), atMost: endOf(second) - startOf(first) };
}

const secondsOfDay = 86_400;

function startOf({ day, minute = 0 }: When): number {
  return day * secondsOfDay + minute * 60;
}

function endOf({ day, minute }: When): number {
  return day * secondsOfDay + (minute === undefined ? secondsOfDay - 1 : minute * 60);
}
