import type { Operation } from '../generated/plan-types.ts';
import type { Fact } from './fact.ts';
import { assumed, computed, computedOr, statedOr, unknown } from './make-fact.ts';
import { quantityOf } from './quantity-of.ts';
import type { OperationSurvey } from './survey.ts';

type HeatFact =
  | 'operation.source'
  | 'operation.peak'
  | 'operation.temperature'
  | 'operation.hot_time'
  | 'operation.times'
  | 'operation.measured_by'
  | 'operation.cooling';

/** The heat of a heat operation, as stated and with the instrument's allowance. */
export function heatFacts({ operation, at }: OperationSurvey): Readonly<Record<HeatFact, Fact>> {
  const hold = quantityOf(operation.hold, 'time');
  const { times } = operation;
  return {
    'operation.source': statedOr(operation.source, `${at}/source`, 'The heat source is not stated.'),
    'operation.peak': sourcePeak(operation, at),
    'operation.temperature': statedOr(
      quantityOf(operation.temperature, 'temperature'),
      `${at}/temperature`,
      'The highest temperature is not stated.',
    ),
    'operation.hot_time': computedOr(
      hold === undefined || times === undefined ? undefined : hold * times,
      `${at}/hold`,
      'Hold or number of heatings is not stated.',
    ),
    'operation.times': statedOr(times, `${at}/times`, 'How many times the place is heated is not stated.'),
    'operation.measured_by': statedOr(
      operation.measured_by?.means,
      `${at}/measured_by`,
      'How the temperature is measured is not stated.',
    ),
    'operation.cooling': statedOr(operation.cooling, `${at}/cooling`, 'How it cools is not stated.'),
  };
}

/** What a torch reaches on sheet when nobody measures, °C. Common practice, no source. */
const unmeasuredTorchCelsius = 900;

/**
 * The hottest that the heated zone may get, °C. Instruments err: contact and crayon 20 K, infra-red on a prepared spot 30 K
 * (common practice, no source). Infra-red on bare metal may read half the truth and counts as no measurement.
 */
export function sourcePeak(operation: Operation, at: string): Fact {
  const stated = quantityOf(operation.temperature, 'temperature');
  const place = `${at}/temperature`;
  const means = operation.measured_by?.means;
  const measured =
    means === 'temperature crayon' || means === 'contact probe'
      ? 20
      : means === 'infra-red on a prepared spot'
        ? 30
        : undefined;
  const torch = operation.source === 'torch' || operation.source === 'other';
  if (measured === undefined && torch && (stated ?? 0) < unmeasuredTorchCelsius) {
    return assumed(
      unmeasuredTorchCelsius,
      `A torch that nobody measures counts as ${String(unmeasuredTorchCelsius)} °C.`,
      place,
    );
  }
  if (stated === undefined) return unknown('The temperature of the heated zone is not stated.', place);
  return measured === undefined
    ? assumed(stated + 30, 'Nothing is stated that measures the temperature: 30 K are added.', place)
    : computed(stated + measured, place, `As stated, with ${String(measured)} K for the instrument.`);
}
