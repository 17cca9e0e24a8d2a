import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import type { OperationSurvey, Survey } from '../survey.ts';
import { beltPartKept } from './belt-part-kept.ts';
import { comesOffAfter } from './units-off-late.ts';

type HandledFact = Extract<
  FactNames['plan'],
  `plan.${'unit_parts_unsafe' | 'unit_off_late' | 'belt_part_kept'}`
>;

/** Restraint units that are handled, and whether the vehicle is made safe for that and in time. */
export function handledUnitFacts(survey: Survey): Readonly<Record<HandledFact, Fact>> {
  const [unsafe, ...others] = handledUnsafe(survey);
  const late = comesOffAfter(survey);
  return {
    'plan.unit_parts_unsafe': computedOr(
      unsafe && [unsafe, ...others].map(({ part }) => part.name).join(', '),
      unsafe === undefined ? '/parts' : `${unsafe.at}/do`,
      'No seat and no restraint unit comes off, or the plan makes airbags and pretensioners safe.',
    ),
    'plan.unit_off_late': computedOr(
      late?.text,
      late?.at ?? '/make_safe/restraints/units',
      'No live unit whose place is not stated comes off after the first hot work.',
    ),
    'plan.belt_part_kept': computedOr(
      beltPartKept(survey.plan.make_safe?.restraints),
      '/make_safe/restraints/belts_checked',
      'The check tells of no belt that was worn in the crash, and of no buckle beside a belt that fired, that stays.',
    ),
  };
}

/** A bench in the rear seldom carries a unit of its own; one that does is listed as such. */
const withoutUnit = /\b(?:rear|back|bench|second row|third row|folding|jump)\b/i;

/** Seats and restraint units that come off in a vehicle of which nothing is made safe before. */
function handledUnsafe({ plan, operations }: Survey): readonly OperationSurvey[] {
  const restraints = plan.make_safe?.restraints;
  const isSafe = restraints !== undefined && (restraints.planned !== false || restraints.done !== undefined);
  if (isSafe) return [];
  return operations.filter(({ operation, part }) => {
    const { kind } = part.part;
    const isUnit = kind === 'restraint unit' || (kind === 'seat' && !withoutUnit.test(part.name));
    const comesOff = operation.do === 'replace' || operation.do === 'remove and refit';
    return isUnit && comesOff && (operation.planned !== false || operation.done !== undefined);
  });
}
