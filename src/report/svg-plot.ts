import type { PictureLimit } from './heat/heat-picture.ts';
import { line, n, pieces, text } from './svg-elements.ts';
import type { Along } from './svg-elements.ts';

export const width = 860;
export const left = 70;
export const right = 210;
export const top = 60;
export const plotWidth = width - left - right;
export const plotHeight = 300;
export const listLine = 20;
export const fontSize = 14;
/** Letters that fit a line across the whole picture, in bold and in plain type. */
export const titleLetters = 84;
export const listLetters = 92;
export const markRadius = 10;

/** Colours of a set that colour-blind readers tell apart (Okabe and Ito, from memory); form tells everything once more. */
export const ink = {
  peak: '#0072b2',
  hold: '#000000',
  limit: '#d55e00',
  clear: '#009e73',
  sink: '#56b4e9',
  text: '#111111',
  grid: '#cccccc',
};

/** Dash patterns of the second and further curves, so that they differ without colour. */
const peakDashes = ['', '14 4', '10 3 2 3', '5 2'];

export interface PlotAxis {
  readonly most: number;
  readonly step: number;
  readonly words: string;
}

/** Both axes of a plot; `along` is the one across the page with all of its words. */
export function axes(
  { mostCelsius, stepCelsius }: { readonly mostCelsius: number; readonly stepCelsius: number },
  { most, step, words }: PlotAxis,
  x: Along,
  y: Along,
): string {
  const lines: string[] = [];
  for (let k = 0; k * stepCelsius <= mostCelsius * (1 + 1e-9); k += 1) {
    const at = y(k * stepCelsius);
    lines.push(line(left, at, left + plotWidth, at, `stroke="${ink.grid}"`));
    lines.push(text(left - 8, at + 5, n(k * stepCelsius), 'text-anchor="end"'));
  }
  for (let k = 0; k * step <= most * (1 + 1e-9); k += 1) {
    const at = x(k * step);
    lines.push(line(at, y(0), at, y(0) + 6, `stroke="${ink.text}"`));
    lines.push(text(at, y(0) + 22, n(k * step), 'text-anchor="middle"'));
  }
  lines.push(
    line(left, y(0), left + plotWidth, y(0), `stroke="${ink.text}"`),
    line(left, y(0), left, y(mostCelsius), `stroke="${ink.text}"`),
    text(left + plotWidth / 2, y(0) + 44, words, 'text-anchor="middle"'),
    text(
      0,
      0,
      'Temperature, °C',
      `text-anchor="middle" transform="translate(18 ${n(y(mostCelsius / 2))}) rotate(-90)"`,
    ),
  );
  return lines.join('\n');
}

/** Labels at the right of their line, pushed apart where the lines lie close. */
export function limitLines(limits: readonly PictureLimit[], y: Along): readonly string[] {
  let lowest = Infinity;
  return [...limits]
    .sort((a, b) => a.celsius - b.celsius)
    .flatMap(({ celsius, label }) => {
      const at = y(celsius);
      const words = pieces(`${degrees(celsius)} ${label}`, 26);
      const labelAt = Math.min(at + 4, lowest - fontSize * words.length);
      lowest = labelAt - 2;
      return [
        line(
          left,
          at,
          left + plotWidth,
          at,
          `stroke="${ink.limit}" stroke-width="2" stroke-dasharray="10 4 2 4"`,
        ),
        ...words.map((word, index) =>
          text(left + plotWidth + 8, labelAt + index * fontSize, word, `fill="#8a3c00"`),
        ),
      ];
    });
}

/** What tells a curve from the others without colour. */
export function dashes(index: number): string {
  const dash = peakDashes[index % peakDashes.length] ?? '';
  return dash === '' ? '' : ` stroke-dasharray="${dash}"`;
}

export function degrees(celsius: number): string {
  return `${n(Math.round(celsius))} °C`;
}
