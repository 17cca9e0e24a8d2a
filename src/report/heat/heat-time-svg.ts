import { cell } from '../../heat/cell.ts';
import { roundStep } from './heat-picture.ts';
import type { HeatPicture, PictureTime } from './heat-picture.ts';
import { line, n, pieces, polyline, text } from '../svg-elements.ts';
import {
  axes,
  dashes,
  degrees,
  ink,
  left,
  limitLines,
  listLetters,
  listLine,
  plotHeight,
  plotWidth,
} from '../svg-plot.ts';

const headHeight = 32;
const gaps = 8;
/** A place is followed until it has lost three quarters of its rise: the rest of the way down tells nothing more. */
const followedShare = 0.25;
/** From here on the axis counts minutes. */
const longSeconds = 1200;

/** Temperature against time at each place, below the picture against distance; undefined where no history is known. */
export function timePanel(
  picture: HeatPicture,
): { readonly drawn: string; readonly height: number } | undefined {
  const times = timesOf(picture);
  if (times.length === 0) return undefined;
  const { mostSeconds, perUnit, unit } = timeAxis(times);
  const peaks = times.map(({ history }) => Math.max(...history.celsius));
  const drawnLimits = picture.limits;
  const highest = Math.max(1, ...peaks, ...drawnLimits.map(({ celsius }) => celsius));
  const stepCelsius = roundStep(highest / gaps);
  const mostCelsius = Math.ceil(highest / stepCelsius) * stepCelsius;
  const step = roundStep(mostSeconds / perUnit / gaps);
  const most = Math.ceil(mostSeconds / perUnit / step) * step;
  const foot = headHeight + plotHeight;
  const x = (seconds: number): number => left + (seconds / perUnit / most) * plotWidth;
  const y = (celsius: number): number => foot - (celsius / mostCelsius) * plotHeight;
  const keys = times.flatMap(({ label }) => pieces(label, listLetters - 10).length);
  const rows = keys.reduce((sum, count) => sum + count, 0);
  return {
    height: foot + 70 + rows * listLine + 30,
    drawn: [
      text(left, 12, 'The same over time, at each place', 'font-weight="bold"'),
      axes({ mostCelsius, stepCelsius }, { most, step, words: `Time from the start, ${unit}` }, x, y),
      ...limitLines(drawnLimits, y),
      ...times.map(({ history }, index) => {
        const shown = until(history, most * perUnit);
        return polyline(shown.seconds, shown.celsius, x, y, style(index));
      }),
      ...legend(times, foot + 70),
    ].join('\n'),
  };
}

/** The same in words, for who cannot see it; empty where no history is known. */
export function describeTimes(picture: HeatPicture): string {
  return timesOf(picture)
    .map(({ label, history: { seconds, celsius } }) => {
      const highest = celsius.reduce((best, value, k) => (value > cell(celsius, best) ? k : best), 0);
      return `Over time, ${label}: hottest after ${n(Math.round(cell(seconds, highest)))} s with ${degrees(cell(celsius, highest))}.`;
    })
    .join(' ');
}

function timesOf({ times = [] }: HeatPicture): readonly PictureTime[] {
  return times.filter(({ history }) => history.seconds.length > 1);
}

function timeAxis(times: readonly PictureTime[]): {
  readonly mostSeconds: number;
  readonly perUnit: number;
  readonly unit: string;
} {
  const mostSeconds = Math.max(1, ...times.map(({ history }) => followedSeconds(history)));
  return mostSeconds > longSeconds
    ? { mostSeconds, perUnit: 60, unit: 'min' }
    : { mostSeconds, perUnit: 1, unit: 's' };
}

function followedSeconds({ seconds, celsius }: PictureTime['history']): number {
  const start = cell(celsius, 0);
  const rise = Math.max(...celsius) - start;
  const last = celsius.findLastIndex((value) => value - start > followedShare * rise);
  return cell(seconds, Math.min(Math.max(last, 0) + 1, seconds.length - 1));
}

/** The history as far as the axis goes, its last piece cut where the axis ends. */
function until({ seconds, celsius }: PictureTime['history'], end: number): PictureTime['history'] {
  const beyond = seconds.findIndex((second) => second > end);
  if (beyond <= 0) return { seconds, celsius };
  const before = beyond - 1;
  const share = (end - cell(seconds, before)) / (cell(seconds, beyond) - cell(seconds, before));
  const at = cell(celsius, before) + share * (cell(celsius, beyond) - cell(celsius, before));
  return { seconds: [...seconds.slice(0, beyond), end], celsius: [...celsius.slice(0, beyond), at] };
}

function style(index: number): string {
  return `stroke="${ink.peak}" stroke-width="2.5"${dashes(index)}`;
}

function legend(times: readonly PictureTime[], start: number): readonly string[] {
  let row = 0;
  return times.flatMap(({ label }, index) => {
    const at = start + row * listLine;
    const words = pieces(label, listLetters - 10);
    row += words.length;
    return [
      line(left, at - 5, left + 40, at - 5, style(index)),
      ...words.map((word, k) => text(left + 50, at + k * listLine, word, '')),
    ];
  });
}
