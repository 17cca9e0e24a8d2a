import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { stated } from '../../src/facts/make-fact.ts';
import { factGroups, lazySheet } from '../../src/facts/lazy-sheet.ts';
import type { FactGroups } from '../../src/facts/lazy-sheet.ts';
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
    const groups: FactGroups<[string], string> = factGroups(group('one'), group('two'));
    const head = { kind: 'part', at: '', standsOn: [] } as const;

    // The first sheet shows where each name is.
    expect(ownNames(lazySheet(groups, ['first'], head))).toEqual(['one', 'two']);
    derived.length = 0;

    const second = lazySheet(groups, ['second'], head);
    expect(derived).toEqual([]);
    expect(ownFact(second, 'two')).toEqual(stated('two of second'));
    expect(ownFact(second, 'two')).toEqual(stated('two of second'));
    expect(ownFact(second, 'three')).toBeUndefined();
    expect(derived).toEqual(['second: two']);
    expect(second.facts).toEqual({ one: stated('one of second'), two: stated('two of second') });
    expect(derived).toEqual(['second: two', 'second: one']);
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
