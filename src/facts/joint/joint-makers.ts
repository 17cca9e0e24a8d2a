import type { FactNames } from '../../generated/fact-names.ts';
import type { JointMethod, Person } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { samePerson } from '../papers/same-person.ts';
import { dayOf, whenOf } from '../quantity-of.ts';
import { saysNone } from '../step/step-draft.ts';
import type { JointSurvey, OperationSurvey, Survey } from '../survey.ts';
import { isPermanent } from './joint-methods.ts';
import { isNoQualification, namedSkills, namesOther } from './joiner-qualification.ts';
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

/** A joint of structure with what is wrong about its maker: of many alike the first gives the place. */
interface Group {
  readonly what: string;
  readonly at: string;
  readonly parts: Set<string>;
}

/** Who makes the joints of structural parts, and by which test. One fact for all joints alike, so that one answer serves them. */
export function jointMakerFacts(survey: Survey): Readonly<Record<MakerFact, Fact>> {
  const found = {
    nobody: new Map<string, Group>(),
    unqualified: new Map<string, Group>(),
    other: new Map<string, Group>(),
    lapsed: new Map<string, Group>(),
  };
  for (const operation of survey.operations) {
    if (!joinsStructure(operation)) continue;
    for (const one of operation.joints) {
      const { method } = one.joint;
      if (method === undefined || !isPermanent(method)) continue;
      const add = (groups: Map<string, Group>, what: string, at: string): void => {
        const group = groups.get(what) ?? { what, at, parts: new Set() };
        group.parts.add(operation.part.name);
        groups.set(what, group);
      };
      const makers = makersOf(survey, operation, one, method);
      if (makers.length === 0) add(found.nobody, method, one.at);
      for (const maker of makers) {
        const { name = '', qualification = '', at } = maker;
        if (isNoQualification(qualification)) add(found.unqualified, `${method} by ${name}`, at);
        else if (namesOther(namedSkills(qualification), method, metalsOf(survey, operation, one)))
          add(found.other, `${method} by ${name} (${qualification})`, at);
        if (hasLapsed(survey, operation, one, maker))
          add(found.lapsed, `${method} by ${name}, valid until ${maker.valid_until ?? ''}`, at);
      }
    }
  }
  return {
    'plan.joints_by_nobody': groupFact(found.nobody, 'Somebody is named for every joint of structure.'),
    'plan.joints_by_unqualified': groupFact(
      found.unqualified,
      'Everybody who is named for a joint of structure has a qualification.',
    ),
    'plan.joints_by_other_test': groupFact(
      found.other,
      'No qualification names another kind of joint or another metal only.',
    ),
    'plan.joints_by_lapsed': groupFact(found.lapsed, 'No approval ends before the day of its joint.'),
  };
}

function joinsStructure({ operation, part, joints }: OperationSurvey): boolean {
  const isLeftOut = operation.planned === false && operation.done === undefined;
  return joints.length > 0 && part.structural !== false && !isLeftOut;
}

/** The joint's own person, else the operation's, else all whom the job names for such joints. */
function makersOf(
  { plan }: Survey,
  { operation, at: operationAt }: OperationSurvey,
  { joint, at }: JointSurvey,
  method: JointMethod,
): readonly Maker[] {
  const joiners = (plan.job?.joined_by ?? [])
    .map((joiner, index): Maker => ({ ...joiner, at: `/job/joined_by/${String(index)}` }))
    .filter(({ name, methods }) => !saysNone(name) && (methods?.includes(method) ?? true));
  for (const [person, place] of [
    [joint.by, `${at}/by`],
    [operation.by, `${operationAt}/by`],
  ] as const) {
    if (person !== undefined && !saysNone(person.name)) return [completed(person, place, joiners)];
  }
  return joiners;
}

/** Named at the joint by name alone, a person has the qualification that the job states for that name. */
function completed(person: Person, at: string, joiners: readonly Maker[]): Maker {
  const { name = '' } = person;
  const listed = joiners.find((joiner) => samePerson(joiner.name ?? '', name));
  if (person.qualification !== undefined || listed === undefined) return { ...person, at };
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

const mostNamed = 3;

function groupFact(groups: ReadonlyMap<string, Group>, none: string): Fact {
  const all = [...groups.values()];
  const text = all
    .map(({ what, parts }) => {
      const names = [...parts];
      const more = names.length > mostNamed ? [`${String(names.length - mostNamed)} parts more`] : [];
      return `${what} at ${[...names.slice(0, mostNamed), ...more].join(' and ')}`;
    })
    .join('; ');
  return computedOr(text || undefined, all[0]?.at ?? '/job/joined_by', none);
}
