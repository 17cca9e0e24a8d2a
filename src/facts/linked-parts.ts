import { listOf } from './quantity-of.ts';
import type { PartSurvey, Survey } from './survey.ts';

/** The parts that a part is joined to or layered with, by whatever the plan says of either. */
export function linkedParts(survey: Survey, one: PartSurvey): ReadonlySet<PartSurvey> {
  const linked = new Set<PartSurvey>();
  for (const id of namedBy(one)) {
    const other = survey.partById.get(id);
    if (other !== undefined && other !== one) linked.add(other);
  }
  const { id } = one.part;
  if (id === undefined) return linked;
  for (const other of survey.parts) if (other !== one && namedBy(other).has(id)) linked.add(other);
  return linked;
}

const named = new WeakMap<PartSurvey, ReadonlySet<string>>();

function namedBy(one: PartSurvey): ReadonlySet<string> {
  const before = named.get(one);
  if (before !== undefined) return before;
  const { part, operations } = one;
  const ids = new Set([
    ...listOf(part.under),
    ...listOf(part.over),
    ...(part.joined_to ?? []),
    ...operations.flatMap(({ joints }) =>
      joints.flatMap(({ joint }) => [...(joint.sheets ?? []), ...(joint.to === undefined ? [] : [joint.to])]),
    ),
  ]);
  named.set(one, ids);
  return ids;
}
