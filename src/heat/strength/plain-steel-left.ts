import { peakOf } from './history-measures.ts';
import type { TemperatureHistory } from '../point-history.ts';
import { reTransformed, strengthRange } from './strength-answer.ts';
import type { Delivered, StrengthLeft } from './strength-answer.ts';
import { ac1Celsius, temperingParameterHours } from './tempering.ts';

/** 650 °C for 200 s: two holds of 90 s, and ten seconds each to heat up and cool down. */
const mostParameter = 17.304;
const mostCelsius = 650;

/**
 * Tensile strength left in mild and high-strength low-alloy sheet: kept up to 650 °C for 90 s, twice (a repairability
 * study of the steel industry, from memory, low confidence); beyond, unknown. How severe a history is, is told by
 * its Hollomon-Jaffe parameter, so that longer at a lower temperature counts too.
 *
 * The factors of EN 1993-1-2 (ky) are for hot steel and say nothing of what is left when it is cold again.
 */
export function plainSteelLeft(history: TemperatureHistory, { tensileMpa }: Delivered): StrengthLeft {
  const peak = peakOf(history);
  if (peak > ac1Celsius) return reTransformed;
  if (!isMildHeat(history)) {
    return {
      state: 'unknown',
      reason: 'hotter or longer than 650 °C for 90 s, twice: no figure for what is left',
    };
  }
  return strengthRange(
    {
      of: 'tensile strength',
      leastPercent: 100,
      mostPercent: 100,
      howSure: 'from memory',
      note: 'No loss is known up to 650 °C for 90 s, twice.',
    },
    tensileMpa,
  );
}

/** No more severe than 650 °C for 90 s, twice. */
export function isMildHeat(history: TemperatureHistory): boolean {
  return peakOf(history) <= mostCelsius && temperingParameterHours(history) <= mostParameter;
}
