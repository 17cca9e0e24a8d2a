/** A place in space, or the way from one place to another, mm, along the axes of the data sheet. */
export type Place = readonly [x: number, y: number, z: number];

export const origin: Place = [0, 0, 0];

/** The way from `from` to `to`. */
export function wayBetween(from: Place, to: Place): Place {
  return [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
}

export function movedBy(place: Place, way: Place): Place {
  return [place[0] + way[0], place[1] + way[1], place[2] + way[2]];
}

export function stretched(place: Place, factor: number): Place {
  return [place[0] * factor, place[1] * factor, place[2] * factor];
}

export function lengthMm([x, y, z]: Place): number {
  return Math.hypot(x, y, z);
}

export function distanceMm(one: Place, other: Place): number {
  return lengthMm(wayBetween(one, other));
}

/** The largest of the three, without its sign: what a tolerance by axis is held against. */
export function largestAxisMm([x, y, z]: Place): number {
  return Math.max(Math.abs(x), Math.abs(y), Math.abs(z));
}

export function dot(one: Place, other: Place): number {
  return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
}

/** At right angles to both; its length is the area of the parallelogram between them, mm². */
export function cross(one: Place, other: Place): Place {
  return [
    one[1] * other[2] - one[2] * other[1],
    one[2] * other[0] - one[0] * other[2],
    one[0] * other[1] - one[1] * other[0],
  ];
}

/** The middle of some places; the origin when there are none. */
export function middleOf(places: readonly Place[]): Place {
  let sum: Place = origin;
  for (const place of places) sum = movedBy(sum, place);
  return places.length === 0 ? origin : stretched(sum, 1 / places.length);
}

/** Whether it can be reckoned with: no axis is missing, endless or beyond a kilometre. */
export function isPlace(place: Place): boolean {
  return place.every((value) => Math.abs(value) <= farthestMm);
}

/** Nothing of a vehicle lies farther from the origin of its data sheet; squares of it are far from overflow. */
const farthestMm = 1_000_000;
