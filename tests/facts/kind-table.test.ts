import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  canBeEither,
  canBeWorkedOffVehicle,
  carriesCrashLoad,
  closesHollowMember,
  goesOnWithoutWelding,
  isClosingSkin,
  isWeldedIn,
  usuallyCosmetic,
} from '../../src/facts/part/part-kinds.ts';
import type { PartKind } from '../../src/generated/plan-types.ts';

const schema = JSON.parse(readFileSync('schemas/plan.schema.json', 'utf8')) as {
  readonly $defs: { readonly part_kind: { readonly enum: readonly PartKind[] } };
};
const kinds = schema.$defs.part_kind.enum;

describe('what a part of a kind usually is', () => {
  test.each(kinds)('%s: nothing in its row contradicts another thing in it', (kind) => {
    const loads = [carriesCrashLoad(kind), usuallyCosmetic(kind), canBeEither(kind)];
    expect(loads.filter(Boolean).length).toBeLessThanOrEqual(1);
    if (usuallyCosmetic(kind)) expect([isWeldedIn(kind), closesHollowMember(kind)]).toEqual([false, false]);
    if (isWeldedIn(kind))
      expect([goesOnWithoutWelding(kind), canBeWorkedOffVehicle(kind)]).toEqual([false, false]);
    if (isClosingSkin(kind)) expect([isWeldedIn(kind), carriesCrashLoad(kind)]).toEqual([true, false]);
    if (closesHollowMember(kind)) expect(carriesCrashLoad(kind)).toBe(true);
  });

  // The trade's ground rules, told by hand: what holds the cabin, the crash rails and the wheels is structure; what is bolted over it is not.
  test.each(['door ring', 'b-pillar', 'sill', 'front rail', 'strut tower', 'subframe', 'floor'] as const)(
    '%s carries crash load or a wheel',
    (kind) => {
      expect(carriesCrashLoad(kind)).toBe(true);
    },
  );
  test.each(['fender', 'bonnet', 'door skin', 'bumper cover', 'lamp', 'trim'] as const)(
    '%s carries none',
    (kind) => {
      expect(usuallyCosmetic(kind)).toBe(true);
    },
  );

  test('a part of no kind may be anything, and nothing is taken of it for granted', () => {
    expect(canBeEither(undefined)).toBe(true);
    expect([carriesCrashLoad(undefined), usuallyCosmetic(undefined), isWeldedIn(undefined)]).toEqual([
      false,
      false,
      false,
    ]);
  });
});
