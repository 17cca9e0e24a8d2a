import type { PlanMeasurements } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { assumed, known, unknown } from '../make-fact.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { listOf, quantityOf } from '../quantity-of.ts';
import type { Survey } from '../survey.ts';

/** What the plan as a whole, and the packs, say of tolerances. */
export interface PlanTolerance {
  readonly ownMm: number | undefined;
  /** A maker’s page is cited for tolerances wider than the usual one. */
  readonly isCited: boolean;
  readonly usualMm: (of: 'point' | 'opening') => number | undefined;
}

/** The tolerance of one point or opening. */
export interface BodyTolerance {
  /** Undefined when neither the plan nor a pack states one. */
  readonly mm: number | undefined;
  readonly usualMm: number | undefined;
  readonly isStated: boolean;
  /** Wider than usual, and nobody but the plan says so. */
  readonly isOwnWord: boolean;
  /** The usual one in place of one that is the plan’s own word: what a datum is held to. */
  readonly provenMm: number | undefined;
  readonly fact: Fact;
}

export function planTolerance(survey: Survey, measurements: PlanMeasurements): PlanTolerance {
  return {
    ownMm: quantityOf(measurements.tolerance, 'length'),
    isCited: listOf(measurements.tolerance_cite).some((cite) => coversVehicle(survey, cite.reference)),
    usualMm: (of) => survey.context.tolerances?.get(of),
  };
}

/** Its own tolerance comes before that of the plan, and that before the usual one of the pack. */
export function bodyTolerance(
  plan: PlanTolerance,
  of: 'point' | 'opening',
  stated: string | undefined,
  at: string,
): BodyTolerance {
  const ownMm = quantityOf(stated, 'length');
  const usualMm = plan.usualMm(of);
  const mm = ownMm ?? plan.ownMm ?? usualMm;
  const isStated = (ownMm ?? plan.ownMm) !== undefined;
  const isOwnWord = isStated && mm !== undefined && mm > (usualMm ?? 0) && !plan.isCited;
  return {
    mm,
    usualMm,
    isStated,
    isOwnWord,
    provenMm: isOwnWord ? usualMm : mm,
    fact: toleranceFact(ownMm, plan.ownMm, usualMm, at),
  };
}

function toleranceFact(
  ownMm: number | undefined,
  planMm: number | undefined,
  usualMm: number | undefined,
  at: string,
): Fact {
  if (ownMm !== undefined) return known(ownMm, 'stated', `${at}/tolerance`);
  if (planMm !== undefined) return known(planMm, 'stated', '/measurements/tolerance');
  return usualMm === undefined
    ? unknown('No tolerance is stated, in the plan or in a pack.', `${at}/tolerance`)
    : assumed(usualMm, `No tolerance is stated; the usual one of the pack is ${String(usualMm)} mm.`, at);
}
