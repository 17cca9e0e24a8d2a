import type { Survey } from '../survey.ts';
import { samePerson } from './same-person.ts';
import { ownWorkReleased } from './by-who-did-it.ts';

/**
 * Somebody else who releases work by this very plan and did none of that work: the shop has a second person, who could have looked. The first in the
 * order hold points, structure, vehicle.
 */
export function otherReleaser(survey: Survey, name: string | undefined, part?: string): string | undefined {
  if (name === undefined) return undefined;
  const { hold_points: points = [], verify, sign_off: signOff } = survey.plan;
  return [...points.map(({ by }) => by), verify?.structural_release?.by, signOff?.by]
    .map((by) => by?.name)
    .find(
      (other) =>
        other !== undefined && !samePerson(other, name) && ownWorkReleased(survey, other, part) === undefined,
    );
}
