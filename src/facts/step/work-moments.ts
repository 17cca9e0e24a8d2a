import { isElectric } from '../joint/joint-methods.ts';
import { whenOf } from '../quantity-of.ts';
import type { When } from '../quantity-of.ts';
import type { OperationSurvey, Survey } from '../survey.ts';

/**
 * When an operation was worked at: its own moment and those of its joints. A joint with a day and no hour on the day of an operation
 * that has one is taken to be told by that.
 */
export function momentsOf({ operation, joints }: OperationSurvey): readonly When[] {
  const own = whenOf(operation.done);
  const ofJoints = joints
    .map(({ joint }) => whenOf(joint.done))
    .filter((when) => when !== undefined)
    .filter((when) => when.minute !== undefined || own?.minute === undefined || when.day !== own.day);
  return own === undefined ? ofJoints : [own, ...ofJoints];
}

/** Where the first moment of an operation, or of a joint of it, stands that is meant. */
export function placeOfMoment(
  { operation, joints, at }: OperationSurvey,
  isMeant: (when: When) => boolean,
): string | undefined {
  const fits = (text: string | undefined): boolean => {
    const when = whenOf(text);
    return when !== undefined && isMeant(when);
  };
  if (fits(operation.done)) return `${at}/done`;
  const joint = joints.find((one) => fits(one.joint.done));
  return joint === undefined ? undefined : `${joint.at}/done`;
}

/** When something was welded electrically on the vehicle; of an operation the days of its electric joints count, or else its own. */
export function weldingMoments({ operations }: Survey): readonly When[] {
  return operations
    .filter(({ electricWelding }) => electricWelding === true)
    .flatMap(({ operation, joints }) => {
      const days = joints
        .filter(({ joint: { method } }) => method !== undefined && isElectric(method))
        .map(({ joint }) => joint.done);
      const stated = days.filter((day) => day !== undefined);
      return stated.length === 0 ? [operation.done] : stated;
    })
    .map(whenOf)
    .filter((when) => when !== undefined);
}
