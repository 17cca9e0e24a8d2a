import type { PartKind } from '../generated/plan-types.ts';
import { damageKinds } from './part-damage-facts.ts';
import type { OperationSurvey, PartSurvey, Survey } from './survey.ts';

// What the work of a plan makes necessary afterwards, each as the reason in words; undefined where nothing asks for it. Common
// practice, no source: what comes apart, or was hit, is checked when it is together again. What cannot be told asks for nothing here.

/** Units that came off or went off must be fitted, plugged and seen by the control unit again. */
export function completionBecause({ plan }: Survey): string | undefined {
  const { units, deployed } = plan.make_safe?.restraints ?? {};
  if (deployed === true || (units ?? []).some(({ state }) => state === 'deployed'))
    return 'a restraint unit deployed';
  const isOff = (units ?? []).some(({ treatment }) => treatment === 'removed' || treatment === 'replaced');
  return isOff ? 'restraint units came off' : undefined;
}

/** Parts that set the wheels, or carry what sets them. */
const wheelSetting: ReadonlySet<PartKind> = new Set<PartKind>([
  ...(['suspension part', 'steering part', 'subframe', 'front rail', 'rear rail', 'strut tower'] as const),
]);

export function alignmentBecause({ parts }: Survey): string | undefined {
  const touched = parts.find((one) => {
    const { kind } = one.part;
    if (kind === 'wheel') return wasHit(one);
    return kind !== undefined && wheelSetting.has(kind) && (wasHit(one) || one.operations.some(loosens));
  });
  return touched === undefined ? undefined : `${touched.name} was hit or worked on`;
}

function wasHit({ part }: PartSurvey): boolean {
  const harmless: readonly string[] = ['none', 'scratch', 'surface rust', 'not yet seen', 'rusted through'];
  return damageKinds(part).some((kind) => !harmless.includes(kind));
}

function loosens({ operation, works }: OperationSurvey): boolean {
  return works === true || operation.do === 'remove and refit';
}

/** Current through the body, open restraint connectors and cut circuits leave codes that nobody sees without asking. */
export function scanBecause(survey: Survey): string | undefined {
  const { operations, plan } = survey;
  if (operations.some(({ electricWelding }) => electricWelding === true))
    return 'the body was welded electrically';
  if (completionBecause(survey) !== undefined) return completionBecause(survey);
  const isolation = plan.make_safe?.high_voltage?.isolation;
  return isolation !== undefined && isolation.planned !== false
    ? 'the traction voltage was isolated'
    : undefined;
}

/** A camera looks through the windscreen, a radar through the cover of the bumper. */
export function calibrationBecause({ parts }: Survey): string | undefined {
  const touched = parts.find(
    (one) => carriesSensors(one) && one.operations.some(({ operation: { do: word } }) => takesOff(word)),
  );
  return touched === undefined ? undefined : `${touched.name} came off`;
}

function carriesSensors({ part, name }: PartSurvey): boolean {
  return part.kind === 'bumper cover' || (part.kind === 'glass' && /windscreen|windshield/iu.test(name));
}

function takesOff(word: string | undefined): boolean {
  return word === 'replace' || word === 'remove and refit';
}
