import { saidInClause } from '../../plan/said-in-clause.ts';

const beside =
  /\b(?:beside|next to|near|close to|away from|outside(?: of)?|off) (?:the |its )?(?:heated |hot |warm )?(?:strip|zone|spot|place|area|dent|bend|middle)\b/i;

/** The words by which a temperature is read beside the heated place, and not in it. "The middle, beside the seam" is in it. */
export function measuredBeside(place: string | undefined): string | undefined {
  const clause = saidInClause(place, beside);
  return clause === undefined ||
    /\b(?:in|at|on) the (?:middle|centre|center)\b|\bhottest\b/i.test(place ?? '')
    ? undefined
    : clause;
}
