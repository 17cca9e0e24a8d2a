import type { FactNames } from '../../generated/fact-names.ts';
import type { PartKind } from '../../generated/plan-types.ts';
import type { CheckTrigger } from '../context.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { operationNouns } from '../operation-noun.ts';
import type { OperationSurvey, Survey } from '../survey.ts';
import { isMeant } from './checks-needed.ts';
import { isNotAfter } from './day-order.ts';
import type { StepDraft } from './step-draft.ts';
import { endNamed, endOfPart } from './vehicle-end.ts';

/** Kinds whose refitting opens and closes connectors of the restraint system. Common practice, no source. */
const opensRestraints: ReadonlySet<PartKind> = new Set<PartKind>(['seat', 'restraint unit', 'steering part']);

/** Work dated after a check, on a part for which the triggers of the packs ask for that very check. */
export function undoneByFacts(
  survey: Survey,
  draft: StepDraft,
): Readonly<Record<Extract<FactNames['step'], 'step.undone_by'>, Fact>> {
  const own = draft.step?.done;
  const later =
    own === undefined || draft.result === 'not required'
      ? []
      : survey.operations.filter(
          (one) => isNotAfter(one.operation.done, own) === false && undoes(survey, draft, one),
        );
  return {
    'step.undone_by': computedOr(
      later
        .map(
          ({ operation, part }) =>
            `${operation.do === undefined ? 'work on' : operationNouns[operation.do] + ' of'} ${part.name} on ${operation.done ?? ''}`,
        )
        .join('; ') || undefined,
      `${draft.at}/done`,
      'Nothing that asks for the check is dated after it, or days and times are not written.',
    ),
  };
}

function undoes(survey: Survey, draft: StepDraft, one: OperationSurvey): boolean {
  const { kind } = one.part.part;
  if (draft.what === 'restraint completion') {
    return kind !== undefined && opensRestraints.has(kind) && isFitting(one);
  }
  if (draft.what !== 'wheel alignment' && draft.what !== 'sensor calibration') return false;
  return (survey.context.triggers ?? []).some(
    (trigger) =>
      trigger.asksFor === draft.what &&
      isMeant(one.part, trigger) &&
      isOfSensor(draft, trigger, one) &&
      befalls(one, trigger),
  );
}

/** What befell a part before may have been a blow; of what comes later only the work counts. */
function befalls(one: OperationSurvey, { was }: CheckTrigger): boolean {
  const isAny = was.length === 0;
  return (
    ((isAny || was.includes('worked on')) && one.works === true) ||
    ((isAny || was.includes('taken off')) && isFitting(one)) ||
    (was.includes('painted') && (one.operation.do === 'refinish' || one.operation.do === 'fill'))
  );
}

function isFitting({ operation }: OperationSurvey): boolean {
  return operation.do === 'replace' || operation.do === 'remove and refit';
}

function isOfSensor(
  { what, calibration }: StepDraft,
  { sensor }: CheckTrigger,
  { part }: OperationSurvey,
): boolean {
  if (what !== 'sensor calibration' || sensor.length === 0) return true;
  const name = (calibration?.sensor ?? '').toLowerCase();
  const [named, end] = [endNamed(name), endOfPart(part.name, part.part.kind)];
  if (named !== undefined && end !== undefined && named !== end) return false;
  return sensor.some((word) => name.includes(word.toLowerCase()));
}
