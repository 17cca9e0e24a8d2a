import { escaped } from '../escaped.ts';
import { axisWords, markSign, scaleOf, showsOneTime } from './heat-picture.ts';
import type { HeatPicture, PictureMark, PictureScale, PictureSink } from './heat-picture.ts';
import { line, n, pieces, polyline, text } from '../svg-elements.ts';
import type { Along } from '../svg-elements.ts';
import {
  axes,
  dashes,
  degrees,
  fontSize,
  ink,
  left,
  limitLines,
  listLetters,
  listLine,
  markRadius,
  plotHeight,
  plotWidth,
  titleLetters,
  top,
  width,
} from '../svg-plot.ts';
import { describeTimes, timePanel } from './heat-time-svg.ts';

/**
 * Pictures of heats, one below the other, as one SVG document that needs nothing else: no script, no style sheet, no font file.
 * `title` and `desc` say in words what is drawn.
 */
export function heatSvg(title: string, pictures: readonly HeatPicture[]): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${heatDrawing(title, pictures, '')}\n`;
}

/** The same as an element of a page, where `own` keeps the ids of one drawing from those of the others. */
export function heatDrawing(title: string, pictures: readonly HeatPicture[], own: string): string {
  let offset = top;
  const panels = pictures.map((picture) => {
    const panel = `<g transform="translate(0 ${n(offset)})">${panelOf(picture)}</g>`;
    offset += panelHeight(picture);
    const times = timePanel(picture);
    if (times === undefined) return panel;
    const below = `<g transform="translate(0 ${n(offset)})">${times.drawn}</g>`;
    offset += times.height;
    return `${panel}\n${below}`;
  });
  const height = offset + 10;
  const described = pictures.map(describe).join(' ');
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="${own}title ${own}desc" viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width)}" height="${n(height)}" font-family="sans-serif" font-size="${n(fontSize)}" fill="${ink.text}">`,
    `<title id="${own}title">${escaped(title)}</title>`,
    `<desc id="${own}desc">${escaped(described)}</desc>`,
    `<rect width="${n(width)}" height="${n(height)}" fill="#ffffff"/>`,
    text(left, 28, title, 'font-size="18" font-weight="bold"'),
    ...panels,
    '</svg>',
  ].join('\n');
}

/** Above the plot: the title, on as many lines as it takes. */
function headHeight({ title }: HeatPicture): number {
  return 12 + pieces(title, titleLetters).length * listLine;
}

function panelHeight(picture: HeatPicture): number {
  const { marks } = picture;
  const listed = keysOf(picture).length + markLines(marks).length;
  return headHeight(picture) + plotHeight + 70 + listed * listLine + 30;
}

/** The picture in words, for who cannot see it. */
function describe(picture: HeatPicture): string {
  const { title, curves, limits, marks, clearMm } = picture;
  const ends = curves.map(({ label, curve }) => {
    const first = curve.peakCelsius[0];
    const last = curve.peakCelsius.at(-1);
    const most = curve.distancesMm.at(-1);
    return first === undefined || last === undefined || most === undefined
      ? ''
      : `${label}: the highest temperature falls from ${degrees(first)} at the ${picture.from ?? 'heated zone'} to ${degrees(last)} at ${n(most)} mm.`;
  });
  const parts = [
    `${title}.`,
    `Temperature in degrees Celsius against distance in millimetres ${axisWords(picture)}.`,
    ...ends,
    ...limits.map(({ celsius, label }) => `Limit ${degrees(celsius)}: ${label}.`),
    ...(picture.sinks ?? []).map(({ label }) => `Counted heat sink: ${label}.`),
    ...marks.map(({ label }, index) => `Neighbour ${markSign(index)}: ${label}.`),
    ...(clearMm === undefined ? [] : [`Stay-clear distance ${n(clearMm)} mm.`]),
    describeTimes(picture),
  ];
  return parts.filter((part) => part !== '').join(' ');
}

function panelOf(picture: HeatPicture): string {
  const scale = scaleOf(picture, 8);
  const x = (mm: number): number => left + (mm / scale.mostMm) * plotWidth;
  const foot = headHeight(picture) + plotHeight;
  const y = (celsius: number): number => foot - (celsius / scale.mostCelsius) * plotHeight;
  const { curves, limits, marks, clearMm, title } = picture;
  return [
    ...pieces(title, titleLetters).map((words, index) =>
      text(left, 12 + index * listLine, words, 'font-weight="bold"'),
    ),
    axes(
      scale,
      { most: scale.mostMm, step: scale.stepMm, words: `Distance ${axisWords(picture)}, mm` },
      x,
      y,
    ),
    ...limitLines(limits, y),
    clearMm === undefined || clearMm > scale.mostMm ? '' : clearLine(clearMm, x, foot),
    ...curves.flatMap(({ curve }, index) => [
      curve.endOfHoldCelsius.length === 0
        ? ''
        : polyline(
            curve.distancesMm,
            curve.endOfHoldCelsius,
            x,
            y,
            `stroke="${ink.hold}" stroke-width="1.5" stroke-dasharray="2 4"`,
          ),
      polyline(
        curve.distancesMm,
        curve.peakCelsius,
        x,
        y,
        `stroke="${ink.peak}" stroke-width="2.5"${dashes(index)}`,
      ),
    ]),
    ...(picture.sinks ?? []).map((sink) => sinkBar(sink, x, foot, scale)),
    ...marksOf(marks, x, y, scale),
    ...lists(picture, foot + 70),
  ]
    .filter((piece) => piece !== '')
    .join('\n');
}

function clearLine(clearMm: number, x: Along, foot: number): string {
  const at = x(clearMm);
  return [
    line(at, foot - plotHeight, at, foot, `stroke="${ink.clear}" stroke-width="2" stroke-dasharray="6 6"`),
    text(at + 6, foot - plotHeight + 14, `stay ${n(clearMm)} mm clear`, 'fill="#00563f"'),
  ].join('\n');
}

/** A bar with ends on the axis of distance, under which the sheet is cooled. */
function sinkBar({ fromMm, toMm }: PictureSink, x: Along, foot: number, { mostMm }: PictureScale): string {
  if (fromMm > mostMm) return '';
  const [from, to] = [x(fromMm), x(Math.min(toMm, mostMm))];
  return [
    line(from, foot - 5, to, foot - 5, `stroke="${ink.sink}" stroke-width="8"`),
    line(from, foot - 14, from, foot, `stroke="${ink.text}" stroke-width="2"`),
    line(to, foot - 14, to, foot, `stroke="${ink.text}" stroke-width="2"`),
  ].join('\n');
}

/** Marks at one place would hide each other: the later ones stand above the first. */
function marksOf(
  marks: readonly PictureMark[],
  x: Along,
  y: Along,
  { mostMm }: PictureScale,
): readonly string[] {
  const placed: (readonly [x: number, y: number])[] = [];
  return marks.map(({ distanceMm, peakCelsius }, index) => {
    // What lies beyond the picture is told in the list.
    if (distanceMm > mostMm) return '';
    const at = x(distanceMm);
    let height = y(peakCelsius ?? 0);
    const step = 2 * markRadius + 2;
    while (placed.some(([px, py]) => Math.abs(px - at) < step && Math.abs(py - height) < step))
      height -= step;
    placed.push([at, height]);
    const trueHeight = y(peakCelsius ?? 0);
    // A mark that had to make room is tied to the place that it stands for.
    const tie =
      height === trueHeight
        ? []
        : [
            line(at, height, at, trueHeight, `stroke="${ink.text}" stroke-width="1"`),
            line(at, trueHeight - 3, at, trueHeight + 3, `stroke="${ink.text}" stroke-width="6"`),
          ];
    return [
      ...tie,
      `<circle cx="${n(at)}" cy="${n(height)}" r="${n(markRadius)}" fill="#ffffff" stroke="${ink.text}" stroke-width="2"/>`,
      text(at, height + 5, markSign(index), 'text-anchor="middle" font-weight="bold"'),
    ].join('\n');
  });
}

function markLines(marks: readonly PictureMark[]): readonly string[] {
  return marks.flatMap(({ label }, index) =>
    pieces(label, listLetters).map((words, row) => `${row === 0 ? `${markSign(index)}:` : '  '} ${words}`),
  );
}

function keysOf(picture: HeatPicture): readonly (readonly [style: string, label: string])[] {
  const { curves } = picture;
  return [
    ...curves.map(
      ({ label }, index) =>
        [
          `stroke="${ink.peak}" stroke-width="2.5"${dashes(index)}`,
          `highest that each place reaches: ${label}`,
        ] as const,
    ),
    ...(showsOneTime(picture)
      ? [
          [
            `stroke="${ink.hold}" stroke-width="1.5" stroke-dasharray="2 4"`,
            'at the end of the last heating',
          ] as const,
        ]
      : []),
    ...(picture.sinks ?? []).map(
      ({ label }) => [`stroke="${ink.sink}" stroke-width="8"`, `heat sink on the sheet: ${label}`] as const,
    ),
  ];
}

function lists(picture: HeatPicture, start: number): readonly string[] {
  const { marks } = picture;
  const keys = keysOf(picture);
  return [
    ...keys.flatMap(([style, label], index) => {
      const at = start + index * listLine;
      return [line(left, at - 5, left + 40, at - 5, style), text(left + 50, at, label, '')];
    }),
    ...markLines(marks).map((words, index) =>
      text(left, start + (keys.length + index) * listLine, words, 'xml:space="preserve"'),
    ),
  ];
}
