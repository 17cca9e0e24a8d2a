import { peakOf } from './history-measures.ts';
import { firstOutside } from '../outside.ts';
import { isMildHeat } from './plain-steel-left.ts';
import type { TemperatureHistory } from '../point-history.ts';
import { reTransformed, strengthRange } from './strength-answer.ts';
import type { Delivered, StrengthLeft } from './strength-answer.ts';
import { harmlessParameter } from './tempered-range.ts';
import { ac1Celsius, temperingParameterHours } from './tempering.ts';

/** Proof strength of the softest bake-hardening grade, HC180B. */
const softestProofMpa = 180;
/**
 * What the paint oven adds, MPa. EN 10268 and EN 10346 ask for at least 35 or 30 (BH2); deliveries are printed with
 * more than 40, and with 27 to 55. The part was drawn with what it has, so the most of these is what can be lost.
 */
const greatestGainMpa = 55;

/**
 * Proof strength left in bake-hardening sheet. Its gain from the paint oven (170 °C, 20 min) is carbon that pins the
 * dislocations of forming; up to 200 °C for 20 min it stays. Anything hotter may set it free and is taken to lose all of
 * it, none of the rest: the sheet is then as the mill delivered it, while no hotter or longer than mild steel
 * bears (that limit is from memory). What forming had added is not counted in either.
 *
 * Proof as delivered by the mill 180 to 340 MPa; 180 when not stated, where the gain is the largest share.
 */
export function bakeHardenedLeft(history: TemperatureHistory, delivered: Delivered): StrengthLeft {
  const { proofMpa = softestProofMpa } = delivered;
  const off = firstOutside([['proof strength before', proofMpa, 160, 340, 'MPa']]);
  if (off !== undefined) return { state: 'unknown', reason: off };
  const peak = peakOf(history);
  if (peak > ac1Celsius) return reTransformed;
  const baked = delivered.proofMpa === undefined ? undefined : proofMpa + greatestGainMpa;
  if (peak <= 200 && temperingParameterHours(history) <= harmlessParameter) {
    return strengthRange(
      {
        of: 'proof strength',
        leastPercent: 100,
        mostPercent: 100,
        howSure: 'published figure',
        note: 'No more than a paint oven does.',
      },
      baked,
    );
  }
  if (!isMildHeat(history)) {
    return {
      state: 'unknown',
      reason: 'hotter or longer than 650 °C for 90 s, twice: no figure for what is left',
    };
  }
  return strengthRange(
    {
      of: 'proof strength',
      leastPercent: (100 * proofMpa) / (proofMpa + greatestGainMpa),
      mostPercent: 100,
      howSure: 'from memory',
      note: 'Heat beyond the paint oven may take the gain of baking, up to 55 MPa of proof strength; no flame gives it back.',
    },
    baked,
  );
}
