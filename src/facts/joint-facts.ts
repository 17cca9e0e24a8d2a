import type { FactNames } from '../generated/fact-names.ts';
import type { Fact } from './fact.ts';
import { hasAdhesive, isArc, isResistance, isWelded } from './joint-methods.ts';
import { assumed, computed, computedOr, known, stated, statedOr, unknown } from './make-fact.ts';
import type { JointSurvey, OperationSurvey, PartSurvey, Survey } from './survey.ts';

type JointFacts = Readonly<Record<FactNames['joint'], Fact>>;

/** One joint or row of joints. */
export function jointFacts(
  survey: Survey,
  operation: OperationSurvey,
  { joint, at }: JointSurvey,
): JointFacts {
  const method = joint.method;
  const noMethod = 'How it is joined is not stated.';
  const stack = sheetsOf(survey, operation.part, joint.sheets ?? [], joint.to);
  const classes = classesOf(stack, at);
  const { count, factory_count: factoryCount, count_done: countDone } = joint;
  return {
    'joint.method': statedOr(method, `${at}/method`, noMethod),
    'joint.form':
      joint.form === undefined && method !== undefined && !isArc(method)
        ? assumed('flange', 'Spots, rivets and adhesive need sheets that lie on each other.', `${at}/form`)
        : statedOr(joint.form, `${at}/form`, 'How the edges meet is not stated.'),
    'joint.arc': computedOr(method === undefined ? undefined : isArc(method), `${at}/method`, noMethod),
    'joint.spot': computedOr(
      method === undefined ? undefined : isResistance(method),
      `${at}/method`,
      noMethod,
    ),
    'joint.welded': computedOr(method === undefined ? undefined : isWelded(method), `${at}/method`, noMethod),
    'joint.to': statedOr(
      joint.to === undefined ? undefined : (survey.partById.get(joint.to)?.name ?? joint.to),
      `${at}/to`,
      'The other part is not stated.',
    ),
    'joint.classes': classes,
    'joint.unlike_metals': unlikeMetals(classes, at),
    'joint.insulated': computed(
      joint.insulation !== undefined ||
        joint.adhesive !== undefined ||
        (method !== undefined && hasAdhesive(method)),
      `${at}/insulation`,
    ),
    'joint.sheets':
      joint.sheets === undefined
        ? unknown('The sheets of the stack are not stated.', at)
        : stated(joint.sheets.length, `${at}/sheets`),
    'joint.thicknesses_stated': computed(
      stack.every((sheet) => sheet?.part.thickness !== undefined),
      `${at}/sheets`,
    ),
    'joint.count': statedOr(count, `${at}/count`, 'The number of joints is not stated.'),
    'joint.factory_count': statedOr(
      factoryCount,
      `${at}/factory_count`,
      'The number of factory joints is not stated.',
    ),
    'joint.fewer': computedOr(
      count === undefined || factoryCount === undefined ? undefined : factoryCount - count,
      `${at}/count`,
      'The number of joints, or that of the factory, is not stated.',
    ),
    'joint.coupon': computed(couponOf(joint.coupon), `${at}/coupon`),
    'joint.adhesive_left_out':
      joint.factory_adhesive === undefined &&
      stack.some((sheet) => sheet?.part.holds?.includes('structural adhesive'))
        ? unknown(
            'A part of the joint holds structural adhesive; whether this joint did is not stated.',
            `${at}/factory_adhesive`,
          )
        : joint.factory_adhesive === undefined
          ? assumed(false, 'No factory adhesive is stated for the joint.', `${at}/factory_adhesive`)
          : computed(
              joint.factory_adhesive &&
                joint.adhesive === undefined &&
                !(method !== undefined && hasAdhesive(method)),
              `${at}/factory_adhesive`,
            ),
    'joint.done_count_short': computed(
      countDone === undefined || (count !== undefined && countDone < count),
      `${at}/count_done`,
    ),
  };
}

/** The stack: the part itself, those named as sheets, and the other side. Undefined for an id that no part bears. */
function sheetsOf(
  survey: Survey,
  own: PartSurvey,
  ids: readonly string[],
  to: string | undefined,
): readonly (PartSurvey | undefined)[] {
  const named = [...ids, ...(to === undefined ? [] : [to])].map((id) => survey.partById.get(id));
  return [...new Set([own, ...named])];
}

function classesOf(stack: readonly (PartSurvey | undefined)[], at: string): Fact {
  const open = stack.find((sheet) => sheet?.material.class === undefined);
  const classes = [...new Set(stack.flatMap((sheet) => sheet?.material.class ?? []))];
  if (stack.some((sheet) => sheet?.material.class === undefined)) {
    // What is known still counts: a hardened sheet in the stack is there whatever the others are.
    return classes.includes('press-hardened') || classes.includes('ultra-high-strength')
      ? known(classes, 'computed', at, 'Not every sheet of the stack is known.')
      : unknown(`The strength class of ${open?.name ?? 'a sheet that is no listed part'} is not known.`, at);
  }
  return known(classes, 'computed', at);
}

function unlikeMetals(classes: Fact, at: string): Fact {
  if (!classes.known || !Array.isArray(classes.value))
    return unknown('A class in the stack is not known.', at);
  const families = new Set(classes.value.map(metalFamily));
  return computed(families.size > 1, at);
}

function metalFamily(strengthClass: string): string {
  return ['aluminium', 'magnesium', 'composite'].includes(strengthClass) ? strengthClass : 'steel';
}

function couponOf(coupon: JointSurvey['joint']['coupon']): 'planned' | 'passed' | 'failed' | 'none' {
  if (coupon === undefined) return 'none';
  if (typeof coupon === 'string') return coupon;
  return coupon.result ?? 'planned';
}
