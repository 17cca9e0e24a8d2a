import type { Trigger } from '../pack.ts';
import { overlaps } from '../versions/version-span.ts';

/** Whether two rows of a pack ask for the same check for the same reason in the same version; the order of words is nothing. */
export function asksTheSame(one: Trigger, other: Trigger): boolean {
  return overlaps(one, other) && whatItAsks(one) === whatItAsks(other);
}

function whatItAsks({
  asksFor,
  sensor,
  point,
  kinds,
  holds,
  named,
  unlessNamed,
  was,
  work,
}: Trigger): string {
  const lists = [sensor, kinds, holds, named, unlessNamed, was, work];
  return JSON.stringify([asksFor, point ?? '', ...lists.map((words) => [...words].sort())]);
}
