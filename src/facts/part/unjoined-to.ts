import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { isPermanent } from '../joint/joint-methods.ts';
import { goesOnWithoutWelding } from './part-kinds.ts';
import type { OperationSurvey, PartSurvey, Survey } from '../survey.ts';

/**
 * Neighbours that a part replaced whole is said to be joined to, and to which the plan makes no joint; of a part that is cut, whose rest
 * may hold some of them, only where the new piece is joined to none. Left out are parts that go on without welding, and those that come off
 * or are replaced themselves: their joints are listed with them or are none.
 */
export function unjoinedTo(survey: Survey, one: OperationSurvey): Fact {
  const place = `${one.part.at}/joined_to`;
  return computedOr(
    openNeighbours(survey, one)
      .map(({ name }) => name)
      .join(', ') || undefined,
    place,
    'It is not replaced, or has a joint to every neighbour that it names, cut to one of them.',
  );
}

function openNeighbours(
  survey: Survey,
  { operation, part, joints, cutsPartWay }: OperationSurvey,
): readonly PartSurvey[] {
  const { joined_to: named = [], id: own } = part.part;
  const isReplaced = operation.do === 'replace' && cutsPartWay === false;
  const isCut = (operation.do === 'replace' || operation.do === 'section') && cutsPartWay === true;
  if (!(isReplaced || isCut) || named.length === 0 || own === undefined) return [];
  if (isCut && named.some((id) => id !== own && isJoined(survey, own, id))) return [];
  if (operation.planned === false && operation.done === undefined) return [];
  if (!joints.some(({ joint: { method } }) => method !== undefined && isPermanent(method))) return [];
  return named.flatMap((id) => {
    const neighbour = survey.partById.get(id);
    if (neighbour === undefined || neighbour === part || goesOnWithoutWelding(neighbour.part.kind)) return [];
    return comesOff(neighbour) || isJoined(survey, own, id) ? [] : [neighbour];
  });
}

function comesOff({ operations }: PartSurvey): boolean {
  return operations.some(
    ({ operation }) => operation.do === 'replace' || operation.do === 'remove and refit',
  );
}

function isJoined(survey: Survey, own: string, other: string): boolean {
  return survey.operations.some(({ part, joints }) =>
    joints.some(({ joint }) => {
      const ids = new Set([part.part.id, joint.to, ...(joint.sheets ?? [])]);
      return ids.has(own) && ids.has(other);
    }),
  );
}
