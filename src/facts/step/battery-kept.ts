import type { Fact } from '../fact.ts';
import { computed, unknown } from '../make-fact.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { listOf } from '../quantity-of.ts';
import type { Survey } from '../survey.ts';

/**
 * How a traction battery that the plan calls damaged is in the vehicle again: fitted again, or never out. Nothing where a new one is
 * fitted or a page of the maker is cited by which this one was found fit.
 */
export function batteryKept(survey: Survey): Fact {
  const high = survey.plan.make_safe?.high_voltage;
  const at = '/make_safe/high_voltage/battery_condition';
  const condition = high?.battery_condition;
  const isDamaged = condition !== undefined && condition !== 'sound' && condition !== 'not yet seen';
  if (!isDamaged) return unknown('The traction battery is not stated as damaged.', at);
  const own = survey.operations.filter(
    ({ part, operation }) =>
      part.part.kind === 'traction battery' && (operation.planned !== false || operation.done !== undefined),
  );
  if (own.some(({ operation }) => operation.do === 'replace')) return unknown('A new one is fitted.', at);
  if (listOf(high?.battery_fit_cite).some(({ reference }) => coversVehicle(survey, reference)))
    return unknown('A page of the maker is cited by which it was found fit.', at);
  const refit = own.find(({ operation }) => operation.do === 'remove and refit');
  return refit === undefined
    ? computed('stays in the vehicle', at)
    : computed('is fitted again', `${refit.at}/do`);
}
