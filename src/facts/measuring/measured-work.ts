import { kindIs } from '../part/kind-table.ts';
import type { PlanMeasurements } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, unknown } from '../make-fact.ts';
import { goesOnWithoutWelding } from '../part/part-kinds.ts';
import { whenOf } from '../quantity-of.ts';
import type { OperationSurvey, PartSurvey, Survey } from '../survey.ts';

type MeasuredWorkFact =
  | 'measurement.before_late'
  | 'measurement.after_early'
  | 'measurement.unmeasured'
  | 'measurement.at_one_point'
  | 'measurement.unmeasured_before';

/** The measuring against the work: taken before it and after it, and at the place of it. */
export function measuredWorkFacts(
  survey: Survey,
  measurements: PlanMeasurements,
): Readonly<Record<MeasuredWorkFact, Fact>> {
  const days = structuralDays(survey, () => true);
  // What is only bolted on bends nothing that was measured.
  const bending = structuralDays(survey, (one) => !isBoltedOn(one));
  const at = '/measurements';
  return {
    'measurement.before_late': against(survey, measurements.before, `${at}/before`, 'before', (day) =>
      days.some((work) => day > work),
    ),
    'measurement.after_early': against(survey, measurements.after, `${at}/after`, 'after', (day) =>
      bending.some((work) => day < work),
    ),
    'measurement.unmeasured': computedOr(
      unmeasured(survey, measurements).join(', ') || undefined,
      `${at}/points`,
      'Every part that was replaced, cut, straightened or heated is measured.',
    ),
    'measurement.at_one_point': computedOr(
      atOnePoint(survey, measurements).join(', ') || undefined,
      `${at}/points`,
      'Every rail, pillar and ring that was worked on is measured at two points, or at none.',
    ),
    'measurement.unmeasured_before': computedOr(
      (measurements.points ?? []).length === 0
        ? undefined
        : unmeasuredBefore(survey, measurements).join(', ') || undefined,
      `${at}/points`,
      'No point is listed, or every part that was hit and is worked on was measured before.',
    ),
  };
}

/** Before the release it may be still to come; at the release its day left out must not hide what it would show. */
function against(
  survey: Survey,
  text: string | undefined,
  at: string,
  word: 'before' | 'after',
  isWrong: (day: number) => boolean,
): Fact {
  const day = whenOf(text)?.day;
  if (day !== undefined) return computed(isWrong(day), at);
  return survey.context.stage === 'release'
    ? unknown(`The day of the measurement ${word} the repair is not written.`, at)
    : computed(false, at);
}

function isBoltedOn({ operation, joints, part: { part } }: OperationSurvey): boolean {
  const isBolted = joints.every(({ joint }) => joint.method === 'bolt');
  return operation.do === 'replace' && isBolted && goesOnWithoutWelding(part.kind);
}

function structuralDays(
  { operations }: Survey,
  isMeant: (one: OperationSurvey) => boolean,
): readonly number[] {
  return operations
    .filter((one) => one.works !== false && one.part.structural !== false && isMeant(one))
    .flatMap(({ operation, joints }) => [operation.done, ...joints.map(({ joint }) => joint.done)])
    .map((text) => whenOf(text)?.day)
    .filter((day) => day !== undefined);
}

type Point = NonNullable<PlanMeasurements['points']>[number];

/**
 * Structural parts that were worked on and bear no point measured afterwards. A smaller part may have no point of its own on the data
 * sheet: then one on a part that it touches does.
 */
function unmeasured(survey: Survey, { points, openings }: PlanMeasurements): readonly string[] {
  const measured = new Set((points ?? []).filter(isTold).map(({ on }) => on));
  return workedParts(survey, isOpeningMeasured(openings))
    .filter((one) => {
      const telling = kindIs(one.part.kind, 'bears points') ? [one] : [one, ...touching(survey, one)];
      return !telling.some(({ part }) => measured.has(part.id));
    })
    .map(({ name }) => name);
}

/** Long members among them that one point holds: they can lie turned about it, and no number shows it. */
function atOnePoint(survey: Survey, { points, openings }: PlanMeasurements): readonly string[] {
  const on = (points ?? []).filter(isTold).map((point) => point.on);
  return workedParts(survey, isOpeningMeasured(openings))
    .filter(({ part }) => kindIs(part.kind, 'bears points') && kindIs(part.kind, 'hollow'))
    .filter(({ part }) => on.filter((one) => one === part.id).length === 1)
    .map(({ name }) => name);
}

/** One that was left out without a word is told as such. */
function isTold(point: Point): boolean {
  return point.after !== undefined || (point.before !== undefined && point.dropped_because === undefined);
}

function isOpeningMeasured(openings: PlanMeasurements['openings']): boolean {
  return (openings ?? []).some(({ diagonals_after: after }) => after?.length === 2);
}

/** Of those the ones that were hit and are worked on, and were not measured before, nor a part that they touch: how far it went is not known. */
function unmeasuredBefore(survey: Survey, { points, openings }: PlanMeasurements): readonly string[] {
  const measured = new Set((points ?? []).filter(({ before }) => before !== undefined).map(({ on }) => on));
  const openingMeasured = (openings ?? []).some(({ diagonals_before: before }) => before?.length === 2);
  return workedParts(survey, openingMeasured)
    .filter(({ part }) => part.damage?.kind !== undefined && part.damage.kind !== 'none')
    .filter((one) => ![one, ...touching(survey, one)].some(({ part }) => measured.has(part.id)))
    .map(({ name }) => name);
}

function workedParts({ parts }: Survey, openingMeasured: boolean): readonly PartSurvey[] {
  return parts
    .filter(({ part }) => !openingMeasured || !kindIs(part.kind, 'frames an opening'))
    .filter((one) => one.structural === true && one.operations.some(movesMetal));
}

function movesMetal({ operation, hot, works, cutsPartWay, straightens, heats }: OperationSurvey): boolean {
  if (works === false || operation.planned === false) return false;
  if (operation.do === 'replace') return hot === true || cutsPartWay === true;
  return cutsPartWay === true || straightens === true || heats === true;
}

function touching({ partById, namedBy }: Survey, { part, names }: PartSurvey): readonly PartSurvey[] {
  const named = [...names].map((id) => partById.get(id)).filter((one) => one !== undefined);
  return part.id === undefined ? named : [...named, ...(namedBy.get(part.id) ?? [])];
}
