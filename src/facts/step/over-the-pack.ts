import type { PartKind } from '../../generated/plan-types.ts';
import { listOf } from '../quantity-of.ts';
import type { OperationSurvey, Survey } from '../survey.ts';

/** Kinds that frame or roof the traction battery in most electric cars. Common practice, no source. */
const aroundPack: ReadonlySet<PartKind | undefined> = new Set<PartKind | undefined>([
  ...(['sill', 'sill reinforcement', 'sill skin', 'floor', 'tunnel', 'crossmember', 'battery tray'] as const),
]);

/** Hot work on what frames the battery of a battery-electric vehicle, or on a part that is joined to it. */
export function isOverPack({ plan, partById }: Survey, one: OperationSurvey): boolean {
  if (one.hot === false || !listOf(plan.vehicle.drive).includes('battery-electric')) return false;
  const joined = one.joints.flatMap(({ joint: { to, sheets } }) => [
    ...(sheets ?? []),
    ...(to === undefined ? [] : [to]),
  ]);
  return (
    aroundPack.has(one.part.part.kind) || joined.some((id) => aroundPack.has(partById.get(id)?.part.kind))
  );
}
