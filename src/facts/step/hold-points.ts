import type { CheckNeeded } from './checks-needed.ts';
import { isNotAfter } from './day-order.ts';
import { isJoinedIn } from './joined-in.ts';
import { saysNone } from './step-draft.ts';
import type { HoldPoint, StepDraft } from './step-draft.ts';
import type { OperationSurvey, PartSurvey, Survey } from '../survey.ts';

/** Each hold point of the plan, and one step more for those that are asked for and that no entry answers. */
export function holdPointSteps(survey: Survey, needed: readonly CheckNeeded[]): readonly StepDraft[] {
  const points = survey.plan.hold_points ?? [];
  const open = needed.filter((need) => !points.some((one) => answersFor(one, need)));
  const stated = points.map((one, index): StepDraft => {
    const { planned = true, done, by, cite } = one;
    return {
      what: 'hold point',
      name: `hold point "${nameOf(one)}"${partWords(survey, one)}`,
      at: `/hold_points/${String(index)}`,
      // Whoever lists a point plans it.
      step: {
        planned,
        ...(done === undefined ? {} : { done }),
        ...(by === undefined ? {} : { by }),
        ...(cite === undefined ? {} : { cite }),
      },
      missing: [
        ...(saysNone(by?.name) ? ['who releases it'] : []),
        ...(done === undefined && survey.context.stage === 'release' ? ['when it was released'] : []),
      ],
      neededBecause: needed.find((need) => answersFor(one, need))?.because,
      holdPoint: one,
    };
  });
  const alsoOpen = [...open, ...flangesLeftOut(survey, needed)];
  if (alsoOpen.length === 0) return stated;
  const missing: StepDraft = {
    what: 'hold point',
    at: '/hold_points',
    step: undefined,
    neededBecause: groupedByReason(alsoOpen),
  };
  return [...stated, missing];
}

/** Where every flange point names its part, those parts that are joined in as well and that none names. */
function flangesLeftOut(survey: Survey, needed: readonly CheckNeeded[]): readonly CheckNeeded[] {
  const point = 'flange before closing';
  const named = (survey.plan.hold_points ?? []).filter((one) => one.point === point);
  if (named.length === 0 || named.some(({ part }) => part === undefined)) return [];
  if (!needed.some((need) => need.point === point)) return [];
  const held = new Set(named.map(({ part }) => part));
  const leftOut = survey.operations.filter((one) => isGuarded(one, { point }) && !held.has(one.part.part.id));
  const names = [...new Set(leftOut.map(({ part }) => part.name))];
  return names.map((name) => ({
    asksFor: 'hold point',
    sensor: [],
    point,
    because: `${name} is joined in as well`,
  }));
}

/** Points that one thing asks for stand together, so that a sentence says it once. */
function groupedByReason(open: readonly CheckNeeded[]): string {
  const reasons = [...new Set(open.map(({ because }) => because))];
  const pointsOf = (reason: string): string =>
    open
      .filter(({ because }) => because === reason)
      .map(({ point }) => point ?? '')
      .join(', ');
  return reasons.map((reason) => `${pointsOf(reason)} (${reason})`).join('; ');
}

function nameOf({ point, name }: HoldPoint): string {
  return point === undefined || point === 'other' ? (name ?? point ?? 'without a name') : point;
}

/** Several parts have a flange. */
function partWords({ partById }: Survey, { part }: HoldPoint): string {
  return part === undefined ? '' : ` of ${partById.get(part)?.name ?? part}`;
}

function answersFor(one: HoldPoint, { point = '' }: CheckNeeded): boolean {
  const wanted = point.toLowerCase();
  return one.point === wanted || one.name?.trim().toLowerCase() === wanted;
}

/** What a hold point was to come before and is dated after; undefined where it came in time, or nobody can tell. */
export function tooLateFor(survey: Survey, { holdPoint: one }: StepDraft): Moment | undefined {
  if (one?.done === undefined) return undefined;
  const guarded = survey.operations.filter((operation) => isGuarded(operation, one));
  const moments = guarded.flatMap(momentsOf);
  const late = moments.filter(({ done }) => isNotAfter(one.done, done) === false);
  // The first joint of a part closes it; of parts that are not named, and before the last weld, only what is later than all is too
  // late for certain.
  const isFirstTheLimit = one.part !== undefined && one.point !== 'structure before the last weld';
  return isFirstTheLimit || late.length === moments.length ? late[0] : undefined;
}

interface Moment {
  readonly done: string;
  readonly name: string;
  readonly at: string;
}

function momentsOf({ operation, joints, part: { name }, at: place }: OperationSurvey): readonly Moment[] {
  const own = joints.flatMap(({ joint, at }) => {
    const done = joint.done ?? operation.done;
    return done === undefined
      ? []
      : [{ done, name: `the joint of ${name}`, at: `${joint.done === undefined ? place : at}/done` }];
  });
  if (own.length > 0 || operation.done === undefined) return own;
  return [{ done: operation.done, name: `the fitting of ${name}`, at: `${place}/done` }];
}

const skins: readonly (PartSurvey['part']['kind'] | undefined)[] = [
  ...(['side panel', 'quarter panel', 'sill skin', 'roof skin', 'door skin', 'fender'] as const),
];
/** A door that is hung hides the wiring of its own unit alone; its hold point then names it. */
const trims: readonly (PartSurvey['part']['kind'] | undefined)[] = ['trim', 'seat'];

/** Whether an operation closes what the hold point looks at. */
function isGuarded(operation: OperationSurvey, { point, part }: HoldPoint): boolean {
  const { part: own } = operation;
  if (part !== undefined && own.part.id !== part) return false;
  switch (point) {
    case 'flange before closing':
    case 'structure before the last weld':
      return isJoinedIn(operation) && (part !== undefined || own.structural !== false);
    case 'cavity before the skin':
      return isJoinedIn(operation) && (part !== undefined || skins.includes(own.part.kind));
    case 'restraint wiring before the trim':
      return (
        (trims.includes(own.part.kind) || (part !== undefined && own.part.kind === 'door')) &&
        operation.operation.do !== 'refinish'
      );
    default:
      return false;
  }
}
