import { expect, test } from 'vitest';
import { computed, unknown } from '../../src/facts/make-fact.ts';
import { lookUp } from '../../src/facts/sheet.ts';
import type { FactSheet } from '../../src/facts/sheet.ts';

const vehicle: FactSheet = {
  kind: 'vehicle',
  at: '/vehicle',
  facts: { 'vehicle.body': computed('wagon'), same: computed(1) },
  standsOn: [],
};
const part: FactSheet = {
  kind: 'part',
  at: '/parts/0',
  facts: { same: unknown('not stated') },
  standsOn: [vehicle],
};
const reference: FactSheet = {
  kind: 'reference',
  at: '/references/0',
  facts: { 'reference.id': computed('M1') },
  standsOn: [vehicle],
};
const citation: FactSheet = { kind: 'citation', at: '/c', facts: {}, standsOn: [part, reference] };

test('a sheet sees its own facts, then those of every sheet that it stands on', () => {
  expect(lookUp(citation, 'vehicle.body')).toEqual(computed('wagon'));
  expect(lookUp(citation, 'reference.id')).toEqual(computed('M1'));
  expect(lookUp(vehicle, 'reference.id')).toBeUndefined();
});

test('its own unknown is the answer, and is not filled in from below', () => {
  expect(lookUp(part, 'same')).toEqual(unknown('not stated'));
});
