import type { Joint } from '../../generated/plan-types.ts';
import { dayOf, quantityOf, whenOf } from '../quantity-of.ts';
import type { OperationSurvey } from '../survey.ts';

export type Keeping = 'kept' | 'not yet' | 'not kept';

/**
 * Whether the joints of an operation keep a condition of a maker’s statement, as far as its words can be held against them: an
 * insert and its length, a coupon. Undefined where they cannot, and the plan’s own word stands.
 */
export function conditionKept(condition: string, { joints }: OperationSurvey): Keeping | undefined {
  const words = condition.toLowerCase();
  const drawn = joints.map(({ joint }) => joint).filter(isOfTheCut);
  const answers = [
    ...(isAsked(words, 'insert') ? [insertKept(words, drawn)] : []),
    ...(isAsked(words, 'coupon') ? [couponKept(drawn)] : []),
  ];
  return (['not kept', 'not yet', 'kept'] as const).find((answer) => answers.includes(answer));
}

function insertKept(words: string, drawn: readonly Joint[]): Keeping {
  const inserts = drawn.filter(({ insert }) => insert !== undefined);
  const isKept = inserts.length > 0 && inserts.every((joint) => isLongEnough(words, joint));
  return isKept ? 'kept' : 'not kept';
}

function couponKept(drawn: readonly Joint[]): Keeping {
  const answers = drawn.map(couponOf);
  if (answers.includes('not kept')) return 'not kept';
  return answers.length === 0 || answers.includes('not yet') ? 'not yet' : 'kept';
}

/** The joints of the cut itself; flanges and hems are those that the whole part has too. */
export function isOfTheCut({ form, insert }: Joint): boolean {
  return insert !== undefined || (form !== 'flange' && form !== 'hem');
}

/** The thing as something wanted: "no insert" wants none, and "insert the plug" none either. */
function isAsked(words: string, thing: string): boolean {
  const isNamed = new RegExp(`\\b${thing}s?\\b(?! (?:the|a|an|new)\\b)`, 'u').test(words);
  return isNamed && !new RegExp(`\\b(?:no|without|not)\\b[^,;]*${thing}`, 'u').test(words);
}

const eachSide =
  /(?<number>\d+(?:\.\d+)?)\s*(?<unit>mm|cm|in)\b(?: (?:on|at|to))? (?:each|per|every|either) side/u;
const inAll =
  /inserts? of (?:at least )?(?<number>\d+(?:\.\d+)?)\s*(?<unit>mm|cm|in)\b(?! (?:thick|wide|high))/u;

/** Only a number that is plainly the length of the insert is held against it; in all, it is twice that of each side. */
function isLongEnough(words: string, { insert }: Joint): boolean {
  const ofEachSide = lengthIn(eachSide, words);
  const asked = ofEachSide ?? lengthIn(inAll, words);
  if (asked === undefined) return true;
  const own = quantityOf(insert?.length_each_side, 'length');
  return own !== undefined && (ofEachSide === undefined ? 2 * own : own) >= asked;
}

/** How far into each side an insert must reach by the conditions that are said to be met, mm. */
export function insertAskedMm({ operation }: OperationSurvey): number | undefined {
  const lengths = (operation.conditions_met ?? []).flatMap((condition) => {
    const words = condition.toLowerCase();
    return isAsked(words, 'insert') ? (lengthIn(eachSide, words) ?? []) : [];
  });
  return lengths.length === 0 ? undefined : Math.max(...lengths);
}

function lengthIn(pattern: RegExp, words: string): number | undefined {
  const { number, unit } = pattern.exec(words)?.groups ?? {};
  return number === undefined || unit === undefined ? undefined : quantityOf(`${number} ${unit}`, 'length');
}

function couponOf({ coupon, done }: Joint): Keeping {
  const test = typeof coupon === 'string' ? { result: coupon, date: undefined } : coupon;
  if (test?.result === 'failed') return 'not kept';
  const tested = dayOf(test?.date);
  const made = whenOf(done)?.day;
  if (tested !== undefined && made !== undefined && tested > made) return 'not kept';
  return test?.result === 'passed' ? 'kept' : 'not yet';
}
