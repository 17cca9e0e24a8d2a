import { expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

const spot = (to: string, rest = ''): string => `{ to: ${to}, method: resistance spot${rest} }`;

/** The one part that a b-pillar is joined to; `more` where there is none or more than one. */
function oneEnd(
  joints: readonly string[],
  { part = '', work = 'do: replace, extent: whole', rest = '' } = {},
): unknown {
  const fact = factsOf(
    `parts:
  - { id: post, kind: b-pillar${part}, operations: [{ ${work}, joints: [${joints.join(', ')}] }] }
  - { id: sill, name: Sill, kind: sill }
  - { id: rail, kind: roof rail${rest} }
  - { id: skin, kind: side panel }`,
  ).fact('operation.joined_at_one_end', '/parts/0/operations/0');
  return fact.known ? fact.value : 'more';
}

// A pillar and a crossmember carry load from one part to another; common practice.
test.each<readonly [string, readonly string[], Parameters<typeof oneEnd>[1], string]>([
  ['to the sill alone', [spot('sill'), spot('sill')], {}, 'Sill'],
  ['to sill and roof rail', [spot('sill'), spot('rail')], {}, 'more'],
  ['to the sill and the skin over it', [spot('sill'), spot('skin')], {}, 'Sill'],
  ['to a part that is not listed', [spot('floor')], {}, 'floor'],
  ['without a joint', [], {}, 'more'],
  ['by bolts alone', ['{ to: sill, method: bolt }'], {}, 'more'],
  [
    'the other end told with the roof rail',
    [spot('sill')],
    { rest: `, operations: [{ do: weld, joints: [${spot('post')}] }]` },
    'more',
  ],
  ['a part of it', [spot('sill')], { work: 'do: section, at: K1' }, 'more'],
  ['not after all', [spot('sill')], { work: 'do: replace, extent: whole, planned: false' }, 'more'],
  ['by its own words, without a page', [spot('sill')], { part: ', joined_to: [sill]' }, 'Sill'],
  [
    'by its own words and a page',
    [spot('sill', ', cite: { reference: m, at: p. 2 }')],
    { part: ', joined_to: [sill]' },
    'more',
  ],
  [
    'to another by its own words',
    [spot('sill', ', cite: { reference: m, at: p. 2 }')],
    { part: ', joined_to: [sill, rail]' },
    'Sill',
  ],
])('%s', (_name, joints, rest, expected) => {
  expect(oneEnd(joints, rest)).toBe(expected);
});

test.each([
  ['crossmember', 'Sill'],
  ['sill', 'more'],
  ['door ring', 'more'],
  ['front rail', 'more'],
])('a %s: %s', (kind, expected) => {
  const fact = factsOf(
    `parts: [{ id: post, kind: ${kind}, operations: [{ do: replace, extent: whole, joints: [${spot('sill')}] }] }, { id: sill, name: Sill, kind: sill }]`,
  ).fact('operation.joined_at_one_end', '/parts/0/operations/0');
  expect(fact.known ? fact.value : 'more').toBe(expected);
});
