import type { SeamExposure, SeamFigure } from '../../facts/heat/seam-question.ts';
import { quantity, rounded, written } from './heat-json.ts';
import { seamHowSure } from './heat-report.ts';
import type { SeamAnswerReport } from './heat-report.ts';
import { limitAsJson } from './heat-json.ts';

/** The answer to a seam as JSON, schemas/heat.schema.json. What cannot be computed is null, and `reason` says why. */
export function seamJson(report: SeamAnswerReport): string {
  const { answer, near, readings, planish, packs } = report;
  const { question, heatInput, coolingTime, zoneWidth, zones, softening, clear } = answer;
  const { joint } = question;
  const reasons = [heatInput, coolingTime, zoneWidth, clear].flatMap((one) => (one.ok ? [] : [one.reason]));
  return written({
    heat: 1,
    planish,
    packs,
    near: { asked: near, victim: answer.victim },
    stay_clear: clear.ok ? quantity(clear.distanceMm, 'mm', 0) : null,
    ...(reasons.length === 0 ? {} : { reason: reasons.join(' ') }),
    seam: {
      method: joint.method ?? null,
      thickness: question.thickness.trim(),
      class: question.metal ?? null,
      heat_input: valueOf(heatInput, 'kJ/mm', 4),
      t85: valueOf(coolingTime, 's', 1),
      haz_width: valueOf(zoneWidth, 'mm', 1),
      zones:
        zones?.ok === true
          ? {
              austenitised: quantity(zones.austenitisedMm, 'mm'),
              transformed: quantity(zones.transformedMm, 'mm'),
              cooling_rate: quantity(zones.coolingKelvinPerSecond, 'K/s'),
              martensite: [rounded(zones.martensiteLeast, 3), rounded(zones.martensiteMost, 3)],
              hardness: zones.hardnessHv?.map((value) => rounded(value, 0)) ?? null,
              note: zones.note,
            }
          : null,
      softening:
        softening?.ok === true
          ? {
              kept: [softening.leastPercent, softening.mostPercent],
              of: softening.of,
              source: softening.source,
              how_sure: softening.howSure,
            }
          : null,
    },
    limit: limitAsJson(answer, report),
    assumptions: [...readings, ...answer.assumptions],
    exposures: answer.exposures.map(exposureAsJson),
    how_sure: seamHowSure,
  });
}

function valueOf(figure: SeamFigure, unit: string, digits: number): object | null {
  return figure.ok ? quantity(figure.value, unit, digits) : null;
}

const noHistory = 'Beside one pass a peak is computed and no history.';

function exposureAsJson({ distanceMm, peakCelsius, movingCelsius, verdict, reasons }: SeamExposure): object {
  return {
    distance: quantity(distanceMm, 'mm', 1),
    peak: quantity(peakCelsius, '°C'),
    moving_source: quantity(movingCelsius, '°C'),
    peak_at: null,
    time_above_limit: null,
    tensile_left: null,
    verdict,
    reason: [noHistory, ...reasons].join(' '),
  };
}
