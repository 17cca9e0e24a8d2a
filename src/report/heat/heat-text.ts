import type { HeatAnswer } from '../../facts/heat/heat-question.ts';
import type { HeatExposure } from '../../facts/heat/heat-exposure.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';
import { answerBlocks, joinBlocks } from './answer-blocks.ts';
import type { HeatTextOptions } from './answer-blocks.ts';
import { clearSentence } from './clear-sentence.ts';
import { answerPicture } from './heat-pictures.ts';
import { heatPlot } from './heat-plot.ts';
import { howSure } from './heat-report.ts';
import type { HeatAnswerReport } from './heat-report.ts';
import { heatWords } from './heat-words.ts';

const indent = '  ';

/** How far to stay away, first and in one sentence; then the numbers, the picture, what was assumed, and how sure it is. */
export function heatText(report: HeatAnswerReport, options: HeatTextOptions): string {
  const { answer } = report;
  const { first, wrapped, listed, last } = answerBlocks(options);
  const softened = softenedSentence(answer);
  return joinBlocks([
    first(clearSentence(answer, report)),
    wrapped(countedSentence(answer)),
    table(answer),
    softened === undefined ? '' : wrapped(softened),
    listed('Not computed', reasonsOf(answer)),
    searchTable(answer),
    answer.question.distancesMm === undefined ? '' : wrapped(searched),
    heatPlot(answerPicture(answer), options.columns).join('\n'),
    ...last(report, answer.assumptions, howSure),
  ]);
}

const searched =
  'Longest hold and hottest: what keeps the limit at that place, the other left as it is; rounded down, at most 4 % or 5 K less than could be.';

/** Of what the table shows; that a strength is computed for hardened steel alone is seen from the missing column. */
function reasonsOf({ exposures, leastTensileLeft }: HeatAnswer): readonly string[] {
  const all = exposures.flatMap(({ reasons, strengthReason, longestHold, highestTemperature }) => [
    ...reasons,
    ...(leastTensileLeft === undefined || strengthReason === undefined ? [] : [strengthReason]),
    ...(longestHold?.ok === false ? [`Longest hold: ${longestHold.reason}`] : []),
    ...(highestTemperature?.ok === false ? [`Hottest: ${highestTemperature.reason}`] : []),
  ]);
  return [...new Set(all)];
}

function countedSentence({ heat, statedCelsius, question }: HeatAnswer): string {
  const stated =
    statedCelsius === undefined ? 'no temperature stated' : `${formatQuantity(statedCelsius, '°C')} stated`;
  const edge = heat.freeEndMm === undefined ? '' : `; free end at ${formatQuantity(heat.freeEndMm, 'mm')}`;
  return `Computed: ${heatWords(heat, question.operation.source)} (${stated})${edge}.`;
}

/** Only of hardened steel, and only where a rule says what it must keep. */
function softenedSentence({ softenedWidth, leastTensileLeft }: HeatAnswer): string | undefined {
  if (softenedWidth === undefined || leastTensileLeft === undefined) return undefined;
  const loss = formatQuantity(100 - leastTensileLeft, '%');
  return softenedWidth.ok
    ? `Softened: up to ${formatQuantity(Math.ceil(softenedWidth.widthMm), 'mm')} from the heated zone more than ${loss} of its strength must be reckoned lost.`
    : `Softened: not known how far; ${softenedWidth.reason}.`;
}

type Column = readonly [head: string, cell: (exposure: HeatExposure) => string];

function table(answer: HeatAnswer): string {
  const { limit, exposures, leastTensileLeft } = answer;
  const { holdAboveCelsius: hold } = limit;
  const columns: readonly Column[] = [
    ['at', ({ distanceMm }) => formatQuantity(distanceMm, 'mm')],
    ['peak', ({ peakCelsius }) => quantity(peakCelsius, '°C')],
    ['after', ({ peakAtSeconds }) => quantity(peakAtSeconds, 's')],
    ...(hold === undefined
      ? []
      : [
          [
            `above ${formatQuantity(hold, '°C')}`,
            ({ secondsAboveLimit }: HeatExposure) => quantity(secondsAboveLimit, 's'),
          ] as const,
        ]),
    ...(leastTensileLeft === undefined
      ? []
      : [['strength', (one: HeatExposure) => strengthRange(one)] as const]),
  ];
  return laidOut(columns, exposures, ({ verdict }) => verdict);
}

/** What would keep the limit; a table of its own, since both together are wider than a terminal. */
function searchTable({ exposures }: HeatAnswer): string {
  if (exposures.every(({ longestHold }) => longestHold === undefined)) return '';
  const columns: readonly Column[] = [
    ['at', ({ distanceMm }) => formatQuantity(distanceMm, 'mm')],
    ['longest hold', (one) => sought(one.longestHold, 's')],
    ['hottest', (one) => sought(one.highestTemperature, '°C')],
  ];
  return laidOut(columns, exposures, () => '');
}

function laidOut(
  columns: readonly Column[],
  exposures: readonly HeatExposure[],
  tail: (exposure: HeatExposure) => string,
): string {
  const rows = [
    columns.map(([head]) => head),
    ...exposures.map((exposure) => columns.map(([, cell]) => cell(exposure))),
  ];
  const widths = columns.map((_, index) => Math.max(...rows.map((row) => row[index]?.length ?? 0)));
  return rows
    .map((row, index) => {
      const cells = row.map((cell, column) => cell.padStart(widths[column] ?? 0)).join('  ');
      const exposure = exposures[index - 1];
      return `${indent}${cells}${exposure === undefined ? '' : `  ${tail(exposure)}`}`.trimEnd();
    })
    .join('\n');
}

/** The safe end first; one figure where both round to the same. */
export function strengthRange({
  tensileLeft: least,
  tensileLeftAtMost: most,
}: Pick<HeatExposure, 'tensileLeft' | 'tensileLeftAtMost'>): string {
  if (least === undefined) return '?';
  // Outwards, so that the range never looks narrower than it is.
  const [low, high] = [Math.floor(least), Math.ceil(most ?? least)];
  return most === undefined || low === high
    ? formatQuantity(least, '%')
    : `${String(low)} to ${formatQuantity(high, '%')}`;
}

function quantity(value: number | undefined, unit: string): string {
  return value === undefined ? '?' : formatQuantity(value, unit);
}

function sought(found: HeatExposure['longestHold'], unit: string): string {
  // Why there is none stands below the table.
  if (found?.ok !== true) return '-';
  return `${found.atEnd === true ? 'any up to ' : ''}${formatQuantity(found.rounded, unit)}`;
}
