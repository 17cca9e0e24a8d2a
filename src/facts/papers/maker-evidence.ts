import type { Part } from '../../generated/plan-types.ts';
import type { PartSurvey, Survey } from '../survey.ts';

/** Whether a listed reference of a maker's own kind covers this vehicle. */
export function coversVehicle(survey: Survey, id: string | undefined): boolean {
  const reference = id === undefined ? undefined : survey.referenceById.get(id);
  return reference?.coverage.covers === 'yes' && reference.reference.kind?.startsWith('maker') === true;
}

/**
 * What a statement of the material rests on when it points at a reference: another vehicle's page, or one whose coverage
 * cannot be told, is no more than a hint.
 */
function citesMaker(survey: Survey, id: string): 'maker document' | 'marking on part' | 'hint' {
  const reference = survey.referenceById.get(id);
  if (reference === undefined) return 'hint';
  if (reference.reference.kind === 'marking on part') return 'marking on part';
  const ofMaker = reference.reference.kind?.startsWith('maker') === true;
  return ofMaker && reference.coverage.covers === 'yes' ? 'maker document' : 'hint';
}

/** What tells one grade from another in nobody's hands. */
const guesses: ReadonlySet<string> = new Set(['magnet', 'spark', 'file', 'memory']);

/** What the statement of a part's material rests on. */
export function materialEvidence(
  survey: Survey,
  part: Part,
): 'maker document' | 'marking on part' | 'hint' | 'none' {
  // What the plan leaves out comes from the maker's document in a vehicle pack.
  if (survey.gradesFromPacks?.has(part) === true) return 'maker document';
  const from = part.grade_from;
  if (from === undefined) return 'none';
  if (from.by === 'marking on part') return 'marking on part';
  if (from.reference === undefined) return from.by === undefined ? 'none' : 'hint';
  // Who names a magnet or memory says what told it; a document beside it was not what was read, whatever page it is given.
  if (from.by !== undefined && guesses.has(from.by)) return 'hint';
  // A hardness test tells of the sheet what a page can bear out: with the page it is a check, without it no reading.
  const isRead = from.at !== undefined || from.by === undefined || from.by === 'maker document';
  const isSheet = survey.referenceById.get(from.reference)?.reference.single_sheet === true;
  return isRead || isSheet ? citesMaker(survey, from.reference) : 'hint';
}

/**
 * The class of a part that heat or a weld reaches. Of a part that may carry load a class that stands heat counts only with
 * evidence, and not beside a grade that nobody can read: mild and press-hardened look alike.
 */
export function trustedClass(
  survey: Survey,
  { part, material, structural }: PartSurvey,
): PartSurvey['material']['class'] {
  const standsHeat = material.class === 'mild' || material.class === 'high-strength';
  if (!standsHeat || structural === false) return material.class;
  if (material.unreadable === true) return undefined;
  const evidence = materialEvidence(survey, part);
  return evidence === 'hint' || evidence === 'none' ? undefined : material.class;
}
