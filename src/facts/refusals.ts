import { saysRefused } from '../plan/names-nothing.ts';
import { saysNone } from './step/step-draft.ts';

/**
 * Words that say no where something should be named or told. Only plain refusals are known; a text that hides one better is for a
 * person to read. English alone is read.
 */

/** Whether a text says that no fault is left. The whole text must say so: "no isolation" begins like "no faults". */
export function saysNothingLeft(text: string): boolean {
  return /^(?:none|nil|none left)[.!]?$/i.test(text.trim());
}

const noHold =
  /^(?:none|nil|no|0|[-–—]|n\/a|none (?:is |are )?(?:left|open)(?: any ?more| now)?|no (?:open )?holds?(?: (?:is |are )?(?:left|open))?|nothing (?:is )?(?:left|open)|all (?:(?:holds )?(?:are |were )?)?(?:answered|closed))$/iu;
/** Holds that were open once and were answered; "except" and "but" keep one. */
const answered =
  /^(?:(?:all|both|each|every|the|those|two|three|four|\d+)\b[^,;.]*?\b(?:was|were|is|are|has been|have been) (?:all )?(?:answered|closed|settled)|all (?:answered|closed))(?: (?:on|in|by|before|with) [^,;]*)?$/iu;

/** Whether the signature says that no hold is open: each of its clauses must. What stands behind "none, …" is what matters. */
export function saysNoHolds(text: string): boolean {
  const clauses = text
    .split(/[,;]|[.!](?=\s|$)/u)
    .map((clause) => clause.trim())
    .filter((clause) => clause !== '');
  return (
    clauses.some((clause) => noHold.test(clause)) &&
    clauses.every(
      (clause) =>
        noHold.test(clause) ||
        (answered.test(clause) && !/\b(?:but|except|not|save|without|yet)\b/i.test(clause)),
    )
  );
}

/** Years at the work, a course that is still running and a lapsed paper are no test that was passed. */
const noTest =
  /^(?:(?:still |being |currently )?(?:in training|trained|learning)|trainee|(?:\w+[- ]year )?apprentice|lapsed|expired|self-taught|uncertified|unqualified|not (?:yet )?(?:qualified|certified|tested|approved|needed|required|held)|no (?:certificate|qualification|approval|test|papers?)|(?:long |many |much |(?:over )?\d+ |\w+ )?(?:years? (?:of|in|at|on) [^;,\d]*|years?|experienced?|experience))(?: (?:yet|needed|required|held))?\p{P}?$/iu;

/** One of these stands in each text that names no test. */
const noTestWords = [
  'train',
  'learn',
  'apprentice',
  'lapsed',
  'expired',
  'run out',
  'self-taught',
  'certifi',
  'qualifi',
  'not ',
].concat(['no ', 'year', 'experience']);

/** Whether what stands for a qualification names none that holds: left out, refused, no test, or run out by its own words. */
export function isNoQualification(text: string | undefined): boolean {
  const plain = (text ?? '').trim();
  if (plain === '' || saysNone(text) || saysRefused(text)) return true;
  const small = plain.toLowerCase();
  return (
    noTestWords.some((word) => small.includes(word)) &&
    (noTest.test(plain) ||
      /^(?:(?:has )?(?:expired|lapsed|run out)|unqualified|untrained|in training)\b/i.test(plain))
  );
}
