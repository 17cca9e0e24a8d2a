import { isNotAfter } from './day-order.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, contradicted, contradictedBy, unknown } from '../make-fact.ts';
import { unqualifiedAt } from './high-voltage-person.ts';
import { isOverPack } from './over-the-pack.ts';
import type { OperationSurvey, Survey } from '../survey.ts';

type FittedFact =
  `operation.battery_${'fitted_before' | 'back_before_bake' | 'out_after' | 'by_unqualified' | 'unqualified'}`;

/** The traction battery comes out and goes in again, or a new one goes in. */
export function isBatteryFitted({ operation, part }: OperationSurvey): boolean {
  return (
    part.part.kind === 'traction battery' &&
    (operation.do === 'replace' || operation.do === 'remove and refit')
  );
}

/** When the traction battery goes in again, and who does it. */
export function batteryFittedFacts(survey: Survey, one: OperationSurvey): Readonly<Record<FittedFact, Fact>> {
  const { operation, at } = one;
  const before = isBatteryFitted(one) ? worksWithoutIt(survey) : [];
  const bySteps = before.filter((work) => isLaterStep(work, one));
  const late = before.filter((work) => isLaterStep(work, one) || isLaterDay(work, one));
  const { by } = operation;
  const unqualified =
    isBatteryFitted(one) && by !== undefined ? unqualifiedAt(survey, by, operation.done) : undefined;
  return {
    'operation.battery_fitted_before':
      late.length === 0
        ? unknown(
            'No traction battery is fitted, or no work that it was to be out for comes later by step or day.',
            `${at}/done`,
          )
        : contradicted(
            late.map(({ part }) => `the work on ${part.name}`).join(', '),
            `${at}/${bySteps.length > 0 ? stepKeyOf(one) : 'done'}`,
            late.map((work) => `${work.at}/${isLaterStep(work, one) ? 'step' : 'done'}`),
          ),
    'operation.battery_back_before_bake': contradictedBy(
      `${at}/done`,
      isBatteryFitted(one) && isBakedAfter(survey, one) ? ['/finish/bake/done'] : [],
    ),
    'operation.battery_out_after': computedOr(
      (isBatteryFitted(one) ? heatsBefore(survey, one) : []).join(', ') || undefined,
      `${at}/step`,
      'No traction battery is taken out, or nothing that it was to be out for comes before by step.',
    ),
    // Who isolated the vehicle answers where nobody else is named.
    'operation.battery_by_unqualified': computed(unqualified !== undefined, `${at}/by`),
    'operation.battery_unqualified': computedOr(
      unqualified,
      `${at}/by`,
      'No traction battery is taken out or fitted, or by a qualified person.',
    ),
  };
}

/** Work beside which the plan says that the battery is removed, or that lies over it. */
function worksWithoutIt(survey: Survey): readonly OperationSurvey[] {
  return survey.operations.filter(
    (one) =>
      isOverPack(survey, one) ||
      (one.operation.near ?? []).some(
        ({ item, treatment }) => item === 'traction battery' && treatment === 'removed',
      ),
  );
}

/** By steps alone: the day of a battery that comes out and goes in again is that of its going in. */
function heatsBefore(
  survey: Survey,
  { operation: { step: out, do: word } }: OperationSurvey,
): readonly string[] {
  if (out === undefined || word !== 'remove and refit') return [];
  return worksWithoutIt(survey)
    .filter(({ operation: { step } }) => step !== undefined && step <= out)
    .map(({ part }) => `the work on ${part.name}`)
    .toSorted();
}

function stepKeyOf({ operation }: OperationSurvey): 'step' | 'refit_step' {
  return operation.do === 'replace' && operation.refit_step === undefined ? 'step' : 'refit_step';
}

/** By the numbers of the steps it is put back before such work, or with it. */
function isLaterStep({ operation: { step } }: OperationSurvey, fitting: OperationSurvey): boolean {
  const back = fitting.operation[stepKeyOf(fitting)];
  return back !== undefined && step !== undefined && back <= step;
}

function isLaterDay({ operation: work }: OperationSurvey, { operation: fitting }: OperationSurvey): boolean {
  return isNotAfter(work.done, fitting.done) === false;
}

/** Put back before the bake that the plan says it is out for. */
function isBakedAfter({ plan }: Survey, { operation }: OperationSurvey): boolean {
  const { bake } = plan.finish ?? {};
  return bake?.traction_battery === 'removed' && isNotAfter(bake.done, operation.done) === false;
}
