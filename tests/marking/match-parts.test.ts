import { describe, expect, it, test } from 'vitest';
import type { Part } from '../../src/generated/plan-types.ts';
import type { KeyPart } from '../../src/marking/key.ts';
import { matchParts } from '../../src/marking/match-parts.ts';

const bare = { also: [], decisions: [{ do: 'replace', points: 1 }], mustNot: [], asked: [] } as const;
const ring: KeyPart = {
  ...bare,
  name: 'Door ring, left',
  also: ['Body side ring left'],
  kind: 'door ring',
  side: 'left',
};
const sill: KeyPart = { ...bare, name: 'Inner sill, left', kind: 'sill', side: 'left' };
const sillRight: KeyPart = { ...bare, name: 'Inner sill, right', kind: 'sill', side: 'right' };
const key = [ring, sill, sillRight];

/** Names in the key of the parts that were matched, in the order of the plan. */
function matchedNames(parts: readonly Part[]): readonly (string | undefined)[] {
  const { matched } = matchParts(key, parts);
  return parts.map((_part, index) => matched.find((one) => one.index === index)?.key.name);
}

describe('parts of a plan and of a key', () => {
  test.each<[string, Part, string | undefined]>([
    ['the same name', { name: 'Door ring, left' }, 'Door ring, left'],
    ['another spelling of it', { name: 'LH DOOR-RING' }, 'Door ring, left'],
    ['a name that the key also knows', { name: 'Body side ring L/H' }, 'Door ring, left'],
    ['kind and side under another name', { name: 'P1', kind: 'door ring', side: 'left' }, 'Door ring, left'],
    ['words in another order', { name: 'Left sill (inner)', kind: 'sill' }, 'Inner sill, left'],
    ['an id alone', { id: 'inner-sill-left' }, 'Inner sill, left'],
    ['the other side', { name: 'Door ring, right', kind: 'door ring' }, undefined],
    ['a kind without a side', { name: 'P2', kind: 'sill' }, undefined],
    ['another part', { name: 'Bonnet', kind: 'bonnet' }, undefined],
    ['a part without a word', {}, undefined],
  ])('%s', (_what, part, name) => {
    expect(matchedNames([part])).toEqual([name]);
  });

  it('are matched in any order, each once, and left is never right', () => {
    const left: Part = { name: 'Sill inner L', kind: 'sill' };
    const right: Part = { name: 'Sill inner R', kind: 'sill' };
    expect(matchedNames([left, right])).toEqual(['Inner sill, left', 'Inner sill, right']);
    expect(matchedNames([right, left])).toEqual(['Inner sill, right', 'Inner sill, left']);
  });

  it('that are left over are listed on both sides', () => {
    const { missing, extra } = matchParts(key, [
      { name: 'Door ring, left' },
      { name: 'Mirror' },
      { name: 'Ring left' },
    ]);
    expect(missing.map(({ name }) => name)).toEqual(['Inner sill, left', 'Inner sill, right']);
    expect(extra.map(({ index }) => index)).toEqual([1, 2]);
  });
});
