import { saysNotDone } from './step-draft.ts';

/** Words with which a check begins that was none. Denied is the check itself, not what it found: "none renewed" is a finding. */
const refusal =
  /^(?:(?:was |were |have been |has been )?not (?:yet )?(?:carried out|checked|done|examined|inspected|looked at|made|necessary|needed|performed|possible|required|seen|tested)|unchecked|skipped|omitted|left out|nobody|never|no (?:access|check|inspection|need|time)|not applicable|n\/a|still to|to be|will be|not this time|forgot(?:ten)?|(?:we )?did(?:n['’]t| not)|left (?:plugged|as)|(?:customer|owner) (?:declined|refused|waived))\b/iu;

/** Whether a text says that belts, buckles and seats were looked at: neither its whole nor its first clause may say that they were not. */
export function saysBeltsChecked(text: string | undefined): boolean {
  if (text === undefined || saysNotDone(text)) return false;
  const [first = ''] = text.trim().split(/[,;:.(]|\s[-–—]\s|\b(?:because|since|as the|for the)\b/u);
  return !saysNotDone(first) && !refusal.test(text.trim());
}

const defect =
  /\b(?:bad|bent|blocks?|broken|burnt|cracked|damaged?|defect(?:ive)?|does not|doesn['’]t|do not|failed|faulty|frayed|jam(?:s|med)|loose|melted|out of order|scorched|slack|sticks?|stuck|stretched|torn|will not|won['’]t|worn)\b/iu;
/** A belt that locks by itself; all belts lock when they are jerked. */
const locks =
  /\b(?:belt|buckle|retractor)s? (?:is |are )?lock(?:s|ed)\b(?! (?:and|as|at|by|in|on|under|when))/i;
const denied = /\b(?:free of|neither|no|none|nor|not|nothing|without)\b/i;
const renewed = /\b(?:changed|exchanged|new|renewed|repaired|replaced)\b/i;
const passedOn =
  /\b(?:customer|driver|owner)s? (?:has been |is |was |were )?(?:advised|informed|knows|told|warned)\b/i;

/**
 * What a text of the check says of a belt that is bad and stays so: its clause. A clause that denies the defect, and a text that says
 * something was renewed, tell of none.
 */
export function beltDefect(text: string | undefined): string | undefined {
  if (text === undefined) return undefined;
  const isRenewed = renewed.test(
    text.replaceAll(/\b(?:not|none|nothing) (?:changed|exchanged|renewed|replaced)\b/gi, ''),
  );
  const clauses = text.split(/[,;.]|\band\b/u).map((clause) => clause.trim());
  return clauses.find((clause) => {
    if (passedOn.test(clause)) return true;
    if (isRenewed) return false;
    const isNot = /\b(?:do|does|will) not\b|n['’]t\b/iu.test(clause);
    return locks.test(clause) || (defect.test(clause) && (isNot || !denied.test(clause)));
  });
}
