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
