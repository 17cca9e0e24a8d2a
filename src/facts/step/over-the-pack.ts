import { kindIs } from '../part/kind-table.ts';
import { listOf } from '../quantity-of.ts';
import type { OperationSurvey, Survey } from '../survey.ts';

const around = 'around the traction battery';

/** Hot work on what frames the battery of a battery-electric vehicle, or on a part that is joined to it. */
export function isOverPack({ plan, partById }: Survey, one: OperationSurvey): boolean {
  if (one.hot === false || !listOf(plan.vehicle.drive).includes('battery-electric')) return false;
  const joined = one.joints.flatMap(({ joint: { to, sheets } }) => [
    ...(sheets ?? []),
    ...(to === undefined ? [] : [to]),
  ]);
  return (
    kindIs(one.part.part.kind, around) || joined.some((id) => kindIs(partById.get(id)?.part.kind, around))
  );
}
