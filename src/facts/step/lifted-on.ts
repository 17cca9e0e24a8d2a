import { kindIs } from '../part/kind-table.ts';
import type { PartSurvey, Survey } from '../survey.ts';

/**
 * Names of the parts that carry the vehicle while the edge that they share with a neighbour is cut apart and welded anew: a ring or
 * sill is replaced, and the lift stands on the sill that it is joined to.
 */
export function liftedBesideTheWork(survey: Survey): readonly string[] {
  const points = new Set(survey.plan.make_safe?.lifting?.points ?? []);
  if (points.size === 0) return [];
  return survey.parts
    .filter(
      ({ part }) => part.id !== undefined && points.has(part.id) && kindIs(part.kind, 'edge of the lift'),
    )
    .filter(({ part }) =>
      survey.parts.some((worked) => worked.part !== part && isJoinedAnew(worked, part.id)),
    )
    .map(({ name }) => name);
}

function isJoinedAnew({ part, operations }: PartSurvey, id: string | undefined): boolean {
  if (id === undefined || !kindIs(part.kind, 'edge of the lift')) return false;
  return operations.some(
    ({ works, joints }) =>
      works !== false && joints.some(({ joint: { to, sheets } }) => to === id || (sheets ?? []).includes(id)),
  );
}
