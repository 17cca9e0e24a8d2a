import { line, n, text } from '../report/svg-elements.ts';

const [width, height, left, bottom, top] = [480, 200, 36, 40, 16];

/** How many students have which tenth of the points, as an SVG with the numbers in it. */
export function tenthsPicture(tenths: readonly number[]): string {
  const most = Math.max(1, ...tenths);
  const step = (width - left) / tenths.length;
  const floor = height - bottom;
  const bars = tenths.flatMap((count, index) => {
    const x = left + index * step;
    const high = ((floor - top) * count) / most;
    return [
      ...(count === 0
        ? []
        : [
            `<rect x="${n(x + 4)}" y="${n(floor - high)}" width="${n(step - 8)}" height="${n(high)}" fill="#2b5d8a"/>`,
            text(x + step / 2, floor - high - 3, String(count), 'text-anchor="middle"'),
          ]),
      text(
        x + step / 2,
        floor + 14,
        `${String(index * 10)}–${String(index * 10 + 10)}`,
        'text-anchor="middle"',
      ),
    ];
  });
  const said = tenths
    .map((count, index) =>
      count === 0 ? '' : `${String(count)} from ${String(index * 10)} to ${String(index * 10 + 10)} %`,
    )
    .filter((one) => one !== '')
    .join(', ');
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${String(width)} ${String(height)}" width="${String(width)}" height="${String(height)}" role="img" aria-label="Students by share of the points: ${said}" font-family="sans-serif" font-size="11">
${line(left, floor, width, floor, 'stroke="#111"')}
${bars.join('\n')}
${text(left + (width - left) / 2, height - 6, 'Share of the points, %', 'text-anchor="middle"')}
</svg>`;
}
