import type { SeamAnswer, SeamExposure, SeamFigure } from '../../facts/heat/seam-question.ts';
import { formatQuantity } from '../../quantity/format-quantity.ts';
import { answerBlocks, joinBlocks } from './answer-blocks.ts';
import type { HeatTextOptions } from './answer-blocks.ts';
import { clearSentence } from './clear-sentence.ts';
import { seamPicture } from './heat-pictures.ts';
import { heatPlot } from './heat-plot.ts';
import { seamHowSure } from './heat-report.ts';
import type { SeamAnswerReport } from './heat-report.ts';

const indent = '  ';

/** How far to stay away from a seam, its figures, a table by distance, the picture, what was assumed, and how sure it is. */
export function seamText(report: SeamAnswerReport, options: HeatTextOptions): string {
  const { answer } = report;
  const { first, wrapped, listed, last } = answerBlocks(options);
  return joinBlocks([
    first(clearSentence(answer, report)),
    listed('The seam', figures(answer)),
    table(answer.exposures),
    listed('Not computed', [...new Set(answer.exposures.flatMap(({ reasons }) => reasons))]),
    answer.exposures.some(({ movingCelsius }) => movingCelsius !== undefined) ? wrapped(moving) : '',
    heatPlot(seamPicture(answer), options.columns).join('\n'),
    ...last(report, answer.assumptions, seamHowSure),
  ]);
}

const moving =
  'Moving source: the same seam by the formula of Rosenthal, which knows the travel speed; a cross-check, as it loses nothing to air either.';

function figures({ heatInput, coolingTime, zoneWidth, zones, softening }: SeamAnswer): readonly string[] {
  const told = (what: string, figure: SeamFigure, unit: string, digits: number): string =>
    figure.ok
      ? `${what}: ${formatQuantity(Number(figure.value.toFixed(digits)), unit)}.`
      : `${what}: not known. ${figure.reason}`;
  return [
    told('Heat input after the efficiency of the process', heatInput, 'kJ/mm', 3),
    told('Heated past 720 °C, beside the fused metal on each side', zoneWidth, 'mm', 1),
    told('Cooling from 800 to 500 °C, an order of magnitude on sheet', coolingTime, 's', 0),
    ...(zones === undefined ? [] : [zoneSentence(zones)]),
    ...(softening === undefined ? [] : [softeningSentence(softening)]),
  ];
}

function zoneSentence(zones: NonNullable<SeamAnswer['zones']>): string {
  if (!zones.ok) return `Zones of hardened steel: ${zones.reason}.`;
  const { austenitisedMm, transformedMm, coolingKelvinPerSecond, martensiteLeast, martensiteMost } = zones;
  const share = (value: number): string => formatQuantity(Math.round(value * 100), '%');
  const hardness =
    zones.hardnessHv === undefined
      ? ''
      : `, of ${zones.hardnessHv.map((value) => String(Math.round(value))).join(' to ')} HV`;
  return `As 22MnB5: hardened anew or not up to ${formatQuantity(Number(austenitisedMm.toFixed(1)), 'mm')} (Ac3), a mixture up to ${formatQuantity(Number(transformedMm.toFixed(1)), 'mm')} (Ac1), tempered beyond. At ${formatQuantity(Number(coolingKelvinPerSecond.toPrecision(2)), 'K/s')} the first zone becomes ${share(martensiteLeast)} to ${share(martensiteMost)} martensite${hardness}: ${zones.note}.`;
}

function softeningSentence(softening: NonNullable<SeamAnswer['softening']>): string {
  if (!softening.ok) return `Softest place beside the weld: ${softening.reason}.`;
  const { leastPercent, mostPercent, of, source, howSure } = softening;
  const share =
    leastPercent === mostPercent
      ? formatQuantity(leastPercent, '%')
      : `${String(leastPercent)} to ${formatQuantity(mostPercent, '%')}`;
  return `Softest place beside the weld: keeps ${share} of the ${of} (${howSure}; ${source}).`;
}

function table(exposures: readonly SeamExposure[]): string {
  const hasMoving = exposures.some(({ movingCelsius }) => movingCelsius !== undefined);
  const cells = exposures.map(({ distanceMm, peakCelsius, movingCelsius }) => [
    formatQuantity(distanceMm, 'mm'),
    celsius(peakCelsius),
    ...(hasMoving ? [celsius(movingCelsius)] : []),
  ]);
  const rows = [['at', 'peak', ...(hasMoving ? ['moving source'] : [])], ...cells];
  const widths = (rows[0] ?? []).map((_, index) => Math.max(...rows.map((row) => row[index]?.length ?? 0)));
  return rows
    .map((row, index) => {
      const line = row.map((cell, column) => cell.padStart(widths[column] ?? 0)).join('  ');
      const verdict = index === 0 ? '' : `  ${exposures[index - 1]?.verdict ?? ''}`;
      return `${indent}${line}${verdict}`.trimEnd();
    })
    .join('\n');
}

function celsius(value: number | undefined): string {
  return value === undefined ? '?' : formatQuantity(Math.round(value), '°C');
}
