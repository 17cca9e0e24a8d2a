import { peakOf, secondsAboveIn } from './history-measures.ts';
import { martensiteLeft } from './martensite-left.ts';
import type { TemperatureHistory } from '../point-history.ts';
import { reTransformed, strengthRange } from './strength-answer.ts';
import type { Delivered, StrengthLeft } from './strength-answer.ts';
import { ac1Celsius } from './tempering.ts';

/**
 * Tensile strength left in dual-phase, complex-phase and TRIP sheet. No curve is published for them that could be used.
 *
 * Up to 250 °C, and 20 min in all above 200 °C: only the martensite (and bainite) in it softens, the ferrite does not, so
 * at worst it loses as large a share as steel that is martensite throughout: that is the least. The most is no loss:
 * dual-phase steel tempered at 200 °C, and a 980 MPa one at 300 °C for 20 min, kept its tensile strength in published
 * trials. Hotter or longer: unknown. There other trials found the strength falling within seconds, and in TRIP
 * steel the retained austenite falls apart as well.
 */
export function multiphaseLeft(
  kind: 'dual-phase' | 'complex-phase' | 'TRIP',
  history: TemperatureHistory,
  { tensileMpa }: Delivered,
): StrengthLeft {
  if (peakOf(history) > ac1Celsius) return reTransformed;
  if (peakOf(history) > 250 || secondsAboveIn(history, 200) > 1200) {
    return {
      state: 'unknown',
      reason: `${kind} steel above 250 °C, or above 200 °C for more than 20 min: no published curve tells what is left`,
    };
  }
  const martensite = martensiteLeft(history, {});
  if (!('leastPercent' in martensite)) return martensite;
  return strengthRange(
    {
      of: 'tensile strength',
      leastPercent: martensite.leastPercent,
      mostPercent: 100,
      howSure: 'common practice',
      note: 'At worst as if it were martensite throughout; only its hard share softens.',
    },
    tensileMpa,
  );
}
