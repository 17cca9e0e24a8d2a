import { isPyrotechnic, usuallyCarriesRestraintUnit } from './part-kinds.ts';
import type { PartSurvey, Survey } from './survey.ts';
import type { TriState } from './tri-state.ts';

/** Whether an undeployed airbag, pretensioner or other unit stays fitted at the part. */
export function undeployedUnitStays(survey: Survey, { part, operations }: PartSurvey): TriState {
  const units = survey.plan.make_safe?.restraints?.units;
  const here = (units ?? []).filter((unit) => part.id !== undefined && unit.at === part.id);
  if (here.length > 0) {
    const fitted = here.filter(({ state }) => state !== 'deployed');
    if (fitted.some(({ treatment }) => treatment === 'stays')) return true;
    // Taken off only after work that has a lower step, it was there during that work.
    const lastOff = Math.max(0, ...fitted.map(({ step }) => step ?? 0));
    if (operations.some(({ operation, works }) => works !== false && (operation.step ?? lastOff) < lastOff))
      return true;
    return here.some(({ state, treatment }) => state !== 'deployed' && treatment === undefined)
      ? undefined
      : false;
  }
  if ((part.holds ?? []).some(isPyrotechnic)) return true;
  // A unit that is left on without its place may sit at any part.
  if ((units ?? []).some(isFittedSomewhere)) return undefined;
  // A list that leaves this part out says that nothing sits here; no list at all says nothing.
  return units === undefined && usuallyCarriesRestraintUnit(part.kind) ? undefined : false;
}

type Unit = NonNullable<NonNullable<NonNullable<Survey['plan']['make_safe']>['restraints']>['units']>[number];

function isFittedSomewhere({ at, state, treatment }: Unit): boolean {
  return at === undefined && state !== 'deployed' && (treatment === undefined || treatment === 'stays');
}
