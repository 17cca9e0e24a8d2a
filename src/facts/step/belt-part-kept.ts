import type { PlanMakeSafeRestraints } from '../../generated/plan-types.ts';

const wornWord =
  /\b(?:worn|in use|used|occupied|buckled|fastened|loaded)\b.{0,20}\b(?:in|at|during) the (?:crash|collision|impact|accident|blow)\b/i;
const place = /\b(?:left|right|lh|rh|front|rear|driver|passenger|centre|center|middle)\b/i;
const renewed = /\b(?:replaced|renewed|exchanged|changed|new)\b/i;
const denied = /\b(?:not|none|never|no one|nobody|neither|nor|no)\b/i;
/** What a page lets stay may stay. */
const byPage =
  /\b(?:by|per|as) (?:the |its |their )?(?:maker['’]?s? |replacement )?(?:list|page|procedure|p\.)/iu;
const buckleKept =
  /\bbuckles? (?:\w+ )?(?:kept|re-?used|retained|stay(?:s|ed)?|not (?:replaced|renewed|changed))\b/i;

/**
 * What the check of the belts tells of a belt that was worn in the crash and not renewed, or of a buckle that was kept although the
 * pretensioner of a belt fired; its words. Where the words say that a list or page lets it stay, nothing. English alone is read.
 */
export function beltPartKept(restraints: PlanMakeSafeRestraints | undefined): string | undefined {
  const text = restraints?.belts_checked;
  if (text === undefined) return undefined;
  return wornKept(text) ?? (isFired(restraints) ? keptBuckle(text) : undefined);
}

function wornKept(text: string): string | undefined {
  if (!wornWord.test(text)) return undefined;
  const sentences = text.split(/[;.]/).map((sentence) => sentence.trim());
  return sentences.find((sentence, index) => {
    const worn = wornWord.exec(sentence);
    if (worn === null || !place.test(sentence) || denied.test(sentence.slice(0, worn.index))) return false;
    // What follows may renew it, "both renewed"; what went before was another belt.
    const rest = [sentence, ...sentences.slice(index + 1)].join('; ');
    return !renewed.test(rest) && !byPage.test(sentence);
  });
}

function isFired(restraints: PlanMakeSafeRestraints | undefined): boolean {
  return (restraints?.units ?? []).some(
    ({ unit, state }) => unit === 'belt pretensioner' && state === 'deployed',
  );
}

function keptBuckle(text: string): string | undefined {
  return text
    .split(/[,;]/)
    .map((clause) => clause.trim())
    .find(
      (clause) =>
        buckleKept.test(clause) &&
        !byPage.test(clause) &&
        !/\b(?:others?|rest|remaining|rear|old)\b/i.test(clause),
    );
}
