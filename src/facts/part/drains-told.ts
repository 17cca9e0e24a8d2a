import { saidInClause } from '../../plan/said-in-clause.ts';
import { cavitiesOf } from '../step/inside-protection.ts';
import type { PartSurvey, Survey } from '../survey.ts';

const shutWords = '(?:plugged|sealed|closed|blocked|filled|taped|stopped|bunged)';
const isShut = new RegExp(
  `\\b${shutWords}(?: up)?(?: (?:with|by) \\w+)?$|^(?:and )?${shutWords}\\b(?! (?:before|while|during|until))`,
  'i',
);
const shutDrain = new RegExp(
  `\\bdrains?\\b.*\\b${shutWords}\\b(?! (?:before|while|during|until))|\\b${shutWords}(?: up)? (?:the |all |its )?drains?\\b`,
  'i',
);

/** The words on a cavity that say that its drain holes are shut, with their place; where it is left open again nothing is told. */
export function drainsToldShut(
  survey: Survey,
  { part }: PartSurvey,
): { readonly words: string; readonly at: string } | undefined {
  for (const { cavity, at } of cavitiesOf(survey, part)) {
    for (const [key, text] of [
      ['wax', cavity.wax],
      ['primer', cavity.primer],
      ['note', cavity.note],
    ] as const) {
      if (text !== undefined && /\bdrain/i.test(text) && tellsShut(text))
        return { words: text, at: `${at}/${key}` };
    }
  }
  return undefined;
}

/** "Through the drain holes, then plugged with sealer": the verb may stand in the clause after. */
function tellsShut(text: string): boolean {
  if (/\b(?:re-?opened|unplugged|cleared|opened|free again|open again)\b/i.test(text)) return false;
  if (saidInClause(text, shutDrain) !== undefined) return true;
  const clauses = text.split(/[,;.]|\bthen\b|\band\b/i).map((clause) => clause.trim());
  const from = clauses.findIndex((clause) => /\bdrain/i.test(clause));
  const next = clauses.slice(from + 1).find((clause) => clause !== '');
  return next !== undefined && isShut.test(next) && !/\b(?:no|not|never|none)\b/i.test(next);
}
