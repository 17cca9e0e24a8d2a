import type { Survey } from './survey.ts';

/** Whether a listed reference of a maker's own kind covers this vehicle. */
export function coversVehicle(survey: Survey, id: string | undefined): boolean {
  const reference = id === undefined ? undefined : survey.referenceById.get(id);
  return reference?.coverage.covers === 'yes' && reference.reference.kind?.startsWith('maker') === true;
}

/**
 * What a statement of the material rests on when it points at a reference: another vehicle's page, or one whose coverage
 * cannot be told, is no more than a hint.
 */
export function citesMaker(survey: Survey, id: string): 'maker document' | 'marking on part' | 'hint' {
  const reference = survey.referenceById.get(id);
  if (reference === undefined) return 'hint';
  if (reference.reference.kind === 'marking on part') return 'marking on part';
  const ofMaker = reference.reference.kind?.startsWith('maker') === true;
  return ofMaker && reference.coverage.covers === 'yes' ? 'maker document' : 'hint';
}
