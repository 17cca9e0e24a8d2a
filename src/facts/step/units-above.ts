import type { FactNames } from '../../generated/fact-names.ts';
import type { PartKind } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { forLast } from '../../plan/for-last.ts';
import { computedOr } from '../make-fact.ts';
import { linkedParts } from '../part/linked-parts.ts';
import { isPyrotechnic } from '../part/part-kinds.ts';
import { sharesSide } from '../part/side-named.ts';
import type { OperationSurvey, PartSurvey, Survey } from '../survey.ts';
import { reachedByJoint, unitsAt, wasOffBefore } from './restraint-units.ts';
import type { RestraintUnit } from './restraint-units.ts';

/** What stands on, or hangs at, a worked kind of part and carries belts or seat airbags at that very end. Common practice, no source. */
const carriersAt: ReadonlyMap<PartKind, ReadonlySet<PartKind>> = new Map<PartKind, ReadonlySet<PartKind>>([
  ...(['sill', 'sill reinforcement', 'sill skin'] as const).map(
    (kind) => [kind, new Set<PartKind>(['b-pillar', 'door ring', 'seat'])] as const,
  ),
  ...(['b-pillar', 'door ring'] as const).map(
    (kind) => [kind, new Set<PartKind>(['sill', 'sill reinforcement'])] as const,
  ),
  ...(['quarter panel', 'side panel'] as const).map(
    (kind) => [kind, new Set<PartKind>(['c-pillar', 'wheelhouse', 'roof rail'])] as const,
  ),
  ['wheelhouse', new Set<PartKind>(['c-pillar', 'wheelhouse'])],
  ...(['c-pillar', 'd-pillar'] as const).map((kind) => [kind, new Set<PartKind>(['roof rail'])] as const),
]);

/** Units that sit at the foot of their part; a curtain airbag hangs at the far end of a pillar, and along the whole roof rail. */
const atTheFoot: ReadonlySet<RestraintUnit['unit']> = new Set<RestraintUnit['unit']>([
  'belt pretensioner',
  'side airbag',
  'other',
  undefined,
]);

/**
 * A unit that is still fitted a hand's breadth from the work although no joint, layer or list of the plan ties the two: the belt reel at
 * the foot of a pillar above the sill. Of several operations beside one unit the first of a structural part is told of it.
 */
export function unitAbove(
  survey: Survey,
  one: OperationSurvey,
): Readonly<Record<Extract<FactNames['operation'], 'operation.unit_above'>, Fact>> {
  const found = toldOf(survey).get(one) ?? [];
  return {
    'operation.unit_above': computedOr(
      found.map(({ text }) => text).join(', ') || undefined,
      found[0]?.at ?? `${one.at}/do`,
      'No unit at the foot of a part beside the work is still fitted then, or its distance is listed.',
    ),
  };
}

const toldOf = forLast((survey: Survey): ReadonlyMap<OperationSurvey, readonly Fitted[]> => {
  const told = new Set<string>();
  const found = new Map<OperationSurvey, readonly Fitted[]>();
  const worked = survey.operations.filter(
    ({ hot, straightens, offVehicle }) => !offVehicle && (hot !== false || straightens === true),
  );
  const isCosmetic = ({ part }: OperationSurvey): boolean => part.structural === false;
  for (const one of [...worked.filter((each) => !isCosmetic(each)), ...worked.filter(isCosmetic)]) {
    const units = carriersBeside(survey, one)
      .flatMap((carrier) => fittedAt(survey, carrier, one))
      .filter(({ at }) => !told.has(at));
    if (units.length === 0) continue;
    found.set(one, units);
    for (const { at } of units) told.add(at);
  }
  return found;
});

/** Parts of the same side that stand at the worked one; what is joined, layered or listed with it is judged by that. */
function carriersBeside(survey: Survey, one: OperationSurvey): readonly PartSurvey[] {
  const kinds = kindsBeside(one.part);
  if (kinds === undefined) return [];
  const linked = [...linkedParts(survey, one.part)];
  // The distance to a sill is that to the skin over it.
  const listed = [one, ...linked.flatMap(({ operations }) => operations)].flatMap(
    ({ operation: { near = [] } }) => near.filter(({ distance }) => distance !== undefined),
  );
  if (listed.some(({ item }) => item !== undefined && isPyrotechnic(item))) return [];
  const tied = new Set([
    ...reachedByJoint(one),
    ...linked.map(({ part }) => part.id),
    ...listed.map(({ part }) => part),
  ]);
  return survey.parts.filter(
    ({ part }) =>
      part.id !== undefined &&
      part !== one.part.part &&
      part.kind !== undefined &&
      kinds.has(part.kind) &&
      sharesSide(part.side, one.part.part.side) &&
      !tied.has(part.id),
  );
}

function kindsBeside({ part: { kind } }: PartSurvey): ReadonlySet<PartKind> | undefined {
  return kind === undefined ? undefined : carriersAt.get(kind);
}

interface Fitted {
  readonly text: string;
  readonly at: string;
}

function fittedAt(
  survey: Survey,
  carrier: PartSurvey,
  { operation: { step } }: OperationSurvey,
): readonly Fitted[] {
  const { units = [] } = survey.plan.make_safe?.restraints ?? {};
  const own = unitsAt(survey, carrier.part.id);
  const held = own.length > 0 ? [] : (carrier.part.holds ?? []).filter(isPyrotechnic);
  return [
    ...own
      .filter(({ unit }) =>
        carrier.part.kind === 'roof rail' ? unit === 'curtain airbag' : atTheFoot.has(unit),
      )
      .filter((unit) => isStillOn(unit, step))
      .map((unit) => ({
        text: `${unit.name ?? unit.unit ?? 'a restraint unit'} at ${carrier.name}`,
        at: `/make_safe/restraints/units/${String(units.indexOf(unit))}`,
      })),
    ...held.map((item) => ({ text: `${item} at ${carrier.name}`, at: `${carrier.at}/holds` })),
  ];
}

/** What is not said to come off is taken to stay; steps that are not written contradict nothing. */
function isStillOn(unit: RestraintUnit, step: number | undefined): boolean {
  if (step === undefined && unit.treatment === 'removed') return false;
  return wasOffBefore(unit, step) !== true;
}
