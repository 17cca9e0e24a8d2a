import type { Person, QualifiedWork } from '../../generated/plan-types.ts';
import { isCourseToCome } from './course-to-come.ts';
import { listOf } from '../quantity-of.ts';
import { isNoQualification } from '../refusals.ts';

/**
 * How papers name work on traction voltage: volt, tension, Spannung, napięcie and the like in the languages of the trade, or the vehicle
 * by its drive. High-tensile steel and the electric arc are none of it. Whoever's paper says it otherwise writes `for`.
 */
const voltage =
  /volt|\bhv\b|\bhv ?-?\d|\bx?ev\b|\bx?ev ?-?\d|hybrid|live[- ]work|traction (?:battery|system)|electr(?:ic|ified) (?:vehicle|drive|car)s?|spann|spænd|napi[eę]|nap[eě]t|tensi(?!l)|jännit|fesz[uü]lts|gerilim|напря|τάση|電圧|高[压壓]|고전압/iu;

/** Body work and its release. */
const structure = /bod(?:y|ies)|structur|collision|weld|panel|chassis|frame|karos|carross|carroz|blech/i;

/** What looks like a paper and is none, or none any more: told by a colleague, booked for next month, lapsed, awareness alone. */
const noPaper =
  /\b(?:not|none|nil|without|never|lacks?|missing|failed|no(?!\.| ?[\w-]*\d))\b|\b(?:expired|lapsed|ran out|run out|pending|booked|planned|applied for|to follow|awareness|briefed|introduction|self[- ]taught|unqualified|untrained|uncertified|video|shown|learning|trainee|apprentice)\b|\b(?:by|from) (?:a |the |his |her |my )?(?:colleague|mate|foreman|boss|workmate)\b|\bcourse (?:next|soon)\b/i;

/** Words beside a number that say nothing of what a paper is for. */
const bareWords =
  /\b(?:certificate|certified|cert|card|class|diploma|level|grade|stage|stufe|niveau|livello|nivel|licen[cs]e|registration|qualified|number|no|nr|valid|until|till|to|from|of|the|issued|in|and|id)\b|\b[a-z]{0,3}-?\d[\w-]*|[\p{P}\p{S}\s]/giu;

const lastDay = /\b(?:until|till|expir\w+|valid to)\b\D{0,4}(\d{4}-\d\d(?:-\d\d)?)/i;

/** What a paper tells of what it is for: this work, other work, no paper at all, run out, or that it does not say. */
type Answer = 'yes' | 'for other work' | 'not told for what' | 'none' | 'run out';

/** @param day ISO day on which it is to hold; not looked at where it is left out. */
export function qualifiedFor(work: QualifiedWork, person: Person | undefined, day?: string): Answer {
  const text = person?.qualification?.trim() ?? '';
  if (isNoQualification(text) || noPaper.test(text) || isCourseToCome(text, day)) return 'none';
  if (ranOutOn(person, day) !== undefined) return 'run out';
  const stated = listOf(person?.for);
  if (stated.length > 0) return stated.includes(work) ? 'yes' : 'for other work';
  const [own, other] = work === 'high voltage' ? [voltage, structure] : [structure, voltage];
  if (own.test(text)) return 'yes';
  if (text.replace(bareWords, '') === '' && own.test(person?.role ?? '')) return 'yes';
  return other.test(text) ? 'for other work' : 'not told for what';
}

/** The last day of a paper, as its text writes it, where that lies before the day on which it is to hold. */
export function ranOutOn(person: Person | undefined, day: string | undefined): string | undefined {
  if (day === undefined) return undefined;
  const until = lastDay.exec(person?.qualification ?? '')?.[1];
  return until !== undefined && day.slice(0, until.length) > until ? until : undefined;
}

/** Words that name somebody who is not shown to be qualified, and why; undefined where nothing is amiss. */
export function unqualifiedWords(
  work: QualifiedWork,
  person: Person | undefined,
  day?: string,
): string | undefined {
  const answer = qualifiedFor(work, person, day);
  if (answer === 'yes') return undefined;
  const name = person?.name ?? 'someone';
  const text = person?.qualification?.trim() ?? '';
  if (text === '') return `${name}, no qualification stated`;
  const until = answer === 'run out' ? ` since ${ranOutOn(person, day) ?? ''}` : '';
  return `${name}, “${text}” (${answerWords[answer]}${until})`;
}

const answerWords = {
  none: 'that is no paper',
  'run out': 'run out',
  'for other work': 'for other work',
  'not told for what': 'not told for what',
} as const;
