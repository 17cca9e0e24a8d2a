import type { Survey } from '../survey.ts';
import { damageKinds } from './part-damage-facts.ts';

const nothing = /^(?:none|nothing|nil|no(?: indirect)?(?: damage)?)(?: (?:was )?(?:found|seen))?[.!]?$/i;
const nothingBefore = /^(?:none|nothing|nil|no)\b(?! (?:but|except|other than|more than|worse than)\b)/i;
const damage =
  /\b(?:bent|buckle[ds]?|cracke?d?s?|creased?|dent(?:s|ed)?|kink(?:s|ed)?|loose|narrower|popped|ripples?|split|tight|torn|wider|wrinkle[ds]?)\b/i;
const denied = /\b(?:no|not|none|nothing|neither|nor|without|free of)\b/i;
/** What was there before the blow is no damage of it. */
const older = /\b(?:aged?|earlier|from before|old)\b/i;
const nothingBut = /^(?:none|nothing|nil|no damage)(?: found)? (?:but|except|other than)\b(.+)$/is;
/** A gap that came back when the structure was pulled or the push was gone; a ripple or a crack does not. */
const gap = /\b(?:gaps?|flush|tight|wider|narrower)\b/i;
const goneAgain =
  /(?<!\bnot )(?<!\bnot yet )\b(?:(?:even|in line|level|flush|as before) (?:again|now)|(?:went|came) back|gone)\b/i;
const lasting =
  /\b(?:bent|buckle[ds]?|cracke?d?s?|creased?|dent(?:s|ed)?|kink(?:s|ed)?|popped|ripples?|split|torn|wrinkle[ds]?)\b/i;

/**
 * Damage that was found away from the blow, in the words of the plan, where no part away from it is listed as damaged; undefined where
 * the words tell of none, or of a gap alone that is even again.
 */
export function indirectDamageTold({ plan, parts }: Survey): string | undefined {
  const found = plan.damage?.indirect?.found?.trim();
  if (found === undefined || nothing.test(found) || !tellsOfDamage(found)) return undefined;
  const direct = new Set(plan.damage?.direct);
  const isListed = parts.some(({ part }) => {
    const isAway = part.id === undefined || !direct.has(part.id);
    return isAway && damageKinds(part).some((kind) => kind !== 'none');
  });
  return isListed ? undefined : found;
}

/** Whether the words on what was looked at away from the blow tell of damage, listed or not. */
export function saysIndirectDamage({ plan }: Survey): boolean {
  const found = plan.damage?.indirect?.found?.trim();
  return found !== undefined && !nothing.test(found) && tellsOfDamage(found);
}

/** Behind "none" only words of damage count; without it, whatever stands there does. */
function tellsOfDamage(found: string): boolean {
  const isGone = gap.test(found) && goneAgain.test(found) && !lasting.test(found);
  if (isGone) return false;
  const but = nothingBut.exec(found)?.[1];
  if (but !== undefined) return !isAllOlder(but);
  if (!nothingBefore.test(found)) return true;
  return found
    .split(/[,;.:]|\bbut\b/i)
    .slice(1)
    .some((clause) => damage.test(clause) && !denied.test(clause) && !older.test(clause));
}

/** The first thing that is named is from before the blow, and none of those after it tells of damage without being so. */
function isAllOlder(things: string): boolean {
  const [first = '', ...others] = things.split(/[,;.:]|\b(?:but|and)\b/i);
  return older.test(first) && others.every((one) => !damage.test(one) || older.test(one));
}
