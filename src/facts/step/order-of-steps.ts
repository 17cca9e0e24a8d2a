import type { FactNames } from '../../generated/fact-names.ts';
import type { Operation } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { listOf } from '../quantity-of.ts';
import { backOnStep } from './back-on.ts';
import { isNotAfter } from './day-order.ts';
import type { OperationSurvey, Survey } from '../survey.ts';

type OrderFact = Extract<FactNames['operation'], `operation.${'closes_over_later' | 'step_against_day'}`>;

/** The steps of an operation against those of the layer under it, and against the days on which both were done. */
export function orderOfSteps(survey: Survey, one: OperationSurvey): Readonly<Record<OrderFact, Fact>> {
  const place = `${one.at}/step`;
  return {
    'operation.closes_over_later': computedOr(
      closesOverLater(survey, one),
      place,
      'It closes over nothing that is worked on later, or the steps are not numbered.',
    ),
    'operation.step_against_day': computedOr(
      againstDay(survey, one),
      place,
      'No operation with a higher step is dated on an earlier day.',
    ),
  };
}

/** A new skin goes on when what lies under it is in. */
function closesOverLater(survey: Survey, { operation, part, joints }: OperationSurvey): string | undefined {
  const step = backOnStep(operation);
  if (step === undefined || operation.do !== 'replace' || joints.length === 0) return undefined;
  const own = part.part.id;
  const under = survey.operations.find(
    ({ operation: other, part: layer, works }) =>
      layer !== part &&
      works === true &&
      (backOnStep(other) ?? step) > step &&
      isUnder(layer.part, own, listOf(part.part.over)),
  );
  return under === undefined
    ? undefined
    : `${under.part.name} (step ${String(backOnStep(under.operation) ?? '')})`;
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

function againstDay(survey: Survey, { operation, at }: OperationSurvey): string | undefined {
  const { step, done } = operation;
  if (step === undefined || done === undefined || isEndedLater(operation)) return undefined;
  const earlier = survey.operations.find(
    ({ operation: other, at: otherAt }) =>
      otherAt !== at &&
      !isEndedLater(other) &&
      other.step !== undefined &&
      other.step > step &&
      isNotAfter(done, other.done) === false,
  );
  return earlier === undefined
    ? undefined
    : `${earlier.part.name} (step ${String(earlier.operation.step ?? '')}, ${earlier.operation.done ?? ''})`;
}

function isEndedLater({ do: word, refit_step: refit }: Operation): boolean {
  return endsLater.has(word ?? '') || refit !== undefined;
}
