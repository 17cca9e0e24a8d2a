import type { Operation } from '../../generated/plan-types.ts';
import { mayBeOnePlace } from './heats-of-place.ts';
import { notAfter, whenOf } from '../quantity-of.ts';
import { secondsBetween } from '../step/day-order.ts';
import type { OperationSurvey } from '../survey.ts';

/** Longer after the heat the place is cold, whatever the hours were rounded to, s. Common practice, no source. */
const stillTheSameSeconds = 3600;

/**
 * The heat of the same part in which it is straightened: many write the heat as one entry and the pull as the next. Undefined where the
 * straightening says anything of a heat of its own, or comes before it. Hours later it is that heat all the same, and gone cold.
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
      isBefore(other.operation, operation),
  );
}

/** Whether the hours of a heat and of the pull in it tell that the place was cold by then. */
export function isColdByThen({ done: heat }: Operation, { done: pull }: Operation): boolean {
  const [heated, pulled] = [whenOf(heat), whenOf(pull)];
  if (heated === undefined || pulled === undefined) return false;
  const seconds = secondsBetween(heated, pulled);
  return seconds === undefined ? heated.day !== pulled.day : seconds > stillTheSameSeconds;
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

function isBefore(heat: Operation, pull: Operation): boolean {
  if (heat.step !== undefined && pull.step !== undefined && heat.step > pull.step) return false;
  const [heated, pulled] = [whenOf(heat.done), whenOf(pull.done)];
  return heated === undefined || pulled === undefined || notAfter(heated, pulled) !== false;
}
