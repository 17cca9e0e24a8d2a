import { saidInClause } from '../../plan/said-in-clause.ts';
import { cavitiesOf } from '../step/inside-protection.ts';
import type { PartSurvey, Survey } from '../survey.ts';

/** Wax that is there when the part is joined in. Primer that bears a weld may be; what is said of it stands under another key. */
const beforeWeld =
  /\bbefore\b.*\b(?:weld(?:s|ed|ing)?|spots?|spotted|joined|joining|brazed|brazing|riveted)\b/i;

/** The words that put wax inside before the part is joined in, and where they stand. English alone is read. */
export function insideToldBeforeWeld(
  survey: Survey,
  { part }: PartSurvey,
): { readonly words: string; readonly at: string } | undefined {
  for (const { cavity, at } of cavitiesOf(survey, part)) {
    if (cavity.wax === undefined || !/before/i.test(cavity.wax)) continue;
    const words = saidInClause(cavity.wax, beforeWeld);
    if (words !== undefined) return { words, at: `${at}/wax` };
  }
  return undefined;
}
