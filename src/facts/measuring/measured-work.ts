import { kindIs } from '../part/kind-table.ts';
import type { PlanMeasurements } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, contradictedBy, unknown } from '../make-fact.ts';
import { goesOnWithoutWelding } from '../part/part-kinds.ts';
import { whenOf } from '../quantity-of.ts';
import { isHitFromTheSide } from './hit-from-the-side.ts';
import { isOpeningOf } from './opening-of-part.ts';
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
      days.filter((work) => day > work.day),
    ),
    'measurement.after_early': against(survey, measurements.after, `${at}/after`, 'after', (day) =>
      bending.filter((work) => day < work.day),
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
  wrongFor: (day: number) => readonly WorkDay[],
): Fact {
  const day = whenOf(text)?.day;
  if (day !== undefined)
    return contradictedBy(
      at,
      wrongFor(day).map((work) => work.at),
    );
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
): readonly WorkDay[] {
  return operations
    .filter((one) => one.works !== false && one.part.structural !== false && isMeant(one))
    .flatMap(({ operation, joints, at }) => [
      { done: operation.done, at },
      ...joints.map((one) => ({ done: one.joint.done, at: one.at })),
    ])
    .flatMap(({ done, at }) => {
      const day = whenOf(done)?.day;
      return day === undefined ? [] : [{ day, at: `${at}/done` }];
    });
}

interface WorkDay {
  readonly day: number;
  readonly at: string;
}

type Point = NonNullable<PlanMeasurements['points']>[number];
type Openings = NonNullable<PlanMeasurements['openings']>;

/**
 * Structural parts that were worked on and bear no point measured afterwards. A smaller part may have no point of its own on the data
 * sheet: then one on a part that it touches does.
 */
function unmeasured(survey: Survey, { points, openings }: PlanMeasurements): readonly string[] {
  const measured = new Set((points ?? []).filter(isTold).map(({ on }) => on));
  const opened = (openings ?? []).filter(({ diagonals_after: after }) => after?.length === 2);
  return workedParts(survey)
    .filter((one) => {
      const telling = bearsPoint(survey, one) ? [one] : [one, ...touching(survey, one)];
      return !telling.some(({ part }) => measured.has(part.id));
    })
    .filter((one) => isHitFromTheSide(survey, one) || !isOpened(one, opened, points))
    .map(({ name }) => name);
}

/** A sill has points enough beneath it for one to be asked for where it was pushed in; elsewhere its neighbours do. */
function bearsPoint(survey: Survey, one: PartSurvey): boolean {
  return kindIs(one.part.kind, 'bears points') || (one.part.kind === 'sill' && isHitFromTheSide(survey, one));
}

/** Long members among them that one point holds: they can lie turned about it, and no number shows it. */
function atOnePoint(survey: Survey, { points, openings }: PlanMeasurements): readonly string[] {
  const on = (points ?? []).filter(isTold).map((point) => point.on);
  const opened = (openings ?? []).filter(({ diagonals_after: after }) => after?.length === 2);
  return workedParts(survey)
    .filter(({ part }) => kindIs(part.kind, 'bears points') && kindIs(part.kind, 'hollow'))
    .filter(({ part }) => on.filter((one) => one === part.id).length === 1)
    .filter((one) => !isOpened(one, opened, points))
    .map(({ name }) => name);
}

/** One that was left out without a word is told as such. */
function isTold(point: Point): boolean {
  return point.after !== undefined || (point.before !== undefined && point.dropped_because === undefined);
}

function isOpened(one: PartSurvey, openings: Openings, points: PlanMeasurements['points']): boolean {
  return openings.some((opening) => isOpeningOf(one, opening, points));
}

/** Of those the ones that were hit and are worked on, and were not measured before, nor a part that they touch: how far it went is not known. */
function unmeasuredBefore(survey: Survey, { points, openings }: PlanMeasurements): readonly string[] {
  const measured = new Set((points ?? []).filter(({ before }) => before !== undefined).map(({ on }) => on));
  const opened = (openings ?? []).filter(({ diagonals_before: before }) => before?.length === 2);
  return workedParts(survey)
    .filter(({ part }) => part.damage?.kind !== undefined && part.damage.kind !== 'none')
    .filter((one) => ![one, ...touching(survey, one)].some(({ part }) => measured.has(part.id)))
    .filter((one) => isHitFromTheSide(survey, one) || !isOpened(one, opened, points))
    .map(({ name }) => name);
}

function workedParts({ parts }: Survey): readonly PartSurvey[] {
  return parts.filter((one) => one.structural === true && one.operations.some(movesMetal));
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
