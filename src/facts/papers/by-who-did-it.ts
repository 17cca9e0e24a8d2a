import { isPermanent } from '../joint/joint-methods.ts';
import { goesOnWithoutWelding } from '../part/part-kinds.ts';
import { isJoinedIn } from '../step/joined-in.ts';
import type { OperationSurvey, Survey } from '../survey.ts';
import { samePerson } from './same-person.ts';

/**
 * Work of the structure that the named person did and then releases, in words: of one part, or of all; undefined where somebody else
 * did it, or the plan does not say who.
 */
export function ownWorkReleased(survey: Survey, name: string | undefined, part?: string): string | undefined {
  if (name === undefined) return undefined;
  const own = survey.operations.filter(
    (one) =>
      isJoinedIn(one) &&
      reachesStructure(survey, one) &&
      (part === undefined || one.part.part.id === part) &&
      makersOf(survey, one).some((maker) => samePerson(maker, name)),
  );
  return [...new Set(own.map((one) => one.part.name))].join(', ') || undefined;
}

/** Structure itself, or a skin that is welded, bonded or riveted onto it. */
function reachesStructure(survey: Survey, { part, joints }: OperationSurvey): boolean {
  if (part.structural !== false) return true;
  return (
    !goesOnWithoutWelding(part.part.kind) &&
    joints.some(({ joint: { method, to, sheets = [] } }) =>
      method !== undefined && isPermanent(method)
        ? [to, ...sheets].some((id) => id !== undefined && survey.partById.get(id)?.structural === true)
        : false,
    )
  );
}

/** Who is named at the joints, at the operation, or, where neither names anybody, once for the job. */
function makersOf({ plan }: Survey, { operation, joints }: OperationSurvey): readonly string[] {
  const named = [...joints.map(({ joint }) => joint.by?.name), operation.by?.name].filter(
    (one) => one !== undefined,
  );
  return named.length > 0
    ? named
    : (plan.job?.joined_by ?? []).map(({ name }) => name).filter((one) => one !== undefined);
}
