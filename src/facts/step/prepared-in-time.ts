import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, contradicted, unknown } from '../make-fact.ts';
import { listOf, notAfter, whenOf } from '../quantity-of.ts';
import type { When } from '../quantity-of.ts';
import type { OperationSurvey, Survey } from '../survey.ts';
import { holdsTheBody } from './silence-facts.ts';
import { keyInVehicle, liesOpen } from './where-kept.ts';
import { momentsOf, placeOfMoment } from './work-moments.ts';

type PreparedFact = Extract<
  FactNames['plan'],
  `plan.${'fire_late' | 'fire_watch_before' | 'lifting_late' | 'key_in_vehicle' | 'units_in_the_open'}`
>;

/**
 * What is there to be ready before the work, by the days that are written, and what lies where it should not. Only what days and times
 * prove: on one day without times the order is the usual one.
 */
export function preparedFacts(survey: Survey): Readonly<Record<PreparedFact, Fact>> {
  const { fire, lifting, restraints, low_voltage: low } = survey.plan.make_safe ?? {};
  const hot = survey.operations.filter((one) => one.hot === true);
  const held = survey.operations.filter((one) => holdsTheBody(one) === true);
  return {
    'plan.fire_late': lateFor(
      hot,
      fire?.done,
      '/make_safe/fire/done',
      'No hot work is dated before the fire precautions, or days are not written.',
    ),
    'plan.fire_watch_before': unwatchedAfter(hot, fire),
    'plan.lifting_late': lateFor(
      held,
      lifting?.done,
      '/make_safe/lifting/done',
      'No structure was cut or pulled before the vehicle was set on its points, or days are not written.',
    ),
    'plan.units_in_the_open': computedOr(
      liesOpen(restraints?.storage) ? restraints?.storage : undefined,
      '/make_safe/restraints/storage',
      'Live units are not said to lie in the open.',
    ),
    'plan.key_in_vehicle': computed(keyInVehicle(low?.key), '/make_safe/low_voltage/key'),
  };
}

/**
 * Hot work without a watch of its own on a later day than the one that the watch bears, where other hot work was done on that day: then it is that of the
 * watch, and not only of getting ready.
 */
function unwatchedAfter(
  hot: readonly OperationSurvey[],
  fire: { readonly done?: string; readonly watch?: string } | undefined,
): Fact {
  const at = '/make_safe/fire/done';
  const own = whenOf(fire?.done);
  const reason = 'No watch is dated, or no hot work on a later day is without one of its own.';
  if (own === undefined || fire?.watch === undefined) return unknown(reason, at);
  const isLater = (when: When): boolean => when.day > own.day;
  const isThatDay = (when: When): boolean => when.day === own.day;
  if (!hot.some((one) => momentsOf(one).some(isThatDay))) return unknown(reason, at);
  const late = hot.find(
    (one) => one.operation.fire_watch === undefined && placeOfMoment(one, isLater) !== undefined,
  );
  return late === undefined
    ? unknown(reason, at)
    : contradicted(late.part.name, at, listOf(placeOfMoment(late, isLater)));
}

/** The first part whose work is dated before what had to be ready for it. */
function lateFor(
  works: readonly OperationSurvey[],
  done: string | undefined,
  at: string,
  reason: string,
): Fact {
  const own = whenOf(done);
  if (own === undefined) return unknown(reason, at);
  const isEarlier = (when: When): boolean => notAfter(own, when) === false;
  const early = works.find((one) => momentsOf(one).some(isEarlier));
  return early === undefined
    ? unknown(reason, at)
    : contradicted(early.part.name, at, listOf(placeOfMoment(early, isEarlier)));
}
