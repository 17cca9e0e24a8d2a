import type { FactNames } from '../../generated/fact-names.ts';
import type { JointMethod, Person } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { inOrder } from '../in-order.ts';
import { computedOr } from '../make-fact.ts';
import { samePerson } from '../papers/same-person.ts';
import { dayOf, whenOf } from '../quantity-of.ts';
import { saysNone } from '../step/step-draft.ts';
import type { JointSurvey, OperationSurvey, Survey } from '../survey.ts';
import { isPermanent } from './joint-methods.ts';
import { isCourseToCome } from '../papers/course-to-come.ts';
import { formatDay } from '../../quantity/format-day.ts';
import { isNoQualification } from '../refusals.ts';
import { namedSkills, namesOther } from './joiner-qualification.ts';
import type { JoinedMetal } from './joiner-qualification.ts';

type MakerFact = Extract<
  FactNames['plan'],
  `plan.joints_by_${'nobody' | 'unqualified' | 'other_test' | 'lapsed'}`
>;

type Joiner = NonNullable<NonNullable<Survey['plan']['job']>['joined_by']>[number];

/** A person who makes a joint, and where the plan says so. */
interface Maker extends Joiner {
  readonly at: string;
}

/** What is wrong about who makes a joint. */
interface Fault {
  readonly kind: 'nobody' | 'unqualified' | 'other_test' | 'lapsed';
  /** The kind of joint, and by whom; joints that are alike in it are told as one. */
  readonly what: string;
  readonly at: string;
  readonly part: string;
  /** Its id: of parts of one name it keeps the order. */
  readonly id: string;
}

/** Who makes the joints of structural parts, and by which test. One fact for all joints alike, so that one answer serves them. */
export function jointMakerFacts(survey: Survey): Readonly<Record<MakerFact, Fact>> {
  const faults = survey.operations
    .filter(({ operation }) => operation.planned !== false || operation.done !== undefined)
    .flatMap((operation) =>
      operation.joints
        .filter((joint) => holdsStructure(survey, operation, joint))
        .flatMap((joint) => faultsOf(survey, operation, joint)),
    );
  const of = (kind: Fault['kind'], none: string): Fact =>
    grouped(
      faults.filter((fault) => fault.kind === kind),
      none,
    );
  return {
    'plan.joints_by_nobody': of('nobody', 'Somebody is named for every joint of structure.'),
    'plan.joints_by_unqualified': of(
      'unqualified',
      'Everybody who is named for a joint of structure has a qualification.',
    ),
    'plan.joints_by_other_test': of(
      'other_test',
      'No qualification names another kind of joint or another metal only.',
    ),
    'plan.joints_by_lapsed': of('lapsed', 'No approval ends before the day of its joint.'),
  };
}

function faultsOf(survey: Survey, operation: OperationSurvey, one: JointSurvey): readonly Fault[] {
  const { joint } = one;
  const { method } = joint;
  if (method === undefined || !isPermanent(method)) return [];
  const part = operation.part.name;
  const id = operation.part.part.id ?? '';
  const makers = makersOf(survey, operation, one, method);
  // Of a skin nobody need be named; who is named for it is held to it, for it is bonded to what carries load.
  if (makers.length === 0)
    return operation.part.structural === false
      ? []
      : [{ kind: 'nobody', what: method, at: one.at, part, id }];
  return makers.flatMap((maker): readonly Fault[] => {
    const { name = '', qualification = '', valid_until: until = '', at } = maker;
    const what = `${method} by ${name}`;
    const day = joint.done ?? operation.operation.done ?? formatDay(survey.context.asOfDay);
    const isNone = isNoQualification(qualification) || isCourseToCome(qualification, day);
    const isOther = (): boolean =>
      namesOther(namedSkills(qualification), method, metalsOf(survey, operation, one));
    return [
      ...(isNone
        ? [{ kind: 'unqualified', what, at, part, id } as const]
        : isOther()
          ? [{ kind: 'other_test', what: `${what} (${qualification})`, at, part, id } as const]
          : []),
      ...(hasLapsed(survey, operation, one, maker)
        ? [{ kind: 'lapsed', what: `${what}, valid until ${until},`, at, part, id } as const]
        : []),
    ];
  });
}

/** Whether one of the parts that a joint joins carries load, as far as the plan tells. Glass is a glazier's: no test of a joiner names it. */
function holdsStructure(
  { partById }: Survey,
  { part }: OperationSurvey,
  { joint: { to, sheets } }: JointSurvey,
): boolean {
  if (part.structural !== false) return true;
  if (part.part.kind === 'glass') return false;
  return [to, ...(sheets ?? [])].some((id) => {
    const other = id === undefined ? undefined : partById.get(id);
    return other !== undefined && other.structural !== false;
  });
}

/** The joint's own person, else the operation's, else all whom the job names for such joints. */
function makersOf(
  { plan }: Survey,
  { operation, at: operationAt }: OperationSurvey,
  { joint, at }: JointSurvey,
  method: JointMethod,
): readonly Maker[] {
  const joiners = (plan.job?.joined_by ?? [])
    .map((joiner, index): Maker => ({ at: `/job/joined_by/${String(index)}`, ...joiner }))
    .filter(({ name, methods }) => !saysNone(name) && (methods?.includes(method) ?? true));
  for (const [person, place] of [
    [joint.by, `${at}/by`],
    [operation.by, `${operationAt}/by`],
  ] as const) {
    if (person !== undefined && !saysNone(person.name)) return [completed(person, place, joiners)];
  }
  return joiners;
}

/** Named at the joint by name alone, or with the same qualification, a person has the one that the job states for that name, and as long. */
function completed(person: Person, at: string, joiners: readonly Maker[]): Maker {
  const { name = '' } = person;
  const listed = joiners.find((joiner) => samePerson(joiner.name ?? '', name));
  const { qualification: said } = person;
  const isAnother = said !== undefined && said !== listed?.qualification;
  if (isAnother || listed === undefined) return { at, ...person };
  return { ...listed, name };
}

function metalsOf(
  { partById }: Survey,
  { part }: OperationSurvey,
  { joint }: JointSurvey,
): ReadonlySet<JoinedMetal> {
  if (joint.method === 'aluminium arc') return new Set(['aluminium']);
  const ids = [...(joint.sheets ?? []), ...(joint.to === undefined ? [] : [joint.to])];
  const classes = [part, ...ids.map((id) => partById.get(id))].map((sheet) => sheet?.material.class);
  // What an unknown sheet is may be just the metal that the test names.
  if (classes.includes(undefined)) return new Set();
  return new Set(
    classes
      .filter((one) => one !== 'magnesium' && one !== 'composite')
      .map((one) => (one === 'aluminium' ? 'aluminium' : 'steel')),
  );
}

/** By the day of the joint; of one that is not dated yet, by the as-of date. */
function hasLapsed(
  { context }: Survey,
  { operation }: OperationSurvey,
  { joint }: JointSurvey,
  { valid_until: until }: Maker,
): boolean {
  const last = dayOf(until);
  return last !== undefined && (whenOf(joint.done ?? operation.done)?.day ?? context.asOfDay) > last;
}

/** As many parts are named of one kind of joint; of more their number is told. */
const mostNamed = 3;

/** In the order of the words: that of parts in the plan tells nothing. */
function grouped(found: readonly Fault[], none: string): Fact {
  const faults = found.toSorted(
    (a, b) => inOrder(a.what, b.what) || inOrder(a.part, b.part) || inOrder(a.id, b.id),
  );
  const parts = new Map<string, Set<string>>();
  for (const { what, part } of faults) parts.set(what, (parts.get(what) ?? new Set()).add(part));
  const text = [...parts]
    .map(([what, named]) => {
      const more = named.size - mostNamed;
      const shown = [...[...named].slice(0, mostNamed), ...(more > 0 ? [`${String(more)} more`] : [])];
      return `${what} at ${shown.join(' and ')}`;
    })
    .join('; ');
  return computedOr(text || undefined, faults[0]?.at ?? '/job/joined_by', none);
}
