import type { HeatExposure } from '../../facts/heat/heat-exposure.ts';
import type { HeatAnswer } from '../../facts/heat/heat-question.ts';
import type { Sought } from '../../heat/sheet/stay-clear.ts';
import type { SeamRun } from '../../facts/heat/heat-runs.ts';
import type { HeatedNeighbour } from '../../facts/heat/plan-heat.ts';
import type { HeatAnswerReport, HeatPlanReport, PlacedHeat } from './heat-report.ts';
import { howSure } from './heat-report.ts';
import type { UsedPack } from '../plan-report.ts';

interface Quantity {
  readonly value: number;
  readonly unit: string;
}

/** The answer as JSON, schemas/heat.schema.json. What cannot be computed is null, and `reason` says why. */
export function heatJson(report: HeatAnswerReport): string {
  const { answer, near, readings, planish, packs } = report;
  const { heat, question, clear, softenedWidth } = answer;
  const { operation } = question;
  return written({
    heat: 1,
    planish,
    packs,
    near: { asked: near, victim: answer.victim },
    stay_clear: clear.ok ? quantity(clear.distanceMm, 'mm', 0) : null,
    ...(clear.ok ? {} : { reason: clear.reason }),
    source: {
      word: operation.source ?? null,
      temperature: quantity(answer.statedCelsius, '°C'),
      counted: quantity(heat.sourceCelsius, '°C'),
      hold: quantity(heat.holdSeconds, 's'),
      times: heat.times,
      measured_by: operation.measured_by?.means ?? null,
    },
    sheet: {
      thickness: quantity(heat.thicknessMm, 'mm', 3),
      metal: heat.metal,
      class: question.metal ?? null,
      shape: question.shape ?? 'strip',
      radius: quantity(question.radiusMm, 'mm'),
      edge: quantity(heat.freeEndMm, 'mm'),
      convection: { value: heat.convection ?? 8, unit: 'W/m²K' },
      emissivity: heat.emissivity ?? 0.3,
      ambient: quantity(heat.ambientCelsius ?? 20, '°C'),
    },
    limit: limitAsJson(answer, report),
    softened_width: quantity(softenedWidth?.ok === true ? softenedWidth.widthMm : undefined, 'mm'),
    assumptions: [...readings, ...answer.assumptions],
    exposures: answer.exposures.map(exposureAsJson),
    how_sure: howSure,
  });
}

/** What the neighbour stands, and by which source. */
export function limitAsJson(
  answer: Pick<HeatAnswer, 'limit' | 'leastTensileLeft' | 'keepOff'>,
  { rulePack, limitSource }: Pick<HeatAnswerReport, 'rulePack' | 'limitSource'>,
): object {
  const { limit, keepOff } = answer;
  return {
    hold_above: quantity(limit.holdAboveCelsius, '°C'),
    stop_above: quantity(limit.stopAboveCelsius, '°C'),
    time_above:
      limit.timeAbove === undefined
        ? null
        : {
            temperature: quantity(limit.timeAbove.celsius, '°C'),
            at_most: quantity(limit.timeAbove.atMostSeconds, 's'),
          },
    tensile_left: answer.leastTensileLeft ?? null,
    keep_off:
      keepOff === undefined
        ? null
        : { distance: quantity(keepOff.distanceMm, 'mm'), rule: keepOff.rule, pack: rulePack },
    source: limitSource ?? null,
  };
}

function exposureAsJson(exposure: HeatExposure): object {
  const { longestHold, highestTemperature, strengthReason } = exposure;
  const reasons = [...exposure.reasons, ...(strengthReason === undefined ? [] : [strengthReason])];
  return {
    distance: quantity(exposure.distanceMm, 'mm', 1),
    peak: quantity(exposure.peakCelsius, '°C'),
    peak_at: quantity(exposure.peakAtSeconds, 's'),
    time_above_limit: quantity(exposure.secondsAboveLimit, 's'),
    tensile_left: rounded(exposure.tensileLeft),
    tensile_left_at_most: rounded(exposure.tensileLeftAtMost),
    verdict: exposure.verdict,
    ...(longestHold === undefined ? {} : { longest_hold: soughtAsJson(longestHold, 's') }),
    ...(highestTemperature === undefined
      ? {}
      : { highest_temperature: soughtAsJson(highestTemperature, '°C') }),
    ...(reasons.length === 0 ? {} : { reason: reasons.join(' ') }),
  };
}

/** `at_end`: the longest or hottest that is computed still keeps the limit. */
function soughtAsJson(sought: Sought, unit: string): object {
  return sought.ok
    ? { value: sought.rounded, unit, ...(sought.atEnd === true ? { at_end: true } : {}) }
    : { value: null, unit, reason: sought.reason };
}

/** The heats of plans as JSON, schemas/heat.schema.json. */
export function plansJson(
  plans: readonly HeatPlanReport[],
  head: { readonly planish: string; readonly packs: readonly UsedPack[] },
): string {
  return written({
    heat: 1,
    planish: head.planish,
    packs: head.packs,
    plans: plans.map(({ file, heats, notJudged }) => ({
      file,
      not_judged: notJudged.map(({ sentence, place }) => ({
        sentence,
        ...(place === undefined ? {} : { line: place.line }),
      })),
      heats: heats.map(heatAsJson),
    })),
    how_sure: howSure,
  });
}

function heatAsJson({ heat: planned, line }: PlacedHeat): object {
  const { runs } = planned;
  const [first] = runs;
  return {
    line,
    pointer: planned.at,
    part: planned.part ?? null,
    operation: planned.what,
    from: planned.from,
    source: {
      word: planned.source ?? null,
      temperature: quantity(planned.statedCelsius, '°C'),
      counted: quantity(first?.heat.sourceCelsius, '°C'),
      hold: quantity(first?.heat.holdSeconds, 's'),
      times: first?.heat.times ?? null,
    },
    ...(planned.seam === undefined ? {} : { seam: seamAsJson(planned.seam) }),
    exposures: planned.neighbours.map(neighbourAsJson),
    ...(planned.open.length === 0 ? {} : { reason: planned.open.join(' ') }),
  };
}

function seamAsJson({ heatInputKJPerMm, coolingSeconds, zoneWidthMm }: SeamRun): object {
  return {
    heat_input: quantity(heatInputKJPerMm, 'kJ/mm', 4),
    t85: quantity(coolingSeconds, 's'),
    haz_width: quantity(zoneWidthMm, 'mm'),
  };
}

function neighbourAsJson(one: HeatedNeighbour): object {
  return {
    name: one.name,
    victim: one.victim ?? null,
    distance: quantity(one.distanceMm, 'mm', 1),
    peak: quantity(one.peakCelsius, '°C'),
    peak_at: quantity(one.peakAtSeconds, 's'),
    time_above_limit: quantity(one.secondsAboveLimit, 's'),
    tensile_left: rounded(one.tensileLeft),
    tensile_left_at_most: rounded(one.tensileLeftAtMost),
    limit: { hold_above: quantity(one.limitCelsius, '°C'), stop_above: quantity(one.stopLimitCelsius, '°C') },
    stay_clear: one.clear.ok ? quantity(one.clear.distanceMm, 'mm', 0) : null,
    verdict: one.verdict,
    assumptions: one.assumptions,
    ...(one.clear.ok && one.reasons.length === 0
      ? {}
      : { reason: [...new Set([...one.reasons, ...(one.clear.ok ? [] : [one.clear.reason])])].join(' ') }),
  };
}

export function quantity(value: number | undefined, unit: string, digits = 1): Quantity | null {
  const rounding = rounded(value, digits);
  return rounding === null ? null : { value: rounding, unit };
}

/** More digits than the computation is good for only make files differ between machines. */
export function rounded(value: number | undefined, digits = 1): number | null {
  return value === undefined || !Number.isFinite(value) ? null : Number(value.toFixed(digits));
}

export function written(value: object): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}
