import { calledWith } from '../../facts/called-with.ts';
import { isOpen } from '../../facts/heat/exposure-verdict.ts';
import type { HeatedNeighbour } from '../../facts/heat/plan-heat.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';
import { cautions } from '../cautions.ts';
import { plannedPicture, seamWords } from './heat-pictures.ts';
import { heatPlot } from './heat-plot.ts';
import { howSure } from './heat-report.ts';
import type { HeatPlanReport, PlacedHeat } from './heat-report.ts';
import { strengthRange } from './heat-text.ts';
import type { HeatTextOptions } from './answer-blocks.ts';
import { heatWords } from './heat-words.ts';
import { paintWith } from '../paint.ts';
import type { Paint } from '../paint.ts';
import { visibleText } from '../visible-text.ts';
import { wrapText } from '../wrap-text.ts';

const indent = '  ';

/** The heats of plans: under each its neighbours and its picture. */
export function heatPlansText(
  plans: readonly HeatPlanReport[],
  { colour, columns }: HeatTextOptions,
): string {
  const paint = paintWith(colour);
  const blocks = plans.flatMap((plan) => planBlocks(plan, columns, paint));
  // Where no heat is shown there is nothing to be sure of, and nobody to warn.
  if (plans.every(({ heats }) => heats.length === 0)) return `${blocks.join('\n\n')}\n`;
  const sure = wrapText(`How sure: ${howSure}`, columns, '').join('\n');
  const care = cautions.flatMap((one) => wrapText(one, columns, '')).join('\n');
  return `${[...blocks, sure, care].join('\n\n')}\n`;
}

function planBlocks(
  { file, title, heats, notJudged }: HeatPlanReport,
  columns: number,
  paint: Paint,
): readonly string[] {
  const head = [
    paint.strong(visibleText(file)),
    ...(title === undefined ? [] : wrapText(visibleText(title), columns, indent)),
    ...notJudged.flatMap(({ sentence, place }) => {
      const where = place === undefined ? '' : `Line ${String(place.line)}, column ${String(place.column)}: `;
      return wrapText(visibleText(`Not judged: ${where}${sentence}`), columns, indent);
    }),
    ...(heats.length === 0 && notJudged.length === 0
      ? [`${indent}No heat of which a temperature is computed.`]
      : []),
  ];
  return [head.join('\n'), ...heats.map((placed) => heatBlock(placed, file, columns, paint))];
}

function heatBlock({ heat, line }: PlacedHeat, file: string, columns: number, paint: Paint): string {
  const { part, what, source, runs, seam, neighbours, statedCelsius } = heat;
  const [first] = runs;
  const wrapped = (text: string, lead: string): readonly string[] =>
    wrapText(visibleText(text), columns, lead);
  const name = [part, what].filter((word) => word !== undefined).join(', ');
  const stated = statedCelsius === undefined ? '' : ` (${formatQuantity(statedCelsius, '°C')} stated)`;
  const lines = [
    ...wrapped(`${name}, line ${String(line)}`, indent).map((one) => paint.strong(one)),
    ...(first === undefined
      ? []
      : wrapped(`Computed: ${heatWords(first.heat, source)}${stated}.`, indent + indent)),
    ...(seam === undefined ? [] : wrapped(`Seam${seamWords(seam)}.`, indent + indent)),
    ...(heat.open.length === 0 ? [] : wrapped(`NOT KNOWN: ${heat.open.join(' ')}`, indent + indent)),
    ...(neighbours.length === 0 && heat.open.length === 0
      ? [`${indent}${indent}Nothing is listed near it.`]
      : []),
    ...neighbours.flatMap((one) => neighbourLines(one, columns, paint)),
  ];
  const assumptions = [...new Set(neighbours.flatMap((one) => one.assumptions))];
  const assumed =
    assumptions.length === 0 ? [] : ['', ...wrapped(`Assumed: ${assumptions.join(' ')}`, indent + indent)];
  const plot = heatPlot(plannedPicture(heat, file), columns);
  return [...lines, ...assumed, ...(plot.length === 0 ? [] : ['', ...plot])].join('\n');
}

function neighbourLines(one: HeatedNeighbour, columns: number, paint: Paint): readonly string[] {
  const { name, victim, distanceMm, peakCelsius, peakAtSeconds, tensileLeft, verdict, clear } = one;
  const numbers = [
    distanceMm === undefined ? undefined : `at ${formatQuantity(distanceMm, 'mm')}`,
    peakCelsius === undefined ? undefined : `reaches ${formatQuantity(peakCelsius, '°C')}`,
    peakAtSeconds === undefined ? undefined : `after ${formatQuantity(peakAtSeconds, 's')}`,
  ].filter((word) => word !== undefined);
  const limits = [
    one.limitCelsius === undefined ? undefined : `limit ${formatQuantity(one.limitCelsius, '°C')}`,
    one.stopLimitCelsius === undefined
      ? undefined
      : `stop above ${formatQuantity(one.stopLimitCelsius, '°C')}`,
    one.secondsAboveLimit === undefined || one.secondsAboveLimit === 0
      ? undefined
      : `${formatQuantity(one.secondsAboveLimit, 's')} above the limit`,
    tensileLeft === undefined ? undefined : `${strengthRange(one)} of its strength left`,
  ].filter((word) => word !== undefined);
  const away = clear.ok
    ? clear.rule === undefined
      ? clear.distanceMm === 0
        ? 'No distance is needed.'
        : `Stay ${formatQuantity(clear.distanceMm, 'mm')} clear.`
      : `Stay ${formatQuantity(clear.distanceMm, 'mm')} clear (rule ${clear.rule}).`
    : `No stay-clear distance: ${clear.reason}`;
  const label = isOpen(verdict) ? verdict.toUpperCase() : verdict;
  const who = victim === undefined ? name : calledWith(name, victim);
  const sentences = [
    `${label}: ${[who, ...numbers].join(' ')}${limits.length === 0 ? '' : `; ${limits.join(', ')}`}.`,
    verdict === 'not in reach' ? '' : away,
    ...one.reasons,
  ];
  const text = sentences.filter((sentence) => sentence !== '').join(' ');
  const [opening = '', ...rest] = wrapText(
    visibleText(text),
    columns,
    `${indent}${indent}${indent}`,
    `${indent}${indent}`,
  );
  return [isOpen(verdict) ? opening.replace(label, paint.strong(label)) : opening, ...rest];
}
