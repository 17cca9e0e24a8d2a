import type { PartSurvey, Survey } from '../survey.ts';

/** The parts that a part is joined to or layered with, by whatever the plan says of either. */
export function linkedParts(survey: Survey, one: PartSurvey): ReadonlySet<PartSurvey> {
  const linked = new Set<PartSurvey>();
  for (const id of one.names) {
    const other = survey.partById.get(id);
    if (other !== undefined && other !== one) linked.add(other);
  }
  const { id } = one.part;
  if (id === undefined) return linked;
  for (const other of survey.namedBy.get(id) ?? []) if (other !== one) linked.add(other);
  return linked;
}
