import { firstWord } from '../plan/first-word.ts';
import { saysNone } from './step/step-draft.ts';

/**
 * Words that say no where something should be named or told. Only plain refusals are known; a text that hides one better is for a
 * person to read. English alone is read.
 */

/** Whether a text says that no fault is left. The whole text must say so: "no isolation" begins like "no faults". */
export function saysNothingLeft(text: string): boolean {
  return /^(?:none|nil|none left)[.!]?$/iu.test(text.trim());
}

/** Whether the signature says that no hold is open. What stands behind "none, …" is what matters. */
export function saysNoHolds(text: string): boolean {
  return /^(?:none|nil|no|0|none (?:left|open)|no (?:open )?holds(?: open)?|(?:none[,;.] )?all (?:answered|closed))[.!]?$/iu.test(
    text.trim(),
  );
}

/** Where a product, a place or a person should be named: "not used", "omitted", "later", "nobody had time". */
const refusal = [
  '(?:no|none|nil|nothing|nowhere|nobody|no one|never|without)(?=$|\\s*[,;.(]|\\s+[–—-])',
  '(?:none|nothing|nobody|no one) (?:was |is |has |had |did )?(?:been )?(?:applied|available|done|fitted|had|in stock|laid|looked|needed|necessary|there|time|used|yet|checked|made|required)',
  '(?:was |were |is |are )?not (?:yet |been )?(?:applied|available|carried out|checked|done|fitted|in stock|laid|looked|made|necessary|needed|possible|primed|required|sealed|there|unplugged|used|waxed|yet)',
  '(?:was |were |is |are )?(?:skipped|omitted|forgotten|left out|left off|dispensed with|unused|unnecessary)',
  'no (?:need|time|primer|wax|sealer|product|access|reason)',
  '(?:is |are |still |yet )*to (?:be (?:applied|carried out|decided|done|laid|made|named|put on|sprayed|used)|come|do|follow)',
  '(?:will be|later|afterwards|pending|outstanding|next week|tomorrow|customer (?:does|did|will))\\b',
].join('|');

/** With which words such a text begins. */
const refusing: ReadonlySet<string> = new Set(
  (
    'no none nil nothing nowhere nobody never without was were is are not skipped omitted forgotten left dispensed unused unnecessary ' +
    'still yet to will later afterwards pending outstanding next tomorrow customer'
  ).split(' '),
);

const beginsWithRefusal = new RegExp(`^(?:${refusal})(?![\\p{L}\\p{N}])`, 'iu');

/** Whether a text that should name something refuses to. "None needed" refuses; "No. 3 bay" and "none but the drawn holes" name something. */
export function saysRefused(text: string | undefined): boolean {
  if (text === undefined || !refusing.has(firstWord(text))) return false;
  const plain = text.trim().replace(/\s+/gu, ' ');
  return !/^no\. ?(?:\p{L}{1,4}[- ]?)?\d/iu.test(plain) && beginsWithRefusal.test(plain);
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
  if (saysNone(text) || saysRefused(text)) return true;
  const plain = (text ?? '').trim();
  const small = plain.toLowerCase();
  return (
    noTestWords.some((word) => small.includes(word)) &&
    (noTest.test(plain) ||
      /^(?:(?:has )?(?:expired|lapsed|run out)|unqualified|untrained|in training)\b/iu.test(plain))
  );
}
