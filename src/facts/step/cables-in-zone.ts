import type { Fact } from '../fact.ts';
import { computed, unknown } from '../make-fact.ts';
import { quantityOf } from '../quantity-of.ts';
import { saysNothingLeft } from '../refusals.ts';
import type { Survey } from '../survey.ts';

const denied = /\b(?:no longer|not|never|none|without|no)\b/i;
const dead = /\b(?:de-?energi[sz]ed|dead|isolated|voltage-free|free of voltage)\b/i;
const live = /\b(?:live|energi[sz]ed|under voltage|hot|connected)\b/i;
const away =
  /\b(?:removed|taken (?:out|off|away)|unplugged|disconnected|moved|laid aside|swung|tied|pulled (?:back|clear)|shielded|covered|blanket|out of the (?:way|zone)|clear of)\b/i;

/**
 * What the plan says in its own words of orange cables in the zone of the work: `none`, `live`, `dealt with`, or `unclear` where the
 * words are none of these, or say `none` while an operation lists such a cable in its zone.
 */
export function cablesInZone({ plan, operations }: Survey): Fact {
  const at = '/make_safe/high_voltage/cables_in_zone';
  const text = plan.make_safe?.high_voltage?.cables_in_zone?.trim();
  if (text === undefined) return unknown('Nothing is said in words of cables in the zone of the work.', at);
  if (saysNothingLeft(text) || /^none (?:there|near|in (?:it|the (?:work )?zone))[.!]?$/i.test(text))
    return computed(isListedNear(operations) ? 'unclear' : 'none', at);
  const clauses = text.split(/[,;.]|\band\b|\bbut\b/i);
  const isLive = clauses.some((clause) => live.test(clause) && !dead.test(clause) && !denied.test(clause));
  if (isLive) return computed('live', at);
  const isAway = clauses.some((clause) => (away.test(clause) || dead.test(clause)) && !denied.test(clause));
  return computed(isAway && !/\b(?:left|stays?|remains?) in\b/i.test(text) ? 'dealt with' : 'unclear', at);
}

/** The zone in which a cable has to come off or be shielded, mm. Common practice. */
const zoneMm = 300;

function isListedNear(operations: Survey['operations']): boolean {
  return operations.some(({ operation: { near = [] } }) =>
    near.some(
      ({ item, distance }) =>
        item === 'high-voltage cable' && (quantityOf(distance, 'length') ?? Infinity) < zoneMm,
    ),
  );
}
