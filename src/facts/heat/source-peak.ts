import type { Operation } from '../../generated/plan-types.ts';
import { worstSourceCelsius } from '../../heat/source-reach.ts';
import type { HeatPractice } from '../context.ts';
import type { Fact } from '../fact.ts';
import { assumed, computed, unknown } from '../make-fact.ts';
import { quantityOf } from '../quantity-of.ts';

const calledSource = {
  torch: 'A torch',
  induction: 'An inductor',
  'hot air': 'Hot air',
  'infra-red panel': 'An infra-red panel',
  oven: 'An oven',
  other: 'A source',
} as const satisfies Readonly<Record<NonNullable<Operation['source']>, string>>;

export interface SourcePeak {
  readonly fact: Fact;
  /** Why the worst is taken, where it is. */
  readonly because?: string;
  /** What was added to the stated temperature, K; absent where the peak is not made from it. */
  readonly allowanceKelvin?: number;
}

/**
 * The hottest that the heated zone may get, °C: as stated, with what the packs add for the means that measures it. What
 * nobody measures counts as the worst that its source reaches, whatever is stated, and so does every source of which no
 * temperature is stated. Infra-red on bare metal may read half the truth and counts as no measurement.
 */
export function sourcePeak(operation: Operation, at: string, { allowanceKelvin }: HeatPractice): SourcePeak {
  const { source } = operation;
  const stated = quantityOf(operation.temperature, 'temperature');
  const place = `${at}/temperature`;
  const means = operation.measured_by?.means;
  const isMeasured = means !== undefined && means !== 'none' && means !== 'infra-red';
  const worst = source === undefined ? undefined : worstSourceCelsius[source];
  const unmeasured = worst ?? worstSourceCelsius.other;
  if (!isMeasured && stated !== undefined && stated < unmeasured) {
    return {
      fact: assumed(
        unmeasured,
        `${source === undefined ? 'A source' : calledSource[source]} that nobody measures counts as ${String(unmeasured)} °C, the worst that it reaches.`,
        place,
      ),
      because: 'nobody measures it',
    };
  }
  if (stated === undefined) {
    return {
      because: isMeasured ? 'no temperature is stated' : 'nobody states or measures it',
      fact:
        worst === undefined
          ? unknown('The temperature of the heated zone is not stated.', place)
          : assumed(
              worst,
              `The temperature of the heated zone is not stated: ${String(worst)} °C is taken, the worst of ${source ?? 'such a source'}.`,
              place,
            ),
    };
  }
  const allowance = allowanceKelvin.get(isMeasured ? means : 'none');
  if (allowance === undefined) {
    return {
      fact: unknown(`The rule packs do not say what ${means ?? 'no measuring'} may read too low.`, place),
    };
  }
  const kelvin = `${String(allowance)} K`;
  return {
    fact: isMeasured
      ? computed(stated + allowance, place, `The temperature as stated, with ${kelvin} for the instrument.`)
      : assumed(
          stated + allowance,
          `Nothing is stated that measures the temperature: ${kelvin} are added.`,
          place,
        ),
    allowanceKelvin: allowance,
  };
}
