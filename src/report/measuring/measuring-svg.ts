import type { MeasuringShown, PointShown } from '../../facts/measuring/measuring-shown.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';
import { escaped } from '../escaped.ts';
import { placeLabels } from './place-labels.ts';
import type { Box } from './place-labels.ts';
import { signedMillimetres } from './signed-millimetres.ts';
import { line, n, pieces, text } from '../svg-elements.ts';

const width = 860;
const [left, right, top] = [60, 100, 56];
const plotWidth = width - left - right;
/** Room for the names of points at the edge of a view. */
const margin = 40;
/** For the names right of the outermost point. */
const labelRoom = 110;
const [leastHeight, mostHeight] = [60, 420];
/** The longest deviation becomes about this long in the drawing. */
const longestArrow = 70;
/** A body has no more within this, mm: what lies farther apart is no drawing of a vehicle. */
const mostSpanMm = 50_000;
const stretches = [200, 100, 50, 20, 10, 5, 2];

/** Across the page and up the page. */
type Axes = readonly [across: 0 | 1 | 2, up: 0 | 1 | 2];

interface Drawn {
  readonly point: PointShown;
  readonly from: readonly [number, number, number];
  readonly way: readonly [number, number, number];
}

interface View {
  readonly title: string;
  readonly axes: Axes;
  readonly names: readonly [across: string, up: string];
}

const views: readonly View[] = [
  { title: 'From above', axes: [0, 1], names: ['x', 'y'] },
  { title: 'From the side', axes: [0, 2], names: ['x', 'z'] },
];

/**
 * The points of the last measuring on the places of the data sheet, from above and from the side, with their deviations as arrows that
 * are drawn longer than they are; by how much is said. Undefined where nothing can be drawn. Ids begin with `own`.
 */
export function measuringDrawing({ fits, points }: MeasuringShown, own: string): string | undefined {
  const occasion = fits.at(-1)?.occasion;
  if (occasion === undefined) return undefined;
  const drawn = points.flatMap((point): readonly Drawn[] => {
    const { nominal, [occasion]: way } = point;
    return nominal === undefined || way === undefined ? [] : [{ point, from: nominal, way }];
  });
  const span = Math.max(...([0, 1, 2] as const).map((axis) => spanOf(drawn, axis)));
  if (drawn.length === 0 || !(span <= mostSpanMm)) return undefined;
  const pixels = Math.min(
    (plotWidth - 2 * margin - labelRoom) / Math.max(1, spanOf(drawn, 0)),
    (mostHeight - 2 * margin) / Math.max(1, spanOf(drawn, 1), spanOf(drawn, 2)),
  );
  const longest = Math.max(...drawn.map(({ way }) => Math.max(...way.map(Math.abs))));
  const stretch = stretches.find((one) => longest * one * pixels <= longestArrow) ?? 1;
  let offset = top;
  const panels = views.map((view) => {
    const { markup, height } = panel(view, drawn, pixels, stretch, offset);
    offset += height;
    return markup;
  });
  const height = offset + 60;
  const scale = `Deviations are drawn ${stretch === 1 ? 'on the scale of the body' : `${String(stretch)} times larger than the body`}.`;
  const title = `Measured ${occasion} the repair`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="${own}title ${own}desc" viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width)}" height="${n(height)}" font-family="sans-serif" font-size="13" fill="#111111">`,
    `<title id="${own}title">${escaped(title)}</title>`,
    `<desc id="${own}desc">${escaped(described(drawn, scale))}</desc>`,
    `<rect width="${n(width)}" height="${n(height)}" fill="#ffffff"/>`,
    text(left, 24, title, 'font-size="16" font-weight="bold"'),
    text(left, 42, scale, ''),
    ...panels,
    ...legend(offset + 20),
    '</svg>',
  ].join('\n');
}

function spanOf(drawn: readonly Drawn[], axis: 0 | 1 | 2): number {
  const values = drawn.map(({ from }) => from[axis]);
  return (
    values.reduce((most, one) => Math.max(most, one), -Infinity) -
    values.reduce((least, one) => Math.min(least, one), Infinity)
  );
}

function panel(
  { title, axes: [across, up], names }: View,
  drawn: readonly Drawn[],
  pixels: number,
  stretch: number,
  offset: number,
): { readonly markup: string; readonly height: number } {
  const leastOf = (axis: 0 | 1 | 2): number =>
    drawn.reduce((least, { from }) => Math.min(least, from[axis]), Infinity);
  const plotHeight = Math.max(leastHeight, spanOf(drawn, up) * pixels) + 2 * margin;
  const frameWidth = Math.min(plotWidth, spanOf(drawn, across) * pixels + 2 * margin + labelRoom);
  const foot = offset + 24 + plotHeight;
  const [x0, y0] = [leastOf(across), leastOf(up)];
  const x = (mm: number): number => left + margin + (mm - x0) * pixels;
  const y = (mm: number): number => foot - margin - (mm - y0) * pixels;
  const tips = drawn.map(({ point, from, way }) => {
    const [fromX, fromY] = [x(from[across]), y(from[up])];
    const [toX, toY] = [fromX + way[across] * stretch * pixels, fromY - way[up] * stretch * pixels];
    const isOff = point.off === true;
    const moved = Math.max(Math.abs(way[across]), Math.abs(way[up])) >= 0.05;
    const words = isOff
      ? `${point.name} ${signedMillimetres(way[across])}, ${signedMillimetres(way[up])}`
      : point.name;
    return { point, fromX, fromY, toX, toY, isOff, moved, words: pieces(words, 28)[0] ?? '' };
  });
  const labels = placeLabels(
    tips.map(({ fromX, fromY, words, isOff }) => ({ x: fromX, y: fromY, words, isFirst: isOff })),
    { left: left + 2, right: left + frameWidth - 2, top: offset + 24, bottom: foot },
    tips.flatMap(({ fromX, fromY, toX, toY, moved }): readonly Box[] =>
      moved
        ? [
            [
              Math.min(fromX, toX) - 2,
              Math.min(fromY, toY) - 2,
              Math.max(fromX, toX) + 2,
              Math.max(fromY, toY) + 2,
            ],
          ]
        : [],
    ),
  );
  const markup = [
    text(left, offset + 14, title, 'font-weight="bold"'),
    `<rect x="${n(left)}" y="${n(offset + 24)}" width="${n(frameWidth)}" height="${n(plotHeight)}" fill="none" stroke="#767676"/>`,
    text(left + frameWidth + 8, foot - 4, `${names[0]} →`, ''),
    text(left - 28, offset + 38, `${names[1]} ↑`, ''),
    ...tips.map(({ point, fromX, fromY, toX, toY, isOff, moved }) =>
      [moved ? arrow(fromX, fromY, toX, toY, isOff) : '', mark(fromX, fromY, point.zero)].join(''),
    ),
    ...labels.map(({ x: at, y: height, words, anchor }) =>
      text(at, height, words, anchor === 'end' ? 'text-anchor="end"' : ''),
    ),
  ].join('\n');
  return { markup, height: 24 + plotHeight + 20 };
}

function mark(x: number, y: number, isZero: boolean): string {
  const style = 'fill="#ffffff" stroke="#111111" stroke-width="2"';
  return isZero
    ? `<rect x="${n(x - 5)}" y="${n(y - 5)}" width="10" height="10" ${style}/>`
    : `<circle cx="${n(x)}" cy="${n(y)}" r="4" ${style}/>`;
}

/** Off: thick with a full head. Kept: thin with an open one. */
function arrow(x1: number, y1: number, x2: number, y2: number, isOff: boolean): string {
  const stroke = isOff ? 'stroke="#9a2a00" stroke-width="3"' : 'stroke="#00507a" stroke-width="1.5"';
  const length = Math.hypot(x2 - x1, y2 - y1);
  if (length < 1) return line(x1, y1, x2, y2, stroke);
  const [ux, uy] = [(x2 - x1) / length, (y2 - y1) / length];
  const [size, half] = isOff ? [11, 6] : [8, 4];
  const [bx, by] = [x2 - ux * size, y2 - uy * size];
  const head = `${n(bx - uy * half)},${n(by + ux * half)} ${n(x2)},${n(y2)} ${n(bx + uy * half)},${n(by - ux * half)}`;
  return `${line(x1, y1, x2, y2, stroke)}${isOff ? `<polygon points="${head}" fill="#9a2a00"/>` : `<polyline points="${head}" fill="none" ${stroke}/>`}`;
}

function legend(at: number): readonly string[] {
  return [
    mark(left + 6, at - 4, true),
    text(left + 20, at, 'zero point', ''),
    mark(left + 116, at - 4, false),
    text(left + 128, at, 'point', ''),
    arrow(left + 180, at - 4, left + 220, at - 4, false),
    text(left + 228, at, 'within its tolerance', ''),
    arrow(left + 370, at - 4, left + 410, at - 4, true),
    text(left + 418, at, 'out of it, or not proven within (with its mm)', ''),
  ];
}

/** The drawing in words, for who cannot see it; every point stands in the table below. */
function described(drawn: readonly Drawn[], scale: string): string {
  const off = drawn.filter(({ point }) => point.off === true);
  const named = off
    .slice(0, 20)
    .map(
      ({ point, way: [dx, dy, dz] }) =>
        `${point.name}: x ${signedMillimetres(dx)}, y ${signedMillimetres(dy)}, z ${signedMillimetres(dz)} mm${point.toleranceMm === undefined ? '' : `, tolerance ${formatQuantity(point.toleranceMm, 'mm')}`}.`,
    );
  const more = off.length > named.length ? ` And ${String(off.length - named.length)} more.` : '';
  return `${String(drawn.length)} points from above and from the side, ${String(off.length)} of them out of tolerance or not proven within it. ${scale} ${named.join(' ')}${more}`;
}
