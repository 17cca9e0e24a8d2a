import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

function plan(name: string, text: string): unknown {
  const fact = factsOf(text).fact(`plan.${name}`);
  return fact.known ? fact.value : 'open';
}
const fire = (entries: string): string => `make_safe: { fire: { planned: true, ${entries} } }`;
const weld = (entries: string): string => `parts: [{ kind: sill, operations: [{ do: weld, ${entries} }] }]`;

describe('the fire list and the lists of the operations', () => {
  const both = (listed: string, near: string): unknown =>
    plan('fluids_contradicted', `${fire(`fluids: [{ ${listed} }]`)}\n${weld(`near: [{ ${near} }]`)}`);

  test.each([
    ['item: fuel tank, treatment: stays', 'item: fuel tank, treatment: removed', 'fuel tank'],
    ['item: fuel tank, treatment: removed', 'item: fuel tank, treatment: stays', 'fuel tank'],
    ['item: fuel tank, treatment: removed', 'item: fuel tank, treatment: removed', 'open'],
    ['item: fuel tank, treatment: stays', 'item: fuel tank, treatment: stays', 'open'],
    ['item: fuel tank, treatment: stays', 'item: fuel line, treatment: removed', 'open'],
    ['item: fuel line, treatment: stays, place: engine bay', 'item: fuel line, treatment: removed', 'open'],
  ])('%s; near: %s', (listed, near, expected) => {
    expect(both(listed, near)).toBe(expected);
  });
});

test('gas on board is mentioned, or it is not', () => {
  const gas = (drive: string, more = ''): unknown =>
    plan('gas_unmentioned', `vehicle: { drive: ${drive} }\n${more}`);
  expect(gas('[combustion, natural-gas]')).toBe(true);
  expect(gas('liquefied-petroleum-gas')).toBe(true);
  expect(gas('fuel-cell')).toBe(true);
  expect(gas('combustion')).toBe(false);
  expect(gas('natural-gas', fire('fluids: [{ item: gas cylinder, treatment: removed }]'))).toBe(false);
  expect(gas('natural-gas', weld('near: [{ item: gas cylinder, distance: 2 m }]'))).toBe(false);
  expect(gas('natural-gas', weld('near: [{ item: fuel tank, treatment: removed }]'))).toBe(true);
});

test('the fire watch of the job is its own, whatever an operation says', () => {
  expect(plan('fire_watch', `${fire('watch: 30 min')}\n${weld('fire_watch: 1 s')}`)).toBe(1800);
  expect(plan('fire_watch', fire('watch: 1 h'))).toBe(3600);
  expect(plan('fire_watch', weld('fire_watch: 1 s'))).toBe('open');
});

describe('the vehicle stands on', () => {
  const lifted = (own: string, worked: string): unknown =>
    plan(
      'lifted_beside_work',
      `make_safe: { lifting: { planned: true, points: [inner] } }\nparts: [{ id: inner, name: Inner sill, ${own} }, { id: other, ${worked} }]`,
    );
  const joined = 'operations: [{ do: replace, joints: [{ to: inner, method: resistance spot }] }]';

  test('the sill to which a ring or sill is joined anew', () => {
    expect(lifted('kind: sill', `kind: door ring, ${joined}`)).toBe('Inner sill');
    expect(lifted('kind: sill', `kind: sill, ${joined}`)).toBe('Inner sill');
  });

  test('a sill at which something else ends, or to which nothing is done', () => {
    expect(lifted('kind: sill', `kind: quarter panel, ${joined}`)).toBe('open');
    expect(lifted('kind: floor', `kind: sill, ${joined}`)).toBe('open');
    expect(
      lifted('kind: sill', 'kind: door ring, operations: [{ do: replace, joints: [{ to: other }] }]'),
    ).toBe('open');
  });
});
