import { dot, movedBy } from './place.ts';
import type { Place } from './place.ts';

/** Three rows. A place is turned by taking its product with each. */
export type Rotation = readonly [Place, Place, Place];

/** Turns about the origin, then shifts: carries readings into the axes of the data sheet without changing a distance. */
export interface RigidMotion {
  readonly rotation: Rotation;
  readonly shift: Place;
}

export const noMotion: RigidMotion = {
  rotation: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  shift: [0, 0, 0],
};

export function turned([first, second, third]: Rotation, place: Place): Place {
  return [dot(first, place), dot(second, place), dot(third, place)];
}

export function carried({ rotation, shift }: RigidMotion, place: Place): Place {
  return movedBy(turned(rotation, place), shift);
}

/** The angle of a rotation about its own axis, 0 to 180°. The arc tangent keeps small angles exact where the cosine loses them. */
export function angleDegrees([[a, b, c], [d, e, f], [g, h, i]]: Rotation): number {
  const sine = Math.hypot(h - f, c - g, d - b) / 2;
  const cosine = (a + e + i - 1) / 2;
  return (Math.atan2(sine, cosine) * 180) / Math.PI;
}
