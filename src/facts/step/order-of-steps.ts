import type { FactNames } from '../../generated/fact-names.ts';
import type { Operation } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { contradicted, unknown } from '../make-fact.ts';
import { listOf } from '../quantity-of.ts';
import { backOnStep } from './back-on.ts';
import { isNotAfter } from './day-order.ts';
import type { OperationSurvey, Survey } from '../survey.ts';

type OrderFact = Extract<
  FactNames['operation'],
  `operation.${'closes_over_later' | 'step_against_day' | 'metal_work_later'}`
>;

/** The steps of an operation against those of the layer under it, and against the days on which both were done. */
export function orderOfSteps(survey: Survey, one: OperationSurvey): Readonly<Record<OrderFact, Fact>> {
  const place = `${one.at}/step`;
  const later = closedOverLater(survey, one);
  const earlier = doneEarlier(survey, one);
  const metal = metalWorkLater(one);
  return {
    'operation.closes_over_later':
      later === undefined
        ? unknown('It closes over nothing that is worked on later, or the steps are not numbered.', place)
        : contradicted(`${later.part.name} (step ${String(backOnStep(later.operation) ?? '')})`, place, [
            `${later.at}/${later.operation.refit_step === undefined ? 'step' : 'refit_step'}`,
          ]),
    'operation.metal_work_later':
      metal === undefined
        ? unknown('It is no filling or painting, or no straightening of the part has a later step.', place)
        : contradicted(
            `the ${metal.operation.do === 'heat' ? 'heating' : 'straightening'} (step ${String(metal.operation.step ?? '')})`,
            place,
            [`${metal.at}/step`],
          ),
    'operation.step_against_day':
      earlier === undefined
        ? unknown('No operation with a higher step is dated on an earlier day.', place)
        : contradicted(
            `${earlier.part.name} (step ${String(earlier.operation.step ?? '')}, ${earlier.operation.done ?? ''})`,
            place,
            [`${one.at}/done`, `${earlier.at}/step`, `${earlier.at}/done`],
          ),
  };
}

/** Metal work on a part that is filled or painted by then. */
function metalWorkLater({ operation, part }: OperationSurvey): OperationSurvey | undefined {
  const { step, do: word } = operation;
  if (step === undefined || (word !== 'fill' && word !== 'refinish')) return undefined;
  return part.operations.find(
    ({ operation: other }) =>
      (other.do === 'straighten' || other.do === 'heat') &&
      other.planned !== false &&
      other.step !== undefined &&
      other.step > step,
  );
}

/** A new skin goes on when what lies under it is in. */
function closedOverLater(
  survey: Survey,
  { operation, part, joints }: OperationSurvey,
): OperationSurvey | undefined {
  const step = backOnStep(operation);
  if (step === undefined || operation.do !== 'replace' || joints.length === 0) return undefined;
  const own = part.part.id;
  return survey.operations.find(
    ({ operation: other, part: layer, works }) =>
      layer !== part &&
      works === true &&
      (backOnStep(other) ?? step) > step &&
      isUnder(layer.part, own, listOf(part.part.over)),
  );
}

function isUnder(
  layer: { readonly id?: string; readonly under?: string | readonly string[] },
  skin: string | undefined,
  over: readonly string[],
): boolean {
  return (
    (skin !== undefined && listOf(layer.under).includes(skin)) ||
    (layer.id !== undefined && over.includes(layer.id))
  );
}

/** What is cut open at its step and closed, or fitted again, at the end: its day is that of the end. */
const endsLater: ReadonlySet<string> = new Set(['remove and refit', 'section', 'cut for access']);

/** An operation with a higher step that was done on an earlier day. */
function doneEarlier(survey: Survey, { operation, at }: OperationSurvey): OperationSurvey | undefined {
  const { step, done } = operation;
  if (step === undefined || done === undefined || isEndedLater(operation)) return undefined;
  return survey.operations.find(
    ({ operation: other, at: otherAt }) =>
      otherAt !== at &&
      !isEndedLater(other) &&
      other.step !== undefined &&
      other.step > step &&
      isNotAfter(done, other.done) === false,
  );
}

function isEndedLater({ do: word, refit_step: refit }: Operation): boolean {
  return endsLater.has(word ?? '') || refit !== undefined;
}
