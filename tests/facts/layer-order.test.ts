import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layerOrder } from '../../src/facts/part/layer-order.ts';
import type { Part } from '../../src/generated/plan-types.ts';
import { surveyOf } from './facts-of.ts';

const order = (parts: readonly Part[]) => {
  const survey = surveyOf(`parts: ${JSON.stringify(parts)}`);
  return layerOrder(survey.parts, survey.partById).map(({ part, layer, under, over }) => ({
    id: part.part.id,
    layer,
    under: under.map((one) => one.part.id),
    over: over.map((one) => one.part.id),
  }));
};

const ids = (parts: readonly Part[]) => order(parts).map(({ id }) => id);

describe('parts from the outside in', () => {
  test('a skin, what it hides right behind it, then the next skin', () => {
    const parts: readonly Part[] = [
      { id: 'ring-l', under: 'skin-l' },
      { id: 'skin-l' },
      { id: 'skin-r', over: 'ring-r' },
      { id: 'inner-l', under: ['ring-l'] },
      { id: 'ring-r' },
    ];
    expect(ids(parts)).toEqual(['skin-l', 'ring-l', 'inner-l', 'skin-r', 'ring-r']);
    expect(order(parts).map(({ layer }) => layer)).toEqual([1, 2, 3, 1, 2]);
  });

  test('what two layers hide comes after both, and is as deep as the deeper one makes it', () => {
    const parts: readonly Part[] = [
      { id: 'c', under: ['a', 'b'] },
      { id: 'a' },
      { id: 'b', under: 'a' },
      { id: 'd', under: 'a' },
    ];
    expect(order(parts).map(({ id, layer }) => `${id ?? ''} ${String(layer)}`)).toEqual([
      'a 1',
      'b 2',
      'c 3',
      'd 2',
    ]);
  });

  test('both words for one thing are one link; a part is no layer of its own', () => {
    const parts: readonly Part[] = [
      { id: 'a', over: ['b', 'a'] },
      { id: 'b', under: ['a', 'b', 'nobody'] },
    ];
    expect(order(parts)).toEqual([
      { id: 'a', layer: 1, under: [], over: ['b'] },
      { id: 'b', layer: 2, under: ['a'], over: [] },
    ]);
  });

  test('a circle comes last, and is said to be none', () => {
    const parts: readonly Part[] = [{ id: 'a', under: 'b' }, { id: 'b', under: 'a' }, { id: 'c' }];
    expect(order(parts).map(({ id, layer }) => [id, layer])).toEqual([
      ['c', 1],
      ['a', undefined],
      ['b', undefined],
    ]);
  });

  test('two thousand layers deep', () => {
    const parts = Array.from({ length: 2000 }, (_one, index): Part => ({
      id: `p${String(index)}`,
      under: `p${String(index + 1)}`,
    }));
    expect(order(parts).at(-1)).toMatchObject({ id: 'p0', layer: 2000 });
  });

  test('whatever hides what: every part once, none before what hides it but in a circle', () => {
    const someIds = fc.subarray(['a', 'b', 'c', 'd', 'e', 'f']);
    fc.assert(
      fc.property(fc.array(fc.record({ under: someIds, over: someIds }), { maxLength: 6 }), (links) => {
        const parts = links.map((link, index): Part => ({ id: 'abcdef'.charAt(index), ...link }));
        const placed = order(parts);
        expect(placed.map(({ id }) => id).toSorted()).toEqual(parts.map(({ id }) => id).toSorted());
        const seen = new Set<string | undefined>();
        for (const { id, layer, under } of placed) {
          if (layer !== undefined) for (const hider of under) expect(seen).toContain(hider);
          seen.add(id);
        }
      }),
    );
  });
});
