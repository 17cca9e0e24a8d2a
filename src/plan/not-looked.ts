import { firstWord } from './first-word.ts';

/**
 * Words that say that nobody looked, where what was found should stand: "none looked at", "n/a - did not check". They are no answer.
 * "None found" is one. English alone is read; a text that hides it better is for a person to read.
 */

/** To look in any way. "Seen", "found" and "noted" are left out: "none seen" tells what was found. */
const look =
  '(?:checked|looked(?: (?:at|for|into|inside|behind|under))?|inspected|examined|tested|measured|assessed|investigated|verified|scanned)';
const lookNow =
  '(?:check|look(?: (?:at|for|into|inside|behind|under))?|inspect|examine|test|measure|assess|investigate|verify|scan|see)';
const work = '(?:done|carried out|applied|made|finished)';

/** What may follow and leaves it as it is: yet, so far, because of something. */
const tail =
  '(?: (?:it|them|this|that|anything|yet|so far|at all|today|here|there|inside|either|in time|(?:by|because|as|until|for|due|since|on|under|behind|in) (?!eye|hand|boroscope|endoscope|meter|page).*))*';

/** A clause that says by itself that nobody looked. */
const bare = [
  `(?:it |they |this |that |these |was |were |is |are |has |have |been |still |as yet )*not (?:yet |been |fully )*(?:${look}|${work})`,
  `not yet(?: (?:seen|looked at))?`,
  `(?:we |i )?(?:did|could|have|has|had|was|were|do|does|can)(?: not|n['’]t|not) (?:yet |been |be )*(?:${look}|${lookNow})`,
  `(?:none|nothing|nobody|no[ -]one|nowhere)(?: was| were| has| have)?(?: been)?(?: yet)? (?:checked|looked(?: (?:at|for|into|inside))?|inspected|examined|tested|investigated|scanned)`,
  `(?:without|no) (?:a |any )?(?:check|look|inspection|examination|test|scan|investigation)(?: (?:was |has been |yet )*(?:made|done|carried out))?`,
  `(?:none|nothing) (?:assumed|presumed|expected)`,
  `(?:assumed|presumed|presumably|probably)(?: (?:to be |is |are )?(?:none|nothing|sound|fine|good|ok|okay|in order|undamaged|no damage))?`,
  `(?:still )?(?:un-?checked|un-?inspected|un-?examined|un-?tested)`,
  `(?:(?:still|yet|will|has|have|needs?) )*(?:to |be )+(?:${look}|${lookNow})(?: later)?`,
  `will (?:be )?(?:${look}|${lookNow})(?: later)?`,
  `(?:check|inspection|look|test|scan)(?:ing)? (?:is )?(?:later|pending|outstanding|open|to follow|follows)`,
  `(?:awaiting|pending) (?:a |the )?(?:check|inspection|look|test|scan)`,
  `(?:check |inspection |test |scan )?(?:was )?(?:skipped|omitted)`,
].join('|');

const clauseSaysSo = new RegExp(`^(?:${bare})${tail}$`, 'iu');

/** How such a clause begins: with a word that denies or puts off, or with what was to be done and is put off. */
const denying: ReadonlySet<string> = new Set(
  (
    'it they this that these was were wasn weren is isn are aren has hasn have haven had hadn been still as not we i did didn could ' +
    'couldn do don does doesn can cannot none nothing nobody no nowhere without assumed presumed presumably probably un unchecked ' +
    'uninspected unexamined untested yet will need needs to be awaiting pending skipped omitted'
  ).split(' '),
);
const doing: ReadonlySet<string> = new Set(
  'check checking inspection look looking test testing scan scanning'.split(' '),
);
const puttingOff = /later|pending|outstanding|open|follow|skip|omit/i;

function saysSo(clause: string): boolean {
  const first = firstWord(clause);
  const maySaySo = denying.has(first) ? mayBeSo(clause) : doing.has(first) && puttingOff.test(clause);
  return maySaySo && clauseSaysSo.test(clause);
}

/** A place, and that nobody looked there: "right sill not checked yet". "Nothing left unchecked" says the opposite. */
const ofSomething = new RegExp(
  `^(?!.*\\b(?:nothing|none|no|never|without|neither|nor)\\b)(?:[\\p{L}\\p{N}'’-]+ ){1,7}(?:(?:was|were|is|are|has|have|been|left|still) )*(?:(?:not (?:yet |been |fully )*${look})|un-?checked|un-?inspected|not yet seen|not seen yet)${tail}$`,
  'iu',
);

/** Without one of these no clause is of that form; a pattern so long takes a millisecond to compile. */
function denies(clause: string): boolean {
  const small = clause.toLowerCase();
  return ['not ', 'check', 'pected'].some((piece) => small.includes(piece));
}

/** Words beside a refusal that add nothing to it. */
const nothing = /^(?:n\/a|n\.a|na|none|no|nil|nothing|unknown|-|yet)?$/i;

/** One of these stands in every clause that says so, and one that denies or puts off. To look for words costs nothing. */
const looking = (
  'check look inspect examin test measur assess investigat verif scan see done carried applied made finish yet assum presum probab ' +
  'expect skip omit'
).split(' ');
const without = [
  "n't",
  'n’t',
  'no',
  'un',
  'without',
  'assum',
  'presum',
  'probab',
  'expect',
  'skip',
  'omit',
  'yet',
  'still',
  'to ',
  'be ',
].concat(['will', 'need', 'has ', 'have ', 'await', 'later', 'pending', 'outstanding', 'open', 'follow']);

function mayBeSo(text: string): boolean {
  const small = text.toLowerCase();
  return looking.some((word) => small.includes(word)) && without.some((word) => small.includes(word));
}

/** No plan holds a longer text of this kind; what is longer is not read to its end. */
const longest = 2000;

/** Whether a text says that nobody looked, and nothing else. */
export function saysNotLooked(text: string): boolean {
  if (text.length > 200 || !mayBeSo(text)) return false;
  const clauses = clausesOf(text);
  return (
    clauses.some((clause) => saysSo(clause)) &&
    clauses.every((clause) => nothing.test(clause) || saysSo(clause))
  );
}

/** What was not looked at was seen to in another way after all. */
const seenTo = /\b(?:replaced|renewed|exchanged|instead|then|afterwards|later all|second look)\b/i;

/** Whether a text that tells what was found admits that something was not looked at. */
export function admitsNotLooked(text: string): boolean {
  const clauses = clausesOf(text.slice(0, longest));
  const admits = clauses.some((clause) => saysSo(clause) || (denies(clause) && ofSomething.test(clause)));
  return admits && !seenTo.test(text);
}

function clausesOf(text: string): readonly string[] {
  return text
    .replace(/\s+/gu, ' ')
    .split(/[;,.:()!]+|\s[-–—]+\s?|[–—]|\b(?:but|and|although|though)\b/iu)
    .map((clause) => clause.trim())
    .filter((clause) => clause !== '');
}
