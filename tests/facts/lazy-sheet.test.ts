import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { stated } from '../../src/facts/make-fact.ts';
import { factGroups } from '../../src/facts/fact-groups.ts';
import type { FactGroups } from '../../src/facts/fact-groups.ts';
import { lazySheet } from '../../src/facts/lazy-sheet.ts';
import { ownFact, ownNames } from '../../src/facts/sheet.ts';
import { sheetsOf } from '../derive-text.ts';

const folder = path.join(import.meta.dirname, '../../examples/plans');
const texts = readdirSync(folder).map((name) => readFileSync(path.join(folder, name), 'utf8'));

describe('a sheet whose facts are derived when they are asked for', () => {
  it('derives a group once, and only when one of its names is asked for', () => {
    const derived: string[] = [];
    const group =
      (name: string) =>
      (of: string): Readonly<Record<string, ReturnType<typeof stated>>> => {
        derived.push(`${of}: ${name}`);
        return { [name]: stated(`${name} of ${of}`) };
      };
    const groups: FactGroups<[string], string> = factGroups(['the '], group('the one'), group('the two'));
    const head = { kind: 'part', at: '', standsOn: [] } as const;

    // The first sheets show where each name is; what begins otherwise is on none of them.
    const first = lazySheet(groups, ['first'], head);
    expect(ownFact(first, 'another')).toBeUndefined();
    expect(derived).toEqual([]);
    expect(ownFact(first, 'the one')).toEqual(stated('the one of first'));
    expect(derived).toEqual(['first: the one']);
    expect(ownNames(first)).toEqual(['the one', 'the two']);
    derived.length = 0;

    const second = lazySheet(groups, ['second'], head);
    expect(ownFact(second, 'the two')).toEqual(stated('the two of second'));
    expect(ownFact(second, 'the two')).toEqual(stated('the two of second'));
    expect(ownFact(second, 'the three')).toBeUndefined();
    expect(derived).toEqual(['second: the two']);
    expect(second.facts).toEqual({
      'the one': stated('the one of second'),
      'the two': stated('the two of second'),
    });
    expect(derived).toEqual(['second: the two', 'second: the one']);
  });

  it('says which name two groups hold', () => {
    const twice = (): Readonly<Record<'the one', ReturnType<typeof stated>>> => ({ 'the one': stated(1) });
    const sheet = lazySheet(factGroups(['the '], twice, twice), [], { kind: 'part', at: '', standsOn: [] });
    expect(() => ownNames(sheet)).toThrow('two groups of facts hold the one');
  });

  it('bears the same names whatever the plan, and one by one the same facts as all together', () => {
    const namesOfKind = new Map<string, readonly string[]>();
    for (const text of texts) {
      const [whole, single] = [sheetsOf(text), sheetsOf(text)];
      expect(single).toHaveLength(whole.length);
      for (const [index, sheet] of whole.entries()) {
        const facts = Object.entries(sheet.facts);
        const names = facts.map(([name]) => name).sort();
        expect(names).toEqual(namesOfKind.get(sheet.kind) ?? names);
        namesOfKind.set(sheet.kind, names);
        const other = single[index];
        if (other === undefined) throw new Error('a sheet is missing');
        for (const [name, fact] of facts) expect(ownFact(other, name)).toEqual(fact);
      }
    }
    expect(namesOfKind.size).toBeGreaterThan(9);
  });
});
