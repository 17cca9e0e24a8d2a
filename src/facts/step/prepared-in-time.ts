import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr } from '../make-fact.ts';
import { notAfter, whenOf } from '../quantity-of.ts';
import type { OperationSurvey, Survey } from '../survey.ts';
import { holdsTheBody } from './silence-facts.ts';
import { keyInVehicle, liesOpen } from './where-kept.ts';
import { momentsOf } from './work-moments.ts';

type PreparedFact = Extract<
  FactNames['plan'],
  `plan.${'fire_late' | 'lifting_late' | 'key_in_vehicle' | 'units_in_the_open'}`
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
    'plan.fire_late': computedOr(
      nameOf(hot.find((one) => isBefore(one, fire?.done))),
      '/make_safe/fire/done',
      'No hot work is dated before the fire precautions, or days are not written.',
    ),
    'plan.lifting_late': computedOr(
      nameOf(held.find((one) => isBefore(one, lifting?.done))),
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

function nameOf(one: OperationSurvey | undefined): string | undefined {
  return one === undefined ? undefined : one.part.name;
}

function isBefore(one: OperationSurvey, done: string | undefined): boolean {
  const own = whenOf(done);
  return own !== undefined && momentsOf(one).some((when) => notAfter(own, when) === false);
}
