import { csv } from '../csv.ts';
import type { CsvCell } from '../csv.ts';
import type { HeatAnswerReport, HeatPlanReport } from './heat-report.ts';

/** One row a distance, RFC 4180: header, comma, CRLF, quotes where needed. Empty where nothing can be computed; then `reason` says why. */
export function heatCsv({ answer, near }: HeatAnswerReport): string {
  const { heat, clear, victim, limit, question } = answer;
  const head = [
    ...['near', 'victim', 'source', 'counted_celsius', 'hold_s', 'times', 'sheet_mm', 'metal'],
    ...['stay_clear_mm', 'limit_celsius', 'distance_mm', 'peak_celsius', 'peak_at_s', 'time_above_limit_s'],
    ...['tensile_left_percent', 'verdict', 'reason', 'tensile_left_at_most_percent'],
  ];
  const rows = answer.exposures.map((one) => [
    near,
    victim,
    question.operation.source,
    rounded(heat.sourceCelsius),
    rounded(heat.holdSeconds),
    heat.times,
    rounded(heat.thicknessMm, 3),
    heat.metal,
    clear.ok ? clear.distanceMm : undefined,
    rounded(limit.holdAboveCelsius),
    rounded(one.distanceMm),
    rounded(one.peakCelsius),
    rounded(one.peakAtSeconds),
    rounded(one.secondsAboveLimit),
    rounded(one.tensileLeft),
    one.verdict,
    [...(clear.ok ? [] : [clear.reason]), ...one.reasons, one.strengthReason ?? ''].join(' ').trim(),
    rounded(one.tensileLeftAtMost),
  ]);
  return csv([head, ...rows]);
}

/** One row a neighbour. */
export function plansCsv(plans: readonly HeatPlanReport[]): string {
  const head = [
    ...['file', 'line', 'part', 'operation', 'from', 'neighbour', 'victim', 'distance_mm', 'peak_celsius'],
    ...['peak_at_s', 'limit_celsius', 'time_above_limit_s', 'tensile_left_percent', 'stay_clear_mm'],
    ...['verdict', 'reason'],
  ];
  const rows = plans.flatMap(({ file, heats, notJudged }) => [
    ...notJudged.map(({ sentence, place }) => [
      ...[file, place?.line, ...Array.from({ length: 12 }, () => undefined), 'not judged', sentence],
    ]),
    ...heats.flatMap(({ heat, line }): readonly (readonly CsvCell[])[] => [
      ...heat.open.map((reason) => [
        ...[file, line, heat.part, heat.what, heat.from, ...Array.from({ length: 9 }, () => undefined)],
        'not known',
        reason,
      ]),
      ...heat.neighbours.map((one) => [
        file,
        line,
        heat.part,
        heat.what,
        heat.from,
        one.name,
        one.victim,
        rounded(one.distanceMm),
        rounded(one.peakCelsius),
        rounded(one.peakAtSeconds),
        rounded(one.limitCelsius),
        rounded(one.secondsAboveLimit),
        rounded(one.tensileLeft),
        one.clear.ok ? one.clear.distanceMm : undefined,
        one.verdict,
        [...one.reasons, ...(one.clear.ok ? [] : [one.clear.reason])].join(' '),
      ]),
    ]),
  ]);
  return csv([head, ...rows]);
}

export function rounded(value: number | undefined, digits = 1): number | undefined {
  return value === undefined || !Number.isFinite(value) ? undefined : Number(value.toFixed(digits));
}
