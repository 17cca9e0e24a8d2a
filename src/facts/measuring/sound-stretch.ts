import { distanceMm, largestAxisMm } from '../../measure/place.ts';
import type { MeasuredBody } from './measured-body.ts';
import type { MeasuredPoint } from './measured-points.ts';
import { isFromSheet } from './datum-state.ts';
import { damageKinds } from '../part/part-damage-facts.ts';
import type { Survey } from '../survey.ts';

/** What a zero point may be off before the repair where nothing else is said, mm. Common practice, no source. */
const usualMm = 3;

/** As far from all that is off on the part a member as long as a frame rail is straight again, mm. Common practice, no source. */
const farMm = 1000;

/** With three zero points each fits; the fourth proves the others, and two on other parts prove those on this one. */
const leastZero = 4;
const leastOnSound = 2;

/**
 * Whether a zero point on a part that is bent lies on the straight stretch of it: a frame rail is as long as the vehicle and bent at its
 * end, and a ladder frame offers little else to measure from. The readings before the repair must prove it: all zero points where
 * the data sheet has them, enough of them on sound parts, and what is off on this part far away.
 */
export function isOnSoundStretch(survey: Survey, body: MeasuredBody, point: MeasuredPoint): boolean {
  const { before, points } = body;
  if (before?.fit === undefined || before.misread !== undefined) return false;
  if (before.misreadPoints.size > 0 || before.exchanges.length > 0 || isFromSheet(points, 'before'))
    return false;
  const off = (one: MeasuredPoint): number => {
    const way = before.deviation(one);
    return way === undefined ? Number.POSITIVE_INFINITY : largestAxisMm(way);
  };
  const mostMm = Math.min(body.datumMm ?? usualMm, usualMm);
  const zero = points.filter(({ isZero }) => isZero);
  const onSound = zero.filter(({ written }) => isSound(survey, written.on));
  const isProven = zero.length >= leastZero && onSound.length >= leastOnSound;
  if (!isProven || !zero.every((one) => off(one) <= mostMm)) return false;
  const bent = points.filter(
    (one) => !one.isZero && one.written.on === point.written.on && off(one) > mostMm,
  );
  return bent.length > 0 && bent.every((one) => apartMm(one, point) >= farMm);
}

function isSound(survey: Survey, id: string | undefined): boolean {
  const part = id === undefined ? undefined : survey.partById.get(id)?.part;
  const kinds = part === undefined ? [] : damageKinds(part);
  return kinds.length > 0 && kinds.every((kind) => kind === 'none');
}

function apartMm({ nominal: one }: MeasuredPoint, { nominal: other }: MeasuredPoint): number {
  return one === undefined || other === undefined ? 0 : distanceMm(one, other);
}
