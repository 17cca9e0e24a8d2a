import type { PlanMeasurements } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { computed, statedOr } from '../make-fact.ts';
import { quantityOf } from '../quantity-of.ts';
import { planTolerance } from './body-tolerance.ts';
import type { Survey } from '../survey.ts';

type WidestFact = 'measurement.widest_tolerance' | 'measurement.tolerance_of_page';

/** The widest tolerance of body that the plan states anywhere, and whether the cited page is stated to allow as much. */
export function widestTolerance(
  survey: Survey,
  measurements: PlanMeasurements,
): Readonly<Record<WidestFact, Fact>> {
  const { points = [], openings = [], tolerance, tolerance_of_page: paged } = measurements;
  const at = '/measurements';
  const all = [
    { text: tolerance, at: `${at}/tolerance` },
    ...points.map((one, index) => ({ text: one.tolerance, at: `${at}/points/${String(index)}/tolerance` })),
    ...openings.map((one, index) => ({
      text: one.tolerance,
      at: `${at}/openings/${String(index)}/tolerance`,
    })),
  ].flatMap(({ text, at: place }) => {
    const mm = quantityOf(text, 'length');
    return mm === undefined ? [] : [{ mm, place }];
  });
  const widest = all.reduce<(typeof all)[number] | undefined>(
    (most, one) => (most === undefined || one.mm > most.mm ? one : most),
    undefined,
  );
  const pagedMm = quantityOf(paged, 'length');
  const { isCited } = planTolerance(survey, measurements);
  return {
    'measurement.widest_tolerance': statedOr(
      widest?.mm,
      widest?.place ?? `${at}/tolerance`,
      'No tolerance is stated.',
    ),
    'measurement.tolerance_of_page': computed(
      isCited && widest !== undefined && pagedMm !== undefined && pagedMm >= widest.mm,
      `${at}/tolerance_of_page`,
    ),
  };
}
