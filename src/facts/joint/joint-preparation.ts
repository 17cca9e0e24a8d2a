import type { FactNames } from '../../generated/fact-names.ts';
import { saidInClause } from '../../plan/said-in-clause.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr } from '../make-fact.ts';
import type { JointSurvey } from '../survey.ts';

type PreparationFact = Extract<FactNames['joint'], `joint.${'preparation_fault' | 'steel_tools_named'}`>;

/** What is done to faces that no adhesive holds on. English alone is read; common practice. */
const faults: readonly RegExp[] = [
  /\bthinners?\b|\bwhite spirit\b|\bpetrol\b|\bgasoline\b/i,
  /\b(?:over|onto|on|upon|through|on top of) (?:the |an |a |its )?(?:old|existing|remaining|previous|former|aged) (?:\w+ )?(?:primer|paint|lacquer|coat|coating|sealer|adhesive|glue|film)\b/i,
  /\b(?:over|onto|upon|on top of) (?:the |an |a |its |old )?(?:paint|paintwork|lacquer|clear ?coat|top ?coat|wax|oil|grease|rust|oxide|dirt|dust)\b/i,
  /\b(?:bonded|glued|joined|closed|applied|laid)\b.*\b(?:next|following) (?:morning|day|week|shift)\b/i,
  /\b(?:next|following) (?:morning|day|week|shift)\b.*\b(?:bonded|glued|joined|closed)\b/i,
  /\b(?:left|stood|open|bare|waited|lay) (?:\w+ )?over ?night\b/i,
];

/** A brush of stainless steel is the right one. */
const steelTools =
  /(?<!stainless[ -])\bsteel[ -](?:bay|booth|shop|area|corner|tools?|brush(?:es)?|wool|wire|discs?|abrasives?|grinder)\b|\b(?:used|shared|worn)(?: before| also)? (?:on|for|with|in) (?:the )?(?:mild |carbon )?steel\b/i;

const nothing =
  /^\s*(?:none|nothing|nil|n\/a|unprepared|untreated|not (?:done|needed|necessary|prepared|required)|as (?:delivered|supplied|received|it (?:is|was)))(?![\w-])/i;

/** How the faces of a bond are prepared, by the words of the plan. */
export function preparationFacts({ joint, at }: JointSurvey): Readonly<Record<PreparationFact, Fact>> {
  const words = joint.adhesive?.preparation;
  const place = `${at}/adhesive/preparation`;
  return {
    'joint.preparation_fault': computedOr(
      words === undefined ? undefined : faultIn(words),
      place,
      'How the faces are prepared is not stated, or nothing is said against it.',
    ),
    'joint.steel_tools_named': computed(saidInClause(words, steelTools) !== undefined, place),
  };
}

function faultIn(words: string): string | undefined {
  if (nothing.test(words)) return words;
  for (const fault of faults) {
    const clause = saidInClause(words, fault);
    if (clause !== undefined) return clause;
  }
  return undefined;
}
