import type { FactNames } from '../generated/fact-names.ts';
import type { Fact } from './fact.ts';
import { computed } from './make-fact.ts';
import { damageKinds } from './part/part-damage-facts.ts';
import { saysIndirectDamage } from './part/indirect-damage.ts';
import type { OperationSurvey, PartSurvey, Survey } from './survey.ts';

type Name = Extract<FactNames['plan'], 'plan.only_running_gear'>;

/** Whether all that is structural about the work is running gear bolted on whole, and nothing of the body was hit. */
export function runningGearFacts(survey: Survey): Readonly<Record<Name, Fact>> {
  return { 'plan.only_running_gear': computed(isRunningGearOnly(survey), '/parts') };
}

export function isRunningGearOnly(survey: Survey): boolean {
  const { plan, operations, parts } = survey;
  const { units, deployed } = plan.make_safe?.restraints ?? {};
  if (deployed === true || (units ?? []).some(({ state }) => state === 'deployed')) return false;
  const worked = operations.filter(({ works, part }) => works !== false && part.structural !== false);
  return (
    worked.length > 0 && worked.every(isBoltedOn) && !parts.some(isBodyHit) && !saysIndirectDamage(survey)
  );
}

/** A knuckle, tie rod or damper comes off and goes on whole by its bolts. A subframe or a bumper beam is part of what was pushed. */
function isBoltedOn({ part, operation, joints }: OperationSurvey): boolean {
  return (
    isRunningGear(part) &&
    (operation.do === 'replace' || operation.do === 'remove and refit') &&
    operation.extent !== 'part' &&
    operation.at === undefined &&
    joints.every(({ joint }) => joint.method === 'bolt')
  );
}

function isRunningGear({ part: { kind } }: PartSurvey): boolean {
  return kind === 'suspension part' || kind === 'steering part';
}

/** Structure of the body, or what may be some, that is damaged or not looked at: what moved shows only when measured. */
function isBodyHit(one: PartSurvey): boolean {
  if (isRunningGear(one) || one.structural === false) return false;
  return damageKinds(one.part).some(
    (kind) => kind !== 'none' && kind !== 'scratch' && kind !== 'surface rust',
  );
}
