import { describe, expect, it } from 'vitest';
import { limits } from '../../src/plan/limits.ts';
import type { LocatedNode } from '../../src/plan/node.ts';
import { plainValue } from '../../src/plan/plain-value.ts';
import { readYaml } from '../../src/plan/read-yaml.ts';
import { placeOf } from '../../src/plan/source-text.ts';

function read(text: string): LocatedNode {
  const reading = readYaml(text);
  if (!reading.ok) throw new Error(reading.faults.map((fault) => fault.sentence).join(' '));
  return reading.root;
}

const value = (text: string) => plainValue(read(text));

/** Every node as `kind line:column-endLine:endColumn`, keys before their values. */
function outline(text: string): readonly string[] {
  const shown = (range: { readonly start: number; readonly end: number }) => {
    const place = placeOf({ path: '', text }, range);
    return `${place.line}:${place.column}-${place.endLine}:${place.endColumn}`;
  };
  const walk = (node: LocatedNode): readonly string[] => {
    const own = `${node.kind} ${shown(node.range)}`;
    if (node.kind === 'scalar') return [own];
    if (node.kind === 'list') return [own, ...node.items.flatMap(walk)];
    const entries = [...node.entries.values()];
    return [own, ...entries.flatMap((entry) => [`key ${shown(entry.keyRange)}`, ...walk(entry.value)])];
  };
  return walk(read(text));
}

describe('readYaml, values', () => {
  it('reads what a plan is made of', () => {
    const text =
      'format: 1\njob: {number: K-2207}\nparts:\n  - id: ring-l\n    structural: true\n    thickness: 1.4 mm\n';
    expect(value(text)).toEqual({
      format: 1,
      job: { number: 'K-2207' },
      parts: [{ id: 'ring-l', structural: true, thickness: '1.4 mm' }],
    });
  });

  it('reads YAML 1.2, where these are words', () => {
    expect(value('[yes, No, on, 1:30, 2026-10-05, 1_000, 0b11]')).toEqual([
      'yes',
      'No',
      'on',
      '1:30',
      '2026-10-05',
      '1_000',
      '0b11',
    ]);
    expect(value('[010, 0o10, 0x10, 1e3, -.5, true, null, ~]')).toEqual([
      10,
      8,
      16,
      1000,
      -0.5,
      true,
      null,
      null,
    ]);
  });

  it('takes an empty value for null, and keeps its place', () => {
    expect(value('a:\nb: 1\n')).toEqual({ a: null, b: 1 });
    expect(value('{a, b: , c: ""}')).toEqual({ a: null, b: null, c: '' });
    expect(outline('a:\n')).toEqual(['map 1:1-1:3', 'key 1:1-1:2', 'scalar 1:3-1:3']);
  });

  it('keeps what the author wrote', () => {
    const list = read("[ 0012, \"a\\tb\", 'it''s' ]");
    expect(list.kind === 'list' && list.items.map((item) => item.kind === 'scalar' && item.source)).toEqual([
      '0012',
      '"a\\tb"',
      "'it''s'",
    ]);
  });

  it('takes every key for a word, as it is written', () => {
    expect([...Object.keys(Object(value('1: a\ntrue: b\n0x1: c\n')))]).toEqual(['1', 'true', '0x1']);
  });

  it('takes `%YAML 1.2`, type marks of plain YAML and an anchor that nothing repeats', () => {
    expect(value('%YAML 1.2\n---\na: !!str 1\nb: &left 2\nc: ! 3\n...\n')).toEqual({ a: '1', b: 2, c: '3' });
  });

  it('takes a blank-line desert and a long remark between two keys', () => {
    expect(value(`a:\n  b:\n${'\n'.repeat(2000)}c: 1\n`)).toEqual({ a: { b: null }, c: 1 });
    expect(value(`a:\n  b:\n${'    # remark\n'.repeat(200)}c: 1\n`)).toEqual({ a: { b: null }, c: 1 });
  });

  it('takes a scalar or a list as the whole document; what that means is not asked here', () => {
    expect(value('hello')).toBe('hello');
    expect(value('- 1')).toEqual([1]);
  });

  it('keeps `__proto__`, `constructor` and `toString` as ordinary keys', () => {
    const root = read('__proto__: {admin: true}\nconstructor: 1\ntoString: 2\n');
    expect(root.kind === 'map' && [...root.entries.keys()]).toEqual(['__proto__', 'constructor', 'toString']);
  });
});

describe('readYaml, places', () => {
  it('gives every key and value its own', () => {
    expect(outline('parts:\n  - id: ring-l\n    near: [{part: x}, "y"]\n')).toEqual([
      'map 1:1-3:27',
      'key 1:1-1:6',
      'list 2:3-3:27',
      'map 2:5-3:27',
      'key 2:5-2:7',
      'scalar 2:9-2:15',
      'key 3:5-3:9',
      'list 3:11-3:27',
      'map 3:12-3:21',
      'key 3:13-3:17',
      'scalar 3:19-3:20',
      'scalar 3:23-3:26',
    ]);
  });

  it('ends an entry with its last value, not with the remarks and blanks after it', () => {
    expect(outline('a:\n  b: 1   # one\n\n  # two\n\nc: 2\n')).toEqual([
      'map 1:1-6:5',
      'key 1:1-1:2',
      'map 2:3-2:7',
      'key 2:3-2:4',
      'scalar 2:6-2:7',
      'key 6:1-6:2',
      'scalar 6:4-6:5',
    ]);
  });

  it('ends a text over several lines with its last line', () => {
    expect(outline('a: |\n  one\n  two\nb: >-\n  three\n')).toEqual([
      'map 1:1-5:8',
      'key 1:1-1:2',
      'scalar 1:4-3:6',
      'key 4:1-4:2',
      'scalar 4:4-5:8',
    ]);
    expect(outline('a: "one\n  two"\n')[2]).toBe('scalar 1:4-2:7');
  });

  it('has them right with CR LF', () => {
    expect(outline('a: 1\r\nb: |\r\n  x\r\nc: 2\r\n')).toEqual([
      'map 1:1-4:5',
      'key 1:1-1:2',
      'scalar 1:4-1:5',
      'key 2:1-2:2',
      'scalar 2:4-3:4',
      'key 4:1-4:2',
      'scalar 4:4-4:5',
    ]);
  });

  it('has them right behind an emoji', () => {
    expect(outline('{🚗: 1}')).toEqual(['map 1:1-1:8', 'key 1:2-1:4', 'scalar 1:6-1:7']);
  });
});

describe('readYaml, sizes', () => {
  it('takes as many keys as the limit', () => {
    const keys = Array.from({ length: limits.keysPerEntry }, (_, index) => `k${index}: 1\n`);
    expect(Object.keys(Object(value(keys.join(''))))).toHaveLength(limits.keysPerEntry);
  });

  it('takes four times the largest plan', () => {
    const line = '  - {id: p-1, name: Rail, at: [1.5, 2.5, 3.5]}\n';
    const root = read(`parts:\n${line.repeat(20_000)}`);
    expect(root.kind === 'map' && root.entries.get('parts')?.value).toMatchObject({ kind: 'list' });
  });
});
