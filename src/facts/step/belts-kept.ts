import type { PlanMakeSafeRestraints } from '../../generated/plan-types.ts';
import { saysBeltsChecked } from './belts-checked.ts';

const keptWord =
  /\b(?:kept|keeps|re-?used|used again|retained|stay(?:s|ed)?|left (?:in|alone|as|on)|refitted|(?:goes|put|went) back|not (?:replaced|renewed|exchanged|changed)|still (?:locks?|works?|good|fine|in order|holds?))\b/i;
/** "None kept" keeps nothing, and what is kept for the insurer is not in the vehicle. */
const notKept =
  /\b(?:not|never|none|nothing|neither|no longer) (?:were |was |are |is |been )?(?:kept|re-?used|retained|used again|refitted)\b|\b(?:evidence|insurer|assessor|cabinet|bin|old (?:one|belt|buckle|part)s?)\b/i;
const renewedWord = /\b(?:replaced|renewed|exchanged|changed|new)\b/i;
const otherBelts = /\b(?:others?|rest|remaining|undeployed)\b/i;

/** Places of a belt. Who drives or sits beside sits in front; on which side the plan does not say. */
const places: readonly (readonly [string, RegExp])[] = [
  ['left', /\b(?:left|lh)\b/i],
  ['right', /\b(?:right|rh)\b/i],
  ['front', /\b(?:front|driver|passenger)\b/i],
  ['rear', /\b(?:rear|back seat|bench)\b/i],
  ['centre', /\b(?:centre|center|middle)\b/i],
];
const across: readonly (readonly [string, string])[] = [
  ['left', 'right'],
  ['front', 'rear'],
  ['centre', 'left'],
  ['centre', 'right'],
];

interface Clause {
  readonly text: string;
  /** Places that it names, or those of the clause before it; nothing where it is about the other belts. */
  readonly at: readonly string[] | undefined;
}

/**
 * What the check of the belts says of a belt whose pretensioner fired or is renewed: that it was kept; its clause. A clause on the
 * others, or on another seat, tells of none.
 */
export function beltKept(restraints: PlanMakeSafeRestraints | undefined): string | undefined {
  const text = restraints?.belts_checked;
  if (text === undefined || !keptWord.test(text)) return undefined;
  const spent = (restraints?.units ?? []).filter(
    ({ unit, state, treatment }) =>
      unit === 'belt pretensioner' && (state === 'deployed' || treatment === 'replaced'),
  );
  if (spent.length === 0) return undefined;
  const clauses = placedClauses(text);
  const beltRenewed = clauses.some((one) => renewsBelt(one.text));
  const kept = clauses.find((one) => {
    const { at } = one;
    if (at === undefined || !keptWord.test(one.text) || notKept.test(one.text)) return false;
    return spent.some(({ name = '' }) => {
      const places = placesIn(name);
      // What is said without a place is said of all belts, unless the belt was renewed by another clause.
      if (at.length === 0 || places.length === 0) return !beltRenewed;
      // A buckle may stay where the pretensioner sits at the reel and the belt was renewed with it.
      if (beltRenewed && !/\bbelts?\b/i.test(one.text) && !/buckle/i.test(name) && /buckle/i.test(one.text)) {
        return false;
      }
      return !areElsewhere(at, places);
    });
  });
  return kept?.text;
}

function placedClauses(text: string): readonly Clause[] {
  let before: readonly string[] = [];
  return clausesOf(text).map((clause) => {
    const named = placesIn(clause);
    const isOthers = otherBelts.test(clause);
    before = isOthers ? [] : named.length > 0 ? named : before;
    return { text: clause, at: isOthers ? undefined : before };
  });
}

function renewsBelt(clause: string): boolean {
  return renewedWord.test(clause) && !keptWord.test(clause) && !/^buckle/i.test(clause);
}

function placesIn(text: string): readonly string[] {
  return places.filter(([, word]) => word.test(text)).map(([place]) => place);
}

function areElsewhere(at: readonly string[], places: readonly string[]): boolean {
  return across.some(
    ([one, other]) =>
      (at.includes(one) && !at.includes(other) && places.includes(other) && !places.includes(one)) ||
      (at.includes(other) && !at.includes(one) && places.includes(one) && !places.includes(other)),
  );
}

function clausesOf(text: string): readonly string[] {
  return text
    .split(
      /[,;.:]|\b(?:but|while|whereas)\b|\band (?=(?:all|both|every|the|left|right|front|rear|buckles?)\b)/i,
    )
    .map((clause) => clause.trim())
    .filter((clause) => clause !== '');
}

/** What the check says of belts that nobody looked at; its clause. Where nothing was looked at it is no check at all. */
export function beltsUnlooked(text: string | undefined): string | undefined {
  if (text !== undefined && saysBeltsChecked(text) && isOfOneSide(text)) return text;
  if (text === undefined || !/\bnot |unchecked|nobody/i.test(text) || !saysBeltsChecked(text))
    return undefined;
  return clausesOf(text).find(
    (clause) =>
      /\bnot (?:yet |been )*(?:looked (?:at|over|into)|looked$|checked|examined|inspected|seen|tested|pulled|tried)|\bunchecked\b|\bnobody (?:looked|checked|tried|pulled)/i.test(
        clause,
      ) && !/\b(?:at first|at intake|before|until|only|none|nothing|never|no belt)\b/i.test(clause),
  );
}

const everyBelt =
  /\b(?:all|every|each|both|others?|rest|remaining|two|three|four|five|six|seven|eight|belts|seats|no|none|nothing)\b|\d/i;

/** Whether the check names one side of the vehicle and nothing beyond it: "Left side looked at". What was renewed is told of by itself. */
function isOfOneSide(text: string): boolean {
  if (renewedWord.test(text)) return false;
  if (/\b(?:left|lh)\b/i.test(text) === /\b(?:right|rh)\b/i.test(text)) return false;
  return !everyBelt.test(
    text.replaceAll(/\b(?:left|lh|right|rh)(?:[- ]hand)?(?: side)?(?: front| rear)? belts\b/gi, ''),
  );
}
