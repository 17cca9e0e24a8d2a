import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr } from '../make-fact.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { listOf } from '../quantity-of.ts';
import type { Survey } from '../survey.ts';

type BeltFact = Extract<FactNames['plan'], 'plan.belt_bolts_open' | 'plan.belt_bolts_used_again'>;

/**
 * Bolts of belts that come off as restraint units, without a part of their own in the plan: belts that are listed as parts are asked
 * for theirs at their operation.
 */
export function beltBoltFacts(survey: Survey): Readonly<Record<BeltFact, Fact>> {
  const { fasteners, units = [] } = survey.plan.make_safe?.restraints ?? {};
  const isLoosened = units.some(
    ({ unit, treatment }) =>
      unit === 'belt pretensioner' && (treatment === 'removed' || treatment === 'replaced'),
  );
  const isListed = survey.operations.some(
    ({ part, operation }) =>
      part.part.kind === 'restraint unit' &&
      (operation.do === 'replace' || operation.do === 'remove and refit'),
  );
  const at = '/make_safe/restraints/fasteners';
  return {
    'plan.belt_bolts_open': computedOr(
      isLoosened && !isListed ? openOf(survey, fasteners).join(', ') || undefined : undefined,
      at,
      'No belt comes off, or everything is said of its bolts.',
    ),
    'plan.belt_bolts_used_again': computed(fasteners?.one_time === 'used again', `${at}/one_time`),
  };
}

type Fasteners = NonNullable<
  NonNullable<NonNullable<Survey['plan']['make_safe']>['restraints']>['fasteners']
>;

function openOf(survey: Survey, fasteners: Fasteners | undefined): readonly string[] {
  const isCited = listOf(fasteners?.cite).some(({ reference }) => coversVehicle(survey, reference));
  return [
    ...(isCited ? [] : ['the maker’s page for their torque (`cite`)']),
    ...(fasteners?.one_time === undefined
      ? ['what becomes of bolts that are used once only (`one_time`)']
      : []),
    ...(survey.context.stage === 'release' && fasteners?.tightened === undefined
      ? ['the day on which they were tightened (`tightened`)']
      : []),
  ];
}
