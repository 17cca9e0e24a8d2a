import { damageKinds } from '../part/part-damage-facts.ts';
import type { PartKind } from '../../generated/plan-types.ts';
import { isPyrotechnic, usuallyCarriesRestraintUnit } from '../part/part-kinds.ts';
import { sameName } from '../../vehicle/same-name.ts';
import { listOf } from '../quantity-of.ts';
import type { OperationSurvey, PartSurvey, Survey } from '../survey.ts';
import type { TriState } from '../tri-state.ts';
import { anyYes } from '../tri-state.ts';

export type RestraintUnit = NonNullable<
  NonNullable<NonNullable<Survey['plan']['make_safe']>['restraints']>['units']
>[number];

/** Whether an undeployed airbag, pretensioner or other unit stays fitted at the part while the part is worked on. */
export function undeployedUnitStays(survey: Survey, one: PartSurvey): TriState {
  const { part, operations } = one;
  const units = survey.plan.make_safe?.restraints?.units;
  const here = unitsAt(survey, part.id);
  if (here.length > 0) {
    const worked = operations.filter(({ works }) => works !== false).map(({ operation }) => operation.step);
    // On a part that nothing is done to, it matters only whether the unit goes at all.
    const steps = worked.length === 0 ? [Infinity] : worked;
    return anyYes(here.flatMap((unit) => steps.map((step) => isOn(unit, step))));
  }
  if ((part.holds ?? []).some(isPyrotechnic)) return true;
  // A unit that is left on without its place may sit at any part.
  if ((units ?? []).some((unit) => isFittedSomewhere(unit) && canSitAt(unit, one))) return undefined;
  // A list that leaves this part out says that nothing sits here; no list says nothing, and an empty one on a car hardly more.
  const nothingSaid = (units ?? []).length === 0 && survey.plan.vehicle.restraints === undefined;
  return nothingSaid && usuallyCarriesRestraintUnit(part.kind) ? undefined : false;
}

/**
 * Whether an undeployed unit stays fitted at a part that an operation joins, or that lies on or under its own part: the spots and the
 * drill go into the very flange that carries it. A part that is listed beside the work with its distance is judged by that.
 */
export function fittedUnitBeside(survey: Survey, one: OperationSurvey): TriState {
  const { operation, part } = one;
  const listed = new Set(
    (operation.near ?? [])
      .filter((near) => near.distance !== undefined && !comesOffLater(survey, near, operation.step))
      .map((near) => near.part),
  );
  const beside = [...new Set(reachedByJoint(one))].filter((id) => id !== part.part.id && !listed.has(id));
  return anyYes(
    beside.flatMap((id) => {
      const holds = survey.partById.get(id)?.part.holds ?? [];
      const units = unitsAt(survey, id);
      const held = units.length === 0 && holds.some(isPyrotechnic);
      return [...units.map((unit) => isOnBeside(unit, operation.step)), ...(held ? [true] : [])];
    }),
  );
}

/** Ids of the parts whose flanges the spots and the drill of an operation go into: those it joins, and the layers on and under its own. */
export function reachedByJoint({ joints, part }: OperationSurvey): readonly string[] {
  return [
    ...joints.flatMap(({ joint }) => [
      ...(joint.sheets ?? []),
      ...(joint.to === undefined ? [] : [joint.to]),
    ]),
    ...listOf(part.part.over),
    ...listOf(part.part.under),
  ];
}

/** A part said to be removed that is still on at this step: what is fitted at it is there as well, however it is listed. */
function comesOffLater(
  survey: Survey,
  near: { readonly part?: string; readonly treatment?: string },
  step: number | undefined,
): boolean {
  if (near.treatment !== 'removed' || step === undefined) return false;
  const off = (near.part === undefined ? undefined : survey.partById.get(near.part))?.operations ?? [];
  const steps = off
    .filter(({ operation }) => operation.do === 'replace' || operation.do === 'remove and refit')
    .map((one) => one.operation.step);
  return steps.length > 0 && steps.every((other) => other !== undefined && other > step);
}

/** A unit that comes off is off for an operation without a step: steps that are not written contradict nothing. */
function isOnBeside(unit: RestraintUnit, step: number | undefined): TriState {
  return step === undefined && unit.treatment === 'removed' ? false : isOn(unit, step);
}

export function unitsAt(survey: Survey, id: string | undefined): readonly RestraintUnit[] {
  if (id === undefined) return [];
  return (survey.plan.make_safe?.restraints?.units ?? []).filter(({ at }) => at === id);
}

/** Whether a unit can no longer fire at the part when the work of a step begins: deployed, or taken off by then. */
export function wasOffBefore(unit: RestraintUnit, step: number | undefined): TriState {
  if (unit.state === 'deployed') return true;
  if (unit.treatment === 'stays') return false;
  if (unit.treatment === undefined) return undefined;
  if (unit.step === undefined) return true;
  return step === undefined ? undefined : unit.step <= step;
}

/** Why nobody can tell whether a unit sits at a part. */
export function unitsQuestion(survey: Survey, one: PartSurvey): string {
  const { part } = one;
  const lost = (survey.plan.make_safe?.restraints?.units ?? []).filter(
    (unit) => isFittedSomewhere(unit) && canSitAt(unit, one),
  );
  return unitsAt(survey, part.id).length > 0 || lost.length === 0
    ? 'The plan does not say which airbags and pretensioners sit at this part and what is done with them.'
    : `The plan does not say at which part this unit sits, which stays fitted: ${lost.map(nameOf).join(', ')}.`;
}

/** Kinds in which, or beside which, an airbag in front of a seat is built in. */
const besideTheWheel: ReadonlySet<PartKind> = new Set<PartKind>([
  ...(['steering part', 'bulkhead', 'trim', 'bracket', 'crossmember', 'restraint unit', 'other'] as const),
]);

/** Names of crossmembers and brackets that lie away from the dashboard, and of those that carry it or the steering column. */
const atTheFarEnd =
  /\b(?:front|radiator|lock|rear|back|boot|floor|seat|tunnel|roof|bumper|tank|engine|battery|spare wheel)\b/i;
const carriesColumn =
  /\b(?:dash\w*|cockpit|instruments?|steering|column|cowl|bulkhead|firewall|cross-?car)\b/i;

/** An airbag of the steering wheel, the dashboard or a knee sits in none of the parts that a body is built of, whoever forgets to say so. */
function canSitAt({ unit, name }: RestraintUnit, { part, name: partName }: PartSurvey): boolean {
  const { kind } = part;
  const atTheWheel =
    unit === 'knee airbag' ||
    (unit === 'airbag' &&
      /^(?:driver|passenger|front passenger|steering wheel|dashboard|knee)(?:['’]s)?(?: (?:front )?airbag)?$/iu.test(
        (name ?? '').trim(),
      ));
  if (!atTheWheel || kind === undefined) return true;
  // The driver's sits in the wheel itself: of crossmembers and brackets only those that carry the column are beside it.
  const isBodyOnly =
    (kind === 'crossmember' || kind === 'bracket') &&
    partName.trim() !== '' &&
    /^(?:driver|steering wheel)/i.test((name ?? '').trim()) &&
    atTheFarEnd.test(partName) &&
    !carriesColumn.test(partName);
  return !isBodyOnly && besideTheWheel.has(kind);
}

function nameOf({ name, unit }: RestraintUnit): string {
  return name ?? unit ?? 'a unit without a name';
}

/** A unit listed as a part that went off. */
export function isDeployed({ part }: PartSurvey): boolean {
  return part.kind === 'restraint unit' && damageKinds(part).includes('deployed');
}

/** A unit that stays spent, and where the plan says so. */
interface KeptUnit {
  readonly name: string;
  readonly at: string;
}

/**
 * Deployed units in whose place the plan puts nothing new: by its list, or as parts that nothing replaces. One that is taken off is
 * answered for by a new restraint part: the one it sits at, the one of its name, or one that no other unit needs.
 */
export function deployedKept({ plan, parts, partById, context }: Survey): readonly KeptUnit[] {
  const listed = (plan.make_safe?.restraints?.units ?? []).map((unit, index) => ({
    unit,
    at: `/make_safe/restraints/units/${String(index)}`,
  }));
  const spare = new Set(parts.filter((one) => one.part.kind === 'restraint unit' && isReplacedAnew(one)));
  const spent = listed.filter(
    ({ unit: { state, treatment } }) =>
      state === 'deployed' && (treatment === 'stays' || treatment === 'removed'),
  );
  const open = spent.filter(({ unit }) => {
    const at = unit.at === undefined ? undefined : partById.get(unit.at);
    const own = [...spare].find((one) => one === at || sameName(one.name, nameOf(unit)));
    if (own !== undefined) spare.delete(own);
    return own === undefined;
  });
  const kept = open.filter(({ unit }) => {
    const [any] = spare;
    if (unit.treatment === 'stays' || any === undefined) return true;
    spare.delete(any);
    return false;
  });
  return [
    ...kept.map(({ unit, at }) => ({ name: nameOf(unit), at })),
    ...parts
      // Before work begins a part of which nothing is written yet is still open.
      .filter(
        (one) =>
          isDeployed(one) && !isReplacedAnew(one) && (context.stage !== 'start' || one.operations.length > 0),
      )
      .map(({ name, at }) => ({ name, at: `${at}/damage` })),
  ];
}

function isReplacedAnew({ operations }: PartSurvey): boolean {
  return operations.some(({ operation }) => operation.do === 'replace');
}

/** Units of which nobody says whether they deployed, or what becomes of them although they did. */
export function unitsOpen({ plan }: Survey): readonly string[] {
  return (plan.make_safe?.restraints?.units ?? [])
    .filter(
      ({ state, treatment }) => state === 'not yet seen' || (state === 'deployed' && treatment === undefined),
    )
    .map(nameOf);
}

function isOn(unit: RestraintUnit, step: number | undefined): TriState {
  const off = wasOffBefore(unit, step);
  return off === undefined ? undefined : !off;
}

function isFittedSomewhere({ at, state, treatment }: RestraintUnit): boolean {
  return at === undefined && state !== 'deployed' && (treatment === undefined || treatment === 'stays');
}
