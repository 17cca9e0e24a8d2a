import { axisWords, markSign, scaleOf, showsOneTime } from './heat-picture.ts';
import type { HeatPicture, PictureScale } from './heat-picture.ts';
import { visibleText } from '../visible-text.ts';
import { wrapText } from '../wrap-text.ts';

const rows = 12;
const labelWidth = 8;
const indent = '  ';

/**
 * The picture in plain ASCII, at most `columns` wide: `*` the highest that each place reaches, `.` the end of the last heating, `-` a
 * limit, `:` the stay-clear distance, figures the neighbours. Empty where nothing is conducted.
 */
export function heatPlot(picture: HeatPicture, columns: number): readonly string[] {
  if (picture.curves.length === 0) return [];
  const scale = scaleOf(picture, 6);
  const width = columns - labelWidth - indent.length - 2;
  const canvas = Array.from({ length: rows + 1 }, () => Array.from({ length: width }, () => ' '));
  const put = (mm: number, celsius: number, sign: string): void => {
    const column = Math.round((mm / scale.mostMm) * (width - 1));
    const row = canvas[rows - Math.round((celsius / scale.mostCelsius) * rows)];
    if (row !== undefined && column >= 0 && column < width) row[column] = sign;
  };
  drawLines(picture, scale, width, put);
  for (const { curve } of picture.curves) {
    const mms = curve.distancesMm;
    // Between two places a column may lie that neither falls on.
    for (const [which, sign] of [
      [curve.endOfHoldCelsius, '.'],
      [curve.peakCelsius, '*'],
    ] as const) {
      for (let column = 0; column < width; column += 1) {
        const mm = (column / (width - 1)) * scale.mostMm;
        const celsius = between(mms, which, mm);
        if (celsius !== undefined) put(mm, celsius, sign);
      }
    }
  }
  for (const { fromMm, toMm } of picture.sinks ?? [])
    for (let column = 0; column < width; column += 1) {
      const mm = (column / (width - 1)) * scale.mostMm;
      if (mm >= fromMm && mm <= toMm) put(mm, 0, '=');
    }
  putMarks(picture, scale, put);
  const lines = canvas.map((row, index) => {
    const celsius = ((rows - index) / rows) * scale.mostCelsius;
    const label = index % 3 === 0 ? `${String(Math.round(celsius))} ` : '';
    return `${indent}${label.padStart(labelWidth)}|${row.join('')}`.trimEnd();
  });
  return [
    `${indent}${'°C'.padStart(labelWidth - 1)}`,
    ...lines,
    ...footer(scale, width, axisWords(picture)),
    ...legend(picture, columns),
  ];
}

/** Marks at one place stand above each other. */
function putMarks(
  { marks }: HeatPicture,
  { mostMm, mostCelsius }: PictureScale,
  put: (mm: number, celsius: number, sign: string) => void,
): void {
  const taken = new Set<string>();
  marks.forEach(({ distanceMm, peakCelsius }, index) => {
    if (distanceMm > mostMm) return;
    let row = Math.round(((peakCelsius ?? 0) / mostCelsius) * rows);
    while (taken.has(`${String(distanceMm)} ${String(row)}`)) row += 1;
    taken.add(`${String(distanceMm)} ${String(row)}`);
    put(distanceMm, (row / rows) * mostCelsius, markSign(index));
  });
}

function drawLines(
  { limits, clearMm }: HeatPicture,
  { mostMm, mostCelsius }: PictureScale,
  width: number,
  put: (mm: number, celsius: number, sign: string) => void,
): void {
  for (const { celsius } of limits)
    for (let column = 0; column < width; column += 1) put((column / (width - 1)) * mostMm, celsius, '-');
  if (clearMm === undefined || clearMm > mostMm) return;
  for (let row = 0; row <= rows; row += 1) put(clearMm, (row / rows) * mostCelsius, ':');
}

function footer({ mostMm, stepMm }: PictureScale, width: number, words: string): readonly string[] {
  const lead = `${indent}${' '.repeat(labelWidth)}+`;
  const axis = Array.from({ length: width }, () => '-');
  const labels = Array.from({ length: width + 4 }, () => ' ');
  for (let n = 0; n * stepMm <= mostMm * (1 + 1e-9); n += 1) {
    const mm = n * stepMm;
    const column = Math.round((mm / mostMm) * (width - 1));
    axis[column] = '+';
    const text = String(Math.round(mm * 100) / 100);
    const start = Math.min(Math.max(0, column - Math.floor(text.length / 2)), width - text.length);
    for (const [offset, sign] of [...text].entries()) labels[start + offset] = sign;
  }
  const unit = `mm ${words}`;
  return [
    `${lead}${axis.join('')}`,
    `${lead.replace('+', ' ')}${labels.join('')}`.trimEnd(),
    `${lead.replace('+', ' ')}${unit.padStart(Math.floor((width + unit.length) / 2))}`,
  ];
}

function legend(picture: HeatPicture, columns: number): readonly string[] {
  const { limits, marks, clearMm } = picture;
  const entries = [
    '* highest at each place',
    ...(showsOneTime(picture) ? ['. at the end of the last heating'] : []),
    ...limits.map(({ celsius, label }) => `- ${String(Math.round(celsius))} °C, ${label}`),
    ...(picture.sinks ?? []).map(({ label }) => `= ${label}`),
    ...(clearMm === undefined ? [] : [`: stay-clear distance, ${String(clearMm)} mm`]),
  ];
  return [
    ...wrapText(visibleText(entries.join('; ')), columns, `${indent}${indent}`),
    ...marks.flatMap(({ label }, index) =>
      wrapText(
        visibleText(`${markSign(index)}: ${label}`),
        columns,
        `${indent}${indent}${indent}`,
        `${indent}${indent}`,
      ),
    ),
  ];
}

function between(xs: readonly number[], ys: readonly number[], x: number): number | undefined {
  const right = xs.findIndex((one) => one >= x - 1e-9);
  const y = ys[right];
  if (y === undefined) return undefined;
  if (right === 0) return y;
  const from = xs[right - 1] ?? Number.NaN;
  const share = (x - from) / ((xs[right] ?? Number.NaN) - from);
  return (ys[right - 1] ?? Number.NaN) * (1 - share) + y * share;
}
