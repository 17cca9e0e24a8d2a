import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr } from '../make-fact.ts';
import { whenOf } from '../quantity-of.ts';
import { readCure, secondsApart } from './cure-time.ts';
import type { JointMatter } from './joint-matter.ts';

type BondCouponFact = Extract<FactNames['joint'], `joint.coupon_bond${'' | '_text'}`>;
type Standing = 'cured' | 'wet' | 'not told' | 'no bond' | 'rivets alone' | 'not asked';

/** A coupon of this takes longer than a working day, s: torn on the day of the joint it was bonded on another. */
const workingDaySeconds = 10 * 3600;

/** Whether the adhesive of a coupon had cured when the coupon was torn; wet adhesive peels without telling anything of the faces. */
export function bondCouponFacts({ one, operation }: JointMatter): Readonly<Record<BondCouponFact, Fact>> {
  const { joint, at } = one;
  const coupon = typeof joint.coupon === 'object' ? joint.coupon : undefined;
  const { bonded, date, shows } = coupon ?? {};
  const cure = joint.adhesive?.cure;
  const text = [
    ...(bonded === undefined ? [] : [`bonded ${bonded}`]),
    `torn ${date ?? 'on no stated day'}`,
    ...(cure === undefined ? [] : [`cure “${cure}”`]),
  ].join(', ');
  const made = joint.done ?? operation.operation.done;
  return {
    'joint.coupon_bond': computed(
      standing({ method: joint.method, bonded, date, shows, cure, made }),
      `${at}/coupon`,
    ),
    'joint.coupon_bond_text': computedOr(
      date === undefined ? undefined : text,
      `${at}/coupon`,
      'No day of a coupon is stated.',
    ),
  };
}

interface Torn {
  readonly method: JointMatter['one']['joint']['method'];
  readonly bonded: string | undefined;
  readonly shows: 'bond and rivets' | 'rivets only' | undefined;
  readonly date: string | undefined;
  readonly cure: string | undefined;
  readonly made: string | undefined;
}

/** A spot that goes through fresh adhesive is peeled at once, and tells of itself. */
function standing({ method, bonded, date, shows, cure: words, made }: Torn): Standing {
  const torn = whenOf(date);
  const cure = readCure(words);
  if (torn === undefined || (method !== 'adhesive' && method !== 'adhesive and rivet')) return 'not asked';
  if (shows === 'rivets only') return method === 'adhesive' ? 'no bond' : 'rivets alone';
  const laid = whenOf(bonded);
  if (laid !== undefined) {
    return cure !== undefined && secondsApart(laid, torn).atMost < cure.shortestSeconds ? 'wet' : 'cured';
  }
  const isOfTheDay = torn.day === whenOf(made)?.day;
  return isOfTheDay && cure !== undefined && cure.shortestSeconds > workingDaySeconds
    ? 'not told'
    : 'not asked';
}
