import { describe, expect, test } from 'vitest';
import { factsOf } from './facts-of.ts';

const below = (parts: string): unknown => factsOf(`parts: [${parts}]`).value('part.layer_below', '/parts/0');
const skin = (parts: string): unknown => factsOf(`parts: [${parts}]`).value('part.skin', '/parts/0');

describe('what is a skin that hides structure', () => {
  test.each([
    ['{ kind: side panel }', true],
    ['{ kind: quarter panel }', true],
    ['{ kind: sill skin }', true],
    ['{ kind: roof skin }', true],
    ['{ kind: sill }', false],
    ['{ kind: fender }', false],
    // A door beam lies behind the skin: only a fold or a tear has reached it.
    ['{ kind: door skin }', false],
    ['{ kind: door skin, damage: { kind: crease } }', false],
    ['{ kind: door skin, damage: { kind: kink } }', true],
    ['{ kind: door skin, damage: { kinds: [dent, tear] } }', true],
    ['{ kind: door, damage: { kind: kink } }', true],
    ['{ kind: door, damage: { kind: kink }, operations: [{ do: straighten }] }', true],
    ['{ kind: door, damage: { kind: kink }, operations: [{ do: replace, extent: whole }] }', false],
    ['{ kind: door, damage: { kind: dent } }', false],
  ])('%s: %s', (part, expected) => {
    expect(skin(part)).toBe(expected);
  });
});

describe('what the plan says of the layer below', () => {
  test.each([
    ['nothing', '{ id: s }', 'not stated'],
    [
      'that there is none, behind what was opened',
      '{ id: s, over_nothing: true, damage: { kind: tear, found_by: outer panel cut back } }',
      'nothing there',
    ],
    [
      'that there is none, seen from outside',
      '{ id: s, over_nothing: true, damage: { kind: tear, found_by: seen } }',
      'not stated',
    ],
    ['that there is none, by nobody', '{ id: s, over_nothing: true }', 'not stated'],
    [
      'a lamp, which carries nothing',
      '{ id: s, over: l }, { id: l, kind: lamp, damage: { kind: none, found_by: seen } }',
      'not stated',
    ],
    [
      'that there is none, yet names one',
      '{ id: s, over_nothing: true, over: r }, { id: r }',
      'stated, not seen',
    ],
    [
      'a layer that was seen, with damage',
      '{ id: s, over: r }, { id: r, damage: { kind: kink } }',
      'stated and seen',
    ],
    [
      'a sound layer, and how it was seen',
      '{ id: s, over: r }, { id: r, damage: { kind: none, found_by: probe camera } }',
      'stated and seen',
    ],
    [
      'a sound layer that was seen, with the skin on',
      '{ id: s, over: r }, { id: r, damage: { kind: none, found_by: seen } }',
      'stated, not seen',
    ],
    [
      'a sound layer, seen by nobody',
      '{ id: s, over: r }, { id: r, damage: { kind: none } }',
      'stated, not seen',
    ],
    [
      'a layer not looked at',
      '{ id: s, over: r }, { id: r, damage: { kind: kink, found_by: not looked at } }',
      'stated, not seen',
    ],
    [
      'a layer not yet seen',
      '{ id: s, over: r }, { id: r, damage: { kind: not yet seen } }',
      'stated, not seen',
    ],
    ['a layer without damage stated', '{ id: s, over: r }, { id: r }', 'stated, not seen'],
    ['an id that no part bears', '{ id: s, over: gone }', 'stated, not seen'],
    [
      'one seen and one not',
      '{ id: s, over: [r, t] }, { id: r, damage: { kind: kink } }, { id: t }',
      'stated, not seen',
    ],
    [
      'from the other side: the layer names its skin',
      '{ id: s }, { id: r, under: s, damage: { kind: kink } }',
      'stated and seen',
    ],
    ['from the other side, unseen', '{ id: s }, { id: r, under: [x, s] }', 'stated, not seen'],
  ])('%s', (_name, parts, expected) => {
    expect(below(parts)).toBe(expected);
  });
});

describe('a sound layer that was seen', () => {
  const cavity = '{ point: cavity before the skin, part: s, done: 2026-09-17, by: { name: G. Ruff } }';
  test.each([
    ['the skin was replaced, and the cavity looked into', 'done: 2026-09-17', cavity, 'stated and seen'],
    ['the skin is not off yet', 'planned: true', cavity, 'stated, not seen'],
    ['nobody released the cavity', 'done: 2026-09-17', '', 'stated, not seen'],
    [
      'the cavity of another skin',
      'done: 2026-09-17',
      cavity.replace('part: s', 'part: r'),
      'stated, not seen',
    ],
    [
      'the cavity is still to be released',
      'done: 2026-09-17',
      cavity.replace('done', 'x'),
      'stated, not seen',
    ],
    [
      'the cavity was looked into by nobody',
      'done: 2026-09-17',
      cavity.replace('G. Ruff', 'nobody'),
      'stated, not seen',
    ],
  ])('%s', (_name, day, points, expected) => {
    const plan = `parts: [{ id: s, over: r, operations: [{ do: replace, extent: whole, ${day} }] }, { id: r, damage: { kind: none, found_by: seen } }]
hold_points: [${points}]`;
    expect(factsOf(plan).value('part.layer_below', '/parts/0')).toBe(expected);
  });
});
