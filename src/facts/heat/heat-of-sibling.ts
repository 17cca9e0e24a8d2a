import type { Operation } from '../../generated/plan-types.ts';
import { mayBeOnePlace } from './heats-of-place.ts';
import { notAfter, whenOf } from '../quantity-of.ts';
import { secondsBetween } from '../step/day-order.ts';
import type { OperationSurvey } from '../survey.ts';

/** Longer after the heat the place is cold, whatever the hours were rounded to, s. Common practice, no source. */
const stillTheSameSeconds = 3600;

/**
 * The heat of the same part in which it is straightened: many write the heat as one entry and the pull as the next. Undefined where the
 * straightening says anything of a heat of its own, or order and hours tell that it was another.
 */
export function heatOfSibling(
  one: OperationSurvey,
  siblings: readonly OperationSurvey[],
): OperationSurvey | undefined {
  const { operation } = one;
  if (operation.do !== 'straighten' || one.heats !== true || saysOwnHeat(operation)) return undefined;
  return siblings.findLast(
    (other) =>
      other.operation.do === 'heat' &&
      other.offVehicle === one.offVehicle &&
      (other.operation.planned !== false || other.operation.done !== undefined) &&
      (other.operation.source === operation.source || operation.source === undefined) &&
      mayBeOnePlace(other.operation.at, operation.at) &&
      mayBeOnePlace(other.operation.zone, operation.zone) &&
      isJustBefore(other.operation, operation),
  );
}

/** The source alone may be named twice: that is no second heat. */
function saysOwnHeat({
  temperature,
  hold,
  times,
  measured_by,
  limit,
  cooling,
  near,
  joints,
}: Operation): boolean {
  return [temperature, hold, times, measured_by, limit, cooling, near, joints].some(
    (said) => said !== undefined,
  );
}

function isJustBefore(heat: Operation, pull: Operation): boolean {
  if (heat.step !== undefined && pull.step !== undefined && heat.step > pull.step) return false;
  const [heated, pulled] = [whenOf(heat.done), whenOf(pull.done)];
  if (heated === undefined || pulled === undefined) return true;
  if (heated.day !== pulled.day || notAfter(heated, pulled) === false) return false;
  return (secondsBetween(heated, pulled) ?? 0) <= stillTheSameSeconds;
}
