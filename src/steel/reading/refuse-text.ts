import { designationKey } from '../designation-key.ts';

const longestDesignation = 80;

/** Cyrillic and Greek letters that print like a Latin one, by code point order of neither. */
const lookAlikes: ReadonlyMap<string, string> = new Map(
  [
    ...['АA', 'ВB', 'ЕE', 'ЅS', 'ІI', 'ЈJ', 'КK', 'МM', 'НH', 'ОO', 'РP', 'СC', 'ТT', 'УY', 'ХX'],
    ...['аa', 'еe', 'ѕs', 'іi', 'јj', 'оo', 'рp', 'сc', 'уy', 'хx'],
    ...['ΑA', 'ΒB', 'ΕE', 'ΖZ', 'ΗH', 'ΙI', 'ΚK', 'ΜM', 'ΝN', 'ΟO', 'ΡP', 'ΤT', 'ΥY', 'ΧX', 'οo'],
  ].map((pair) => [pair.charAt(0), pair.charAt(1)]),
);

/** What people write for a grade that they still have to look up. */
const saysNothing =
  /^(?:[\s\p{P}\p{S}]+|n\/a|n\.? ?a\.?|n\.? ?k\.?|tb[acdn]|to ?do|(?:un|not )known|not (?:stated|found|available|applicable)(?: yet)?|to (?:be (?:confirmed|determined|found|advised|checked)|follow|check)|none|nil|pending|later|x{2,4})\p{P}?$/iu;

export interface Refusal {
  readonly reason: string;
  /** The text with the look-alikes replaced, to be offered, never to be used. */
  readonly repaired?: string;
}

/** Why a text cannot be a designation at all, before any table is asked; undefined when it may be one. */
export function refuseText(text: string): Refusal | undefined {
  const trimmed = text.trim();
  if (trimmed === '')
    return { reason: 'The grade is empty; state the designation on the drawing or the spare part.' };
  // Nearly every designation has a figure, and none of those has.
  if (!/\d/.test(trimmed) && saysNothing.test(trimmed)) {
    return {
      reason: `"${trimmed}" names no grade; look it up on the maker’s material page for this vehicle or on the spare part.`,
    };
  }
  if (trimmed.length > longestDesignation) {
    return {
      reason: `The grade is ${trimmed.length} characters long; a designation has at most ${longestDesignation}. State the designation alone.`,
    };
  }
  const plain = /^[\x20-\x7e]*$/.test(trimmed);
  const hidden = plain ? undefined : /[\p{Cc}\p{Cf}\p{Cs}\p{Co}]/u.exec(trimmed)?.[0];
  if (hidden !== undefined) {
    return {
      reason: `The grade holds a character that does not print (${codePoint(hidden)}); type it again.`,
    };
  }
  if (/^[\p{Pd}\u2212]\s*[\d.]/u.test(trimmed))
    return { reason: `"${trimmed}" begins with a minus; no strength or grade lies below 0. Type it again.` };
  // A sign of more than stands before a figure: Rm >= 980 MPa.
  const markup = !/[<>&]/.test(trimmed)
    ? undefined
    : /<\/?[a-z!]|[a-z"'/]\s*>(?!\s*=?\s*\d)|&(?:\w+|#\d+);/i.exec(trimmed)?.[0];
  if (markup !== undefined)
    return { reason: `The grade holds "${markup}", which is web-page text; state the designation alone.` };
  return plain ? undefined : refuseForeignLetters(trimmed.normalize('NFKC'));
}

function refuseForeignLetters(text: string): Refusal | undefined {
  const foreign = /[^\x20-\x7e\s\p{Pd}\u2212≤≥]/u.exec(text)?.[0];
  if (foreign === undefined) return undefined;
  const latin = lookAlikes.get(foreign);
  if (latin === undefined) {
    return {
      reason: `The grade holds "${foreign}" (${codePoint(foreign)}), which no designation has; type it again.`,
    };
  }
  const repaired = [...text].map((char) => lookAlikes.get(char) ?? char).join('');
  const script = /\p{Script=Greek}/u.test(foreign) ? 'Greek' : 'Cyrillic';
  return {
    reason: `The grade holds the ${script} letter "${foreign}" (${codePoint(foreign)}), which looks like the Latin ${latin}; type it again in Latin letters.`,
    repaired: designationKey(repaired),
  };
}

function codePoint(char: string): string {
  return `U+${(char.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}
