import type { Fact } from '../fact.ts';
import { computed, unknown } from '../make-fact.ts';
import type { Survey } from '../survey.ts';

/** One of these stands in each text that tells of it. */
const gate = [
  'phone',
  'cloud',
  'private',
  'personal',
  'home',
  'nobody',
  'no one',
  'chat',
  'mailbox',
  'account',
].concat(['own ', 'laptop']);
const ofAPerson =
  /\b(?:private(?:ly)?|personal|(?:his|her|my|their|['’]s) own|(?:his|her|my|their|own) (?:mobile |smart)?(?:phone|cloud|laptop|computer|tablet|drive|stick|account|mailbox|camera|notebook)|(?:mobile |cell ?|smart)?phone|at home|home (?:computer|office)|chat|messenger|(?:with|by|of) (?:nobody|no one)|nobody['’]?s?|no one['’]?s?)\b/i;
/** What the shop holds as well, or holds alone. */
const ofTheShop =
  /\b(?:shop|workshop|job (?:folder|file)|company|firm|archive|server|office|copied|uploaded|printed|handed over)\b/i;
const denied = /\b(?:not yet|never|to be|will be|not) (?:\w+ )?(?:copied|uploaded|printed|handed over)\b/i;

/** Whether words for where a record is kept tell that a person has it and the shop has not. English alone is read. */
export function isKeptAway(text: string | undefined): boolean {
  if (text === undefined) return false;
  const small = text.toLowerCase();
  if (!gate.some((piece) => small.includes(piece)) || !ofAPerson.test(text)) return false;
  return !ofTheShop.test(text) || denied.test(text);
}

/** The words for a record of the job, or of one of its joints, that the shop does not hold. */
export function recordAway({ plan, operations }: Survey): Fact {
  const at = '/record/where';
  const { where } = plan.record ?? {};
  if (where !== undefined && isKeptAway(where)) return computed(`“${where}”`, at);
  for (const { joints, part } of operations) {
    for (const { joint, at: place } of joints) {
      const coupon = typeof joint.coupon === 'object' ? joint.coupon.record : undefined;
      if (joint.record !== undefined && isKeptAway(joint.record))
        return computed(`“${joint.record}” of the joint of ${part.name}`, `${place}/record`);
      if (coupon !== undefined && isKeptAway(coupon))
        return computed(`“${coupon}” of the coupon for ${part.name}`, `${place}/coupon/record`);
    }
  }
  return unknown('No words tell that somebody else than the shop holds a record.', at);
}
