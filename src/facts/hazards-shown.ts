import type { Survey } from './survey.ts';

/** What can go off, burn or run out beside the work, and what is done with it; in the plan's words. */
export interface HazardShown {
  readonly what: string;
  readonly where?: string;
  readonly state?: string;
  readonly treatment?: string;
  readonly step?: number;
}

/** Restraint units, then fluids and gases, in the order of the plan. */
export function hazardsShown({ plan, partById }: Survey): readonly HazardShown[] {
  const { restraints, fire } = plan.make_safe ?? {};
  const units = (restraints?.units ?? []).map(({ unit, name, at, state, treatment, step }): HazardShown => {
    const where = at === undefined ? undefined : (partById.get(at)?.name ?? at);
    return {
      what: name ?? unit ?? 'a restraint unit without a name',
      ...(where === undefined ? {} : { where }),
      ...(state === undefined ? {} : { state }),
      ...(treatment === undefined ? {} : { treatment }),
      ...(step === undefined ? {} : { step }),
    };
  });
  const fluids = (fire?.fluids ?? []).map(({ item, place, treatment }): HazardShown => ({
    what: item ?? 'a fluid or gas without a name',
    ...(place === undefined ? {} : { where: place }),
    ...(treatment === undefined ? {} : { treatment }),
  }));
  return [...units, ...fluids];
}
