import { csv } from '../csv.ts';
import { rounded } from './heat-csv.ts';
import type { SeamAnswerReport } from './heat-report.ts';

/** One row a distance beside a seam, in the form of `heatCsv`. */
export function seamCsv({ answer, near }: SeamAnswerReport): string {
  const { question, heatInput, coolingTime, zoneWidth, clear, victim, limit } = answer;
  const value = (figure: typeof heatInput, digits: number): number | undefined =>
    rounded(figure.ok ? figure.value : undefined, digits);
  const head = [
    ...['near', 'victim', 'method', 'heat_input_kj_per_mm', 't85_s', 'haz_width_mm', 'stay_clear_mm'],
    ...['limit_celsius', 'distance_mm', 'peak_celsius', 'moving_source_celsius', 'verdict', 'reason'],
  ];
  const rows = answer.exposures.map((one) => [
    near,
    victim,
    question.joint.method,
    value(heatInput, 4),
    value(coolingTime, 1),
    value(zoneWidth, 1),
    clear.ok ? clear.distanceMm : undefined,
    rounded(limit.holdAboveCelsius),
    rounded(one.distanceMm),
    rounded(one.peakCelsius),
    rounded(one.movingCelsius),
    one.verdict,
    [...(clear.ok ? [] : [clear.reason]), ...one.reasons].join(' '),
  ]);
  return csv([head, ...rows]);
}
