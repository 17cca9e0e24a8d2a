import type { PartKind } from '../../generated/plan-types.ts';
import type { PartSurvey, Survey } from '../survey.ts';

/** Kinds that make up the edge on which a vehicle stands on its lift. */
const sillEdge: ReadonlySet<PartKind | undefined> = new Set<PartKind | undefined>([
  ...(['sill', 'sill reinforcement', 'sill skin', 'door ring'] as const),
]);

/**
 * Names of the parts that carry the vehicle while the edge that they share with a neighbour is cut apart and welded anew: a ring or
 * sill is replaced, and the lift stands on the sill that it is joined to.
 */
export function liftedBesideTheWork(survey: Survey): readonly string[] {
  const points = new Set(survey.plan.make_safe?.lifting?.points ?? []);
  if (points.size === 0) return [];
  return survey.parts
    .filter(({ part }) => part.id !== undefined && points.has(part.id) && sillEdge.has(part.kind))
    .filter(({ part }) =>
      survey.parts.some((worked) => worked.part !== part && isJoinedAnew(worked, part.id)),
    )
    .map(({ name }) => name);
}

function isJoinedAnew({ part, operations }: PartSurvey, id: string | undefined): boolean {
  if (id === undefined || !sillEdge.has(part.kind)) return false;
  return operations.some(
    ({ works, joints }) =>
      works !== false && joints.some(({ joint: { to, sheets } }) => to === id || (sheets ?? []).includes(id)),
  );
}
