import type { Operation } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { isColdByThen } from './heat-of-sibling.ts';
import { heatsOfPlace } from './heats-of-place.ts';
import { computed, computedOr, contradicted, statedOr, unknown } from '../make-fact.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { dayOf, listOf, quantityOf, whenOf } from '../quantity-of.ts';
import { sourcePeak } from './source-peak.ts';
import { isThermalCut } from './thermal-cut.ts';
import type { OperationSurvey, Survey } from '../survey.ts';
import { measuredBeside } from './measured-beside.ts';
import { allYes } from '../tri-state.ts';

type HeatFact =
  | 'operation.source'
  | 'operation.cut_with'
  | 'operation.thermal_cut'
  | 'operation.peak'
  | 'operation.peak_because'
  | 'operation.temperature'
  | 'operation.hold'
  | 'operation.limit_stated'
  | 'operation.limit_kept'
  | 'operation.times'
  | 'operation.measured_by'
  | 'operation.measured_at'
  | 'operation.measured_beside'
  | 'operation.instrument'
  | 'operation.cooling'
  | 'operation.pulled_cold';

/** The heat of a heat operation, as stated and with the instrument's allowance. */
export function heatFacts(survey: Survey, one: OperationSurvey): Readonly<Record<HeatFact, Fact>> {
  const { operation, at } = one.heatOf ?? one;
  const heats = heatsOfPlace(one).map(({ operation: heat }) => heat);
  const peak = sourcePeak(operation, at, survey.context.practice);
  return {
    'operation.source': statedOr(operation.source, `${at}/source`, 'The heat source is not stated.'),
    'operation.cut_with': statedOr(
      one.operation.cut_with,
      `${one.at}/cut_with`,
      'What it is cut with is not stated.',
    ),
    'operation.thermal_cut': computed(isThermalCut(one.operation), `${one.at}/cut_with`),
    'operation.peak': peak.fact,
    'operation.peak_because': computedOr(
      peak.because,
      `${at}/temperature`,
      'The temperature is stated and measured, or the source is not stated.',
    ),
    'operation.temperature': statedOr(
      quantityOf(operation.temperature, 'temperature'),
      `${at}/temperature`,
      'The highest temperature is not stated.',
    ),
    'operation.hold': computedOr(
      longest(heats.map(({ hold }) => quantityOf(hold, 'time'))),
      `${at}/hold`,
      'How long the place is held hot is not stated.',
    ),
    'operation.times': computedOr(
      sum(heats.map(({ times }) => times)),
      `${at}/times`,
      'How many times the place is heated is not stated.',
    ),
    'operation.limit_stated': computed(limitStated(survey, one.heatOf ?? one), `${at}/limit`),
    'operation.limit_kept': limitKept(one.heatOf ?? one, heats),
    'operation.measured_by': statedOr(
      operation.measured_by?.means,
      `${at}/measured_by`,
      'How the temperature is measured is not stated.',
    ),
    'operation.measured_at': statedOr(
      operation.measured_by?.place,
      `${at}/measured_by/place`,
      'Where the temperature is measured is not stated.',
    ),
    'operation.measured_beside': computedOr(
      measuredBeside(operation.measured_by?.place),
      `${at}/measured_by/place`,
      'It is read in the heated place, or where is not stated.',
    ),
    'operation.instrument': instrument(survey, operation, at),
    'operation.cooling': statedOr(operation.cooling, `${at}/cooling`, 'How it cools is not stated.'),
    'operation.pulled_cold': pulledCold(one),
  };
}

function pulledCold({ operation, at, heatOf: heat }: OperationSurvey): Fact {
  const place = `${at}/done`;
  return heat !== undefined && isColdByThen(heat.operation, operation)
    ? contradicted(`${operation.done ?? ''}, the heat ${heat.operation.done ?? ''}`, place, [
        `${heat.at}/done`,
      ])
    : unknown('It is not pulled in the heat of an entry before, or not long after it.', place);
}

/** A crayon melts at its mark and falls out of no calibration. */
function instrument(survey: Survey, { measured_by: by, done }: Operation, at: string): Fact {
  const place = `${at}/measured_by/calibration_due`;
  const due = dayOf(by?.calibration_due);
  const isCalibrated = by?.means !== 'temperature crayon' && by?.means !== 'none';
  if (due === undefined || !isCalibrated)
    return unknown('No day is written until which an instrument is calibrated.', place);
  return computed((whenOf(done)?.day ?? survey.context.asOfDay) <= due ? 'in date' : 'overdue', place);
}

function sum(values: readonly (number | undefined)[]): number | undefined {
  let total = 0;
  for (const value of values) {
    if (value === undefined) return undefined;
    total += value;
  }
  return total;
}

function longest(values: readonly (number | undefined)[]): number | undefined {
  const known = values.filter((value) => value !== undefined);
  return known.length < values.length ? undefined : Math.max(...known);
}

function limitStated(survey: Survey, { operation, restsOn }: OperationSurvey): boolean {
  const { limit } = operation;
  if (limit?.temperature === undefined) return false;
  const own = listOf(limit.cite);
  return own.length === 0
    ? restsOn?.standing === 'covers'
    : own.some((cite) => coversVehicle(survey, cite.reference));
}

function limitKept({ operation, at }: OperationSurvey, heats: readonly Operation[]): Fact {
  const { limit } = operation;
  const place = `${at}/limit`;
  if (limit === undefined) return unknown('No limit of a page is stated.', place);
  const pairs = [
    [quantityOf(operation.temperature, 'temperature'), quantityOf(limit.temperature, 'temperature')],
    [longest(heats.map(({ hold }) => quantityOf(hold, 'time'))), quantityOf(limit.time, 'time')],
    [sum(heats.map(({ times }) => times)), limit.times],
  ] as const;
  const kept = allYes(
    pairs.map(([value, most]) =>
      most === undefined ? true : value === undefined ? undefined : value <= most,
    ),
  );
  return computedOr(kept, place, 'What the page limits is not stated of this heat.');
}
