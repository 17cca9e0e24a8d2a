import type { FactNames } from '../../generated/fact-names.ts';
import { saidInClause } from '../../plan/said-in-clause.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr } from '../make-fact.ts';
import type { PartSurvey } from '../survey.ts';
import type { JointMatter } from './joint-matter.ts';

type PreparationFact = Extract<
  FactNames['joint'],
  `joint.${'preparation_fault' | 'steel_tools_named' | 'hardened_coat_removed' | 'bond_product_unfit'}`
>;

/** What is done to faces that no adhesive holds on. English alone is read; common practice. */
const faults: readonly RegExp[] = [
  /\bthinners?\b|\bwhite spirit\b|\bpetrol\b|\bgasoline\b/i,
  /\b(?:over|onto|on|upon|through|on top of) (?:the |an |a |its )?(?:old|existing|remaining|previous|former|aged) (?:\w+ )?(?:primer|paint|lacquer|coat|coating|sealer|adhesive|glue|film)\b/i,
  /\b(?:over|onto|upon|on top of) (?:the |an |a |its |old )?(?:paint|paintwork|lacquer|clear ?coat|top ?coat|wax|oil|grease|rust|oxide|dirt|dust)\b/i,
  /\b(?:bonded|glued|joined|closed|applied|laid)\b.*\b(?:next|following) (?:morning|day|week|shift)\b/i,
  /\b(?:next|following) (?:morning|day|week|shift)\b.*\b(?:bonded|glued|joined|closed)\b/i,
  /\b(?:left|stood|open|bare|waited|lay) (?:\w+ )?over ?night\b/i,
  /\b(?:old|existing|former) (?:adhesive|glue|bond|primer|paint|sealer) (?:\w+ ){0,2}(?:left|stays?|stayed|kept|remains?|remained|scraped)\b/i,
  /\bdays? (?:before|earlier|ago)\b|\bweeks? (?:before|earlier|ago)\b/i,
  /\bbare hands?\b|\btouched\b|\bfinger ?prints?\b/i,
];

const weekdays = /\b(?:mon|tues|wednes|thurs|fri|satur|sun)day\b/gi;

/** Made ready on one day of the week and closed on another, and not said to have been made ready again. */
function isOverDays(words: string): boolean {
  const days = new Set(Array.from(words.matchAll(weekdays), ([day]) => day.toLowerCase()));
  return (
    days.size > 1 &&
    /\b(?:bonded|glued|joined|closed)\b/i.test(words) &&
    !/\b(?:again|anew|afresh)\b/i.test(words)
  );
}

/** What was left undone, in words that deny it themselves. */
const undone = /\bnot (?:yet )?(?:primed|ground|abraded|cleaned|degreased|sanded|activated|etched)\b/i;

/** Air, a rag or a scraper alone makes no face that adhesive holds on: one of the other words has to stand beside them. */
const merely = /\b(?:air|rag|cloth|dry|dusted|scraped|broom)\b/i;
const prepares =
  /clean|degreas|solvent|alcohol|isoprop|acetone|prim|activat|abrad|ground|grind|sand|scuff|blast|flam|etch|plasma|laser|treat|convers|drawn|page|sheet|procedure|leaflet|\bp\. ?\d/i;

/** A brush of stainless steel is the right one. */
const steelTools =
  /(?<!stainless[ -])\bsteel[ -](?:bay|booth|shop|area|corner|tools?|brush(?:es)?|wool|wire|discs?|abrasives?|grinder)\b|\b(?:used|shared|worn)(?: before| also)? (?:on|for|with|in) (?:the )?(?:mild |carbon )?steel\b/i;

/** The coat of press-hardened sheet by its names, and that it is taken off. Zinc and e-coat are another matter: they have to go. */
const coatOff =
  /\b(?:al-?si|as ?-?(?:80|150)|alumini?um[- ]silicon|aluminised|aluminized)\b.*\b(?:ground|grind|sanded|blasted|milled|taken|stripped|removed)\b|\b(?:ground|sanded|blasted|stripped|removed|free) (?:\w+ ){0,2}(?:al-?si|as ?-?(?:80|150)|alumini?um[- ]silicon)\b/i;

const staysOn = /\b(?:not|never|left|stays?|stayed|kept|whole)\b/i;

/** What no part of a body is held by, whatever it is sold as. */
const unfit =
  /\bsilicones?\b(?![- ]free)|\bseam[- ]sealers?\b|\bcaulk\w*\b|\b(?:double[- ]sided|foam|butyl|duct) tape\b|\bcontact adhesive\b|\bhot[- ](?:melt )?glue\b|\bsuper ?glue\b|\bcyanoacrylate\b|\bassembly foam\b/i;

const nothing =
  /^\s*(?:none|nothing|nil|n\/a|unprepared|untreated|not (?:done|needed|necessary|prepared|required)|as (?:delivered|supplied|received|it (?:is|was)))(?![\w-])/i;

/** How the faces of a bond are prepared, and with what they are bonded, by the words of the plan. */
export function preparationFacts(matter: JointMatter): Readonly<Record<PreparationFact, Fact>> {
  const { joint, at } = matter.one;
  const words = joint.adhesive?.preparation;
  const place = `${at}/adhesive/preparation`;
  return {
    'joint.preparation_fault': computedOr(
      words === undefined ? undefined : faultIn(words),
      place,
      'How the faces are prepared is not stated, or nothing is said against it.',
    ),
    'joint.steel_tools_named': computed(saidInClause(words, steelTools) !== undefined, place),
    'joint.hardened_coat_removed': computedOr(
      coatRemoved(matter),
      joint.flange_coat === 'bare' ? `${at}/flange_coat` : place,
      'No sheet is press-hardened with such a coat, or nothing says that it is taken off.',
    ),
    'joint.bond_product_unfit': computedOr(
      saidInClause(joint.adhesive?.product, unfit),
      `${at}/adhesive/product`,
      'The product is not stated, or names nothing that holds no part.',
    ),
  };
}

function coatRemoved({ stack, one: { joint } }: JointMatter): string | undefined {
  const clause = saidInClause(joint.adhesive?.preparation, coatOff);
  const words = clause === undefined || staysOn.test(clause) ? undefined : clause;
  if (words === undefined && joint.flange_coat !== 'bare') return undefined;
  const hardened = stack.filter((sheet) => sheet?.material.class === 'press-hardened');
  if (words !== undefined) return hardened.length > 0 ? words : undefined;
  return hardened.some((sheet) => coatOf(sheet) === 'aluminium-silicon') ? 'bare' : undefined;
}

function coatOf(sheet: PartSurvey | undefined): string | undefined {
  return sheet?.part.coating ?? sheet?.material.coating;
}

function faultIn(words: string): string | undefined {
  if (nothing.test(words)) return words;
  if (/day\b/i.test(words) && isOverDays(words)) return words;
  for (const fault of faults) {
    const clause = saidInClause(words, fault);
    if (clause !== undefined) return clause;
  }
  return undone.exec(words)?.[0] ?? (merely.test(words) && !prepares.test(words) ? words : undefined);
}
