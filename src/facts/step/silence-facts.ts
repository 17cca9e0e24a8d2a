import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr } from '../make-fact.ts';
import { isPermanent } from '../joint/joint-methods.ts';
import { saysNone } from './step-draft.ts';
import type { OperationSurvey, Survey } from '../survey.ts';
import { allYes, anyYes } from '../tri-state.ts';

type SilenceFact = Extract<
  FactNames['plan'],
  `plan.${'fire_stated' | 'lifting_stated' | 'held_for_structure'}`
>;

/** Steps around the work of which a plan may say nothing at all. */
export function silenceFacts(survey: Survey): Readonly<Record<SilenceFact, Fact>> {
  const { fire, lifting } = survey.plan.make_safe ?? {};
  return {
    'plan.fire_stated': computed(isMeant(fire) && saysWhat(fire), '/make_safe/fire'),
    'plan.lifting_stated': computed(
      isMeant(lifting) && ((lifting?.points ?? []).length > 0 || lifting?.cite !== undefined),
      '/make_safe/lifting',
    ),
    'plan.held_for_structure': computedOr(
      anyYes(survey.operations.map(holdsTheBody)),
      '/parts',
      'Whether structure is replaced, cut or pulled cannot be told.',
    ),
  };
}

/** `planned: true` alone names no precaution. */
function saysWhat(fire: Fire): boolean {
  return fire?.watch !== undefined || !saysNone(fire?.extinguisher) || (fire?.fluids ?? []).length > 0;
}

type Fire = NonNullable<Survey['plan']['make_safe']>['fire'];

interface StatedStep {
  readonly planned?: boolean | string;
  readonly done?: string;
}

function isMeant(step: StatedStep | undefined): boolean {
  return step !== undefined && (step.planned !== false || step.done !== undefined);
}

/** Who replaces, cuts or pulls what carries the load holds the body at its sills or anchors it to a bench meanwhile. */
export function holdsTheBody({
  operation,
  part,
  joints,
  straightens,
  cutsPartWay,
  offVehicle,
}: OperationSurvey): TriStateOf {
  if (offVehicle || (operation.planned === false && operation.done === undefined)) return false;
  const isJoined =
    operation.do === 'replace' &&
    joints.some(({ joint: { method } }) => method !== undefined && isPermanent(method));
  return allYes([isJoined || straightens === true || cutsPartWay === true, part.structural]);
}

type TriStateOf = ReturnType<typeof allYes>;
