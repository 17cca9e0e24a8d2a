import { describe, expect, it } from 'vitest';
import { locate } from '../../src/plan/locate.ts';
import { readYaml } from '../../src/plan/read-yaml.ts';

const text =
  'vehicle: {maker: Corvane}\nparts:\n  - id: ring-l\n    grade: 22MnB5\na/b: 1\n~1: 2\n"": 3\n__proto__: 4\n';

function at(pointer: string): readonly [exists: boolean, key: string | undefined, value: string] | undefined {
  const reading = readYaml(text);
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence);
  const found = locate(reading.root, pointer);
  if (found === undefined) return undefined;
  const key = found.key && text.slice(found.key.start, found.key.end);
  return [found.exists, key, text.slice(found.value.start, found.value.end)];
}

describe('locate', () => {
  it('gives key and value of an entry', () => {
    expect(at('/vehicle/maker')).toEqual([true, 'maker', 'Corvane']);
    expect(at('/parts/0/grade')).toEqual([true, 'grade', '22MnB5']);
  });

  it('gives no key for an entry of a list', () => {
    expect(at('/parts/0')).toEqual([true, undefined, 'id: ring-l\n    grade: 22MnB5']);
  });

  it('gives the whole plan for the empty pointer', () => {
    expect(at('')).toEqual([true, undefined, text.trimEnd()]);
  });

  it('reads the escapes of RFC 6901', () => {
    expect(at('/a~1b')).toEqual([true, 'a/b', '1']);
    expect(at('/~01')).toEqual([true, '~1', '2']);
    expect(at('/')).toEqual([true, '""', '3']);
  });

  it('finds a key that every JavaScript object inherits only where it is written', () => {
    expect(at('/__proto__')).toEqual([true, '__proto__', '4']);
    expect(at('/constructor')).toEqual([false, undefined, text.trimEnd()]);
  });

  it('gives the deepest entry that is there when the pointer leads further', () => {
    expect(at('/vehicle/model')).toEqual([false, 'vehicle', '{maker: Corvane}']);
    expect(at('/vehicle/maker/x/y')).toEqual([false, 'maker', 'Corvane']);
    expect(at('/parts/0/damage/kind')).toEqual([false, undefined, 'id: ring-l\n    grade: 22MnB5']);
  });

  it.each(['/parts/1', '/parts/-', '/parts/00', '/parts/ 0', '/parts/0x0', '/parts/-0'])(
    'knows no %s',
    (pointer) => {
      expect(at(pointer)).toEqual([false, 'parts', '- id: ring-l\n    grade: 22MnB5']);
    },
  );

  it('gives nothing for what is no pointer', () => {
    expect(at('parts')).toBeUndefined();
  });
});
