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
/** "Left dead" and "left unplugged" say what was done. */
const leftThere =
  /\b(?:left|stays?|stayed|remains?|remained|kept) (?:in (?:place|the zone|it|there)|where|there|on the|as (?:it|they)|in)\b/i;

/**
 * What the plan says in its own words of orange cables in the zone of the work: `none`, `live`, `left in place`, `dealt with`, or
 * `unclear` where the words are none of these, or say `none` while an operation lists such a cable in its zone.
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
  if (leftThere.test(text)) return computed('left in place', at);
  return computed(isAway ? 'dealt with' : 'unclear', at);
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

/** Words that leave a cable there, and what the operations say of the same cable. */
export function cablesLeft(survey: Survey): Fact {
  const at = '/make_safe/high_voltage/cables_in_zone';
  const text = survey.plan.make_safe?.high_voltage?.cables_in_zone?.trim();
  const said = cablesInZone(survey);
  if (text === undefined || !said.known || said.value !== 'left in place') {
    return unknown('No cable is said to be left in the zone of the work.', at);
  }
  const hot = survey.operations.filter(
    ({ hot: isHot, operation }) => isHot !== false || operation.near !== undefined,
  );
  const cable = hot
    .flatMap(({ part, operation }) => (operation.near ?? []).map((near) => ({ part, near })))
    .find(({ near }) => near.item === 'high-voltage cable');
  if (cable !== undefined) {
    const { distance = 'no distance', treatment = 'stays' } = cable.near;
    return computed(
      `“${text}”; beside the work on ${cable.part.name} it is listed with ${distance}, ${treatment}`,
      at,
    );
  }
  const clear = hot.find(({ operation }) => operation.clear_within !== undefined);
  return computed(
    clear === undefined
      ? `“${text}”; no operation lists it under \`near\``
      : `“${text}”; by the work on ${clear.part.name} nothing sensitive is within ${clear.operation.clear_within ?? ''}`,
    at,
  );
}
