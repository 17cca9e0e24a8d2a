import type { FitShown, MeasuringShown, PointShown } from '../../facts/measuring/measuring-shown.ts';
import { fitCell } from '../fit-cell.ts';
import { signedMillimetres } from './signed-millimetres.ts';
import { textWidth } from '../text-width.ts';
import { visibleText } from '../visible-text.ts';
import { wrapText } from '../wrap-text.ts';

const indent = '  ';
const deep = '       ';
/** As many as a reader takes in; the rest stands in the JSON report. */
const mostRows = 5;
/** A name longer than this is cut, so that the numbers stay in their columns. */
const widestName = 16;

/** The worst points of the last measuring, by axis, with the datum that they are reckoned on. */
export function measuringLines({ fits, points }: MeasuringShown, columns: number): readonly string[] {
  const last = fits.at(-1);
  if (last === undefined) return [];
  const reckoned = points.filter((point) => point[last.occasion] !== undefined);
  const shown = reckoned.slice(0, mostRows);
  // Readings of another shape than a body give no deviation; a finding says so.
  if (shown.length === 0) return [];
  const rows = [['Point', 'On', 'x', 'y', 'z', 'Tolerance'], ...shown.map((point) => rowOf(point, last))];
  const widths = [0, 1, 2, 3, 4, 5].map((at) => Math.max(...rows.map((row) => textWidth(row[at] ?? ''))));
  const more = reckoned.length - shown.length;
  const worst = more > 0 ? ` The worst ${String(shown.length)} of ${String(reckoned.length)} points:` : '';
  return [
    `${indent}Measured ${last.occasion} the repair, mm off the data sheet`,
    ...wrapText(`${fitSentence(last)}${worst}`, columns, deep),
    ...rows.map((row) =>
      `${deep}${row.map((cell, at) => aligned(cell, widths[at] ?? 0, at)).join('  ')}`.trimEnd(),
    ),
  ];
}

function fitSentence({ zeroPoints, residualMm }: FitShown): string {
  if (residualMm === undefined) return 'As written: the zero points carry no fit.';
  return visibleText(
    `Fitted to it on ${zeroPoints.join(', ')}; at most ${residualMm.toFixed(1)} is left there.`,
  );
}

function rowOf(point: PointShown, { occasion }: FitShown): readonly string[] {
  const way = point[occasion] ?? [NaN, NaN, NaN];
  return [
    `${cut(point.name)}${point.zero ? ' (zero)' : ''}`,
    cut(point.part ?? ''),
    ...way.map(signedMillimetres),
    point.toleranceMm === undefined ? 'unknown' : String(Number(point.toleranceMm.toFixed(2))),
  ];
}

function cut(name: string): string {
  const [first = '', ...more] = fitCell(visibleText(name), widestName);
  return more.length > 0 ? `${first}…` : first;
}

/** Names to the left, numbers to the right. */
function aligned(cell: string, width: number, column: number): string {
  const gap = ' '.repeat(Math.max(0, width - textWidth(cell)));
  return column < 2 ? cell + gap : gap + cell;
}
