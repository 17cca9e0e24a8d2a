import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { limits } from '../../src/plan/limits.ts';
import { plainValue } from '../../src/plan/plain-value.ts';
import { readYaml } from '../../src/plan/read-yaml.ts';
import { shownFaults } from './shown-faults.ts';

describe('nesting', () => {
  const tooDeep = 'Entries are nested more than 40 deep here; a plan nests about ten deep.';
  const shapes: readonly (readonly [string, (depth: number) => string])[] = [
    ['brackets', (depth) => '['.repeat(depth) + ']'.repeat(depth)],
    ['brackets around a value', (depth) => `${'['.repeat(depth)}x${']'.repeat(depth)}`],
    ['braces', (depth) => `${'{a: '.repeat(depth)}1${'}'.repeat(depth)}`],
    ['dashes', (depth) => `${'- '.repeat(depth)}x`],
    [
      'lines',
      (depth) => Array.from({ length: depth }, (_, level) => `${' '.repeat(level)}a:`).join('\n') + ' 1\n',
    ],
  ];

  it.each(shapes)('takes %s as deep as the limit, and not one deeper', (_name, nested) => {
    expect(shownFaults(nested(limits.depth))).toEqual([]);
    expect(shownFaults(nested(limits.depth + 1))).toEqual([expect.stringContaining(tooDeep)]);
  });

  it('points at the entry that is one too deep', () => {
    expect(shownFaults(`a:\n  ${'['.repeat(45)}`)).toEqual([`2:42-2:43 ${tooDeep}`]);
  });

  it('survives several such documents in one process', () => {
    // Composing these ended Node 20 itself, past any catch; so the child's own status is the proof.
    const module = new URL('../../src/plan/read-yaml.ts', import.meta.url).href;
    const script = `
      import { readYaml } from ${JSON.stringify(module)};
      for (const piece of ['[', '- ', '{a: ', '? ', 'a: ']) {
        const reading = readYaml(piece.repeat(10000));
        console.log(reading.ok ? 'read' : reading.faults.length);
      }`;
    const child = spawnSync(process.execPath, ['--import', 'tsx', '--input-type=module', '--eval', script], {
      encoding: 'utf8',
    });
    expect([child.status, child.signal, child.stdout]).toEqual([0, null, '1\n1\n1\n1\n1\n']);
  });
});

describe('size', () => {
  it('refuses one key more than the limit, at that key', () => {
    const keys = Array.from({ length: limits.keysPerEntry + 1 }, (_, index) => `k${index}: 1\n`).join('');
    expect(shownFaults(keys)).toEqual([
      '1001:1-1001:6 More than 1000 keys stand in one entry; a plan needs no more than fifty.',
    ]);
  });

  it('refuses a text of too many pieces', () => {
    const sentence = 'The file holds more words and marks than a plan ever takes.';
    expect(shownFaults(`[${'1,'.repeat(limits.pieces)}]`)).toEqual([expect.stringContaining(sentence)]);
  });
});

describe('what stands in another place', () => {
  const repeats = (written: string) =>
    `\`${written}\` repeats a value from another place; write the value out here.`;

  it('refuses an alias, with or without its anchor', () => {
    expect(shownFaults('a: &x 1\nb: *x\n')).toEqual([`2:4-2:6 ${repeats('*x')}`]);
    expect(shownFaults('b: [*nowhere]\n')).toEqual([`1:5-1:13 ${repeats('*nowhere')}`]);
  });

  it('refuses a list that holds itself', () => {
    expect(shownFaults('&a [*a]')).toEqual([`1:5-1:7 ${repeats('*a')}`]);
  });

  it('refuses a billion laughs, naming the first five', () => {
    const lines = ['a: &a [x, x]'];
    for (const [from, to] of ['ab', 'bc', 'cd', 'de']) lines.push(`${to}: &${to} [*${from}, *${from}]`);
    expect(shownFaults(lines.join('\n'))).toEqual([
      `2:8-2:10 ${repeats('*a')}`,
      `2:12-2:14 ${repeats('*a')}`,
      `3:8-3:10 ${repeats('*b')}`,
      `3:12-3:14 ${repeats('*b')}`,
      `4:8-4:10 ${repeats('*c')}`,
      '3 more faults follow.',
    ]);
  });

  it('refuses an alias as a key', () => {
    expect(shownFaults('*a : 1')).toEqual(['1:1-1:3 `*a` begins a key that is not a plain word.']);
  });

  it('refuses a merge key, but not the quoted word', () => {
    const sentence = '`<<` merges keys from another place; write the keys out here.';
    expect(shownFaults('a: {b: 1}\nc:\n  <<: {b: 2}\n')).toEqual([`3:3-3:5 ${sentence}`]);
    expect(shownFaults('"<<": 1\n')).toEqual([]);
  });
});

describe('other rules of reading', () => {
  const asks = (line: string) =>
    `\`${line}\` asks for other rules of reading than YAML 1.2; take the line out.`;

  it.each(['%YAML 1.1', '%YAML 1.3', '%YAML', '%TAG ! tag:example.com,2026:', '%OTHER x'])(
    'refuses %s',
    (line) => {
      const end = line.length + 1;
      expect(shownFaults(`${line}\n---\na: yes\n`)).toEqual([`1:1-1:${end} ${asks(line)}`]);
    },
  );

  it('asks for the line that ends the directives', () => {
    expect(shownFaults('%YAML 1.2\na: 1\n')).toEqual([
      '2:1-2:2 After a line that begins with `%`, a line `---` has to come.',
    ]);
  });

  it('refuses a second document, at its beginning', () => {
    const sentence = 'A second document begins here; a file holds one plan.';
    expect(shownFaults('a: 1\n---\nb: 2\n')).toEqual([`2:1-2:4 ${sentence}`]);
    expect(shownFaults('a: 1\n...\n---\nb: 2\n---\nc: 3\n')).toEqual([`3:1-3:4 ${sentence}`]);
    expect(shownFaults('---\na: 1\n...\n')).toEqual([]);
  });

  it.each([
    ['a: !!binary aGk=', '!!binary', '1:4-1:12'],
    ['a: !shop x', '!shop', '1:4-1:9'],
    ['a: !!timestamp 2026-10-05', '!!timestamp', '1:4-1:15'],
    ['a: !!set {x}', '!!set', '1:4-1:9'],
    ['a: !!int 1.5 mm', '!!int', '1:4-1:9'],
    ['a: !!map [1]', '!!map', '1:4-1:9'],
    ['a: !x!y z', '!x!y', '1:4-1:8'],
    ['a: !<tag:yaml.org,2002:js> z', '!<tag:yaml.org,2002:js>', '1:4-1:27'],
  ])('refuses the type mark in %s', (text, mark, place) => {
    expect(shownFaults(text)).toEqual([
      `${place} The type mark \`${mark}\` has no use here; take it out, or put the value in quotes.`,
    ]);
  });
});

describe('numbers', () => {
  it.each([
    '1e400',
    '-1e400',
    '.inf',
    '-.Inf',
    '.nan',
    '12345678901234567890',
    '9007199254740993',
    '1e-400',
    '0xfffffffffffffff',
  ])('refuses %s, which would be judged as another number', (written) => {
    expect(shownFaults(`a:\n  - ${written} # so\n`)).toEqual([
      `2:5-2:${5 + written.length} \`${written}\` cannot be kept as a number; put it in quotes if it is a document or serial number.`,
    ]);
  });

  it.each([
    ['9007199254740991', 9007199254740991],
    ['123456789012345', 123456789012345],
    ['1234.5000000000001', 1234.5000000000001],
    ['0.0', 0],
    ['0e5', 0],
    ['1e-300', 1e-300],
    ['"1e400"', '1e400'],
    ['"12345678901234567890"', '12345678901234567890'],
  ])('takes %s', (written, number) => {
    const reading = readYaml(written);
    expect(reading.ok && plainValue(reading.root)).toBe(number);
  });
});

describe('keys', () => {
  it('refuses a key that stands twice, naming both lines', () => {
    expect(shownFaults('a: 1\nb:\n  grade: x\n  class: y\n  grade: z\n')).toEqual([
      '5:3-5:8 The key `grade` stands on line 3 and again on line 5; one of them has to go.',
    ]);
    expect(shownFaults('{a: 1, "a": 2}')).toEqual([
      '1:8-1:11 The key `a` stands twice on line 1; one of them has to go.',
    ]);
    expect(shownFaults('__proto__: 1\n__proto__: 2\n')).toEqual([
      '2:1-2:10 The key `__proto__` stands on line 1 and again on line 2; one of them has to go.',
    ]);
  });

  it('takes the same key in two entries, and keys that differ in their capitals', () => {
    expect(shownFaults('- {a: 1, A: 2}\n- {a: 1}\n')).toEqual([]);
  });

  it('refuses a key that is a list, an entry or of another kind', () => {
    expect(shownFaults('? [x]\n: 1\n')).toEqual(['1:3-1:4 `[` begins a key that is not a plain word.']);
    expect(shownFaults('{{a: 1}: 2}')).toEqual(['1:2-1:3 `{` begins a key that is not a plain word.']);
    expect(shownFaults('!!int 1: 2')).toEqual(['1:1-1:6 `!!int` begins a key that is not a plain word.']);
  });

  it('refuses a value without a key', () => {
    expect(shownFaults('a: 1\n: 2\n')).toEqual([
      '2:1-2:1 A value stands here without a key before its colon.',
    ]);
  });
});

describe('characters', () => {
  it.each([
    ['a: "x\\e[31m"', '1:4-1:13', 'U+001B (a control character)'],
    ['a: "\\0"', '1:4-1:8', 'U+0000 (a control character)'],
    ['a: "\\u202E"', '1:4-1:12', 'U+202E (a mark that turns the direction of writing)'],
    ['"\\x07": 1', '1:1-1:7', 'U+0007 (a control character)'],
  ])('refuses the escape in %s', (text, place, name) => {
    expect(shownFaults(text)).toEqual([
      `${place} The character ${name} is spelled here; a plan may not hold it.`,
    ]);
  });

  it('takes the escapes of a tab, a line end and a letter, and a backslash elsewhere', () => {
    expect(shownFaults('a: "\\t\\n\\u00e4\\r\\n"\nb: \'\\e\'\nc: C:\\e\n')).toEqual([]);
  });

  it('cuts a long piece of text short without cutting a character in half', () => {
    const [shown] = shownFaults(`a: *${'🚗'.repeat(60)}\n`);
    expect(shown).toBe(
      `1:4-1:125 \`*${'🚗'.repeat(38)}…\` repeats a value from another place; write the value out here.`,
    );
  });
});

describe('nothing to judge', () => {
  it.each(['', '\n\n', '---\n', '  \n'])('says so of %j', (text) => {
    expect(shownFaults(text)).toEqual(['1:1-1:1 The file holds no entries.']);
  });

  it('says that there are comments only', () => {
    expect(shownFaults('# a plan\n\n  # to be written\n')).toEqual(['1:1-1:1 The file holds comments only.']);
  });

  it('has nothing to say about a hundred thousand stray brackets but the first', () => {
    expect(shownFaults(']\n'.repeat(100_000))).toEqual([
      '1:1-1:2 `]` closes a bracket that is not open.',
      '2:1-2:2 `]` closes a bracket that is not open.',
      '3:1-3:2 `]` closes a bracket that is not open.',
      '4:1-4:2 `]` closes a bracket that is not open.',
      '5:1-5:2 `]` closes a bracket that is not open.',
      '95 more faults follow.',
    ]);
  });
});

describe('a question mark that stands for what nobody knows yet', () => {
  const sentence =
    "A `?` alone stands here, which begins a key in YAML; leave what is not known empty, or put the mark in quotes: `'?'`.";

  it.each([
    ['a: ?\nb: 1\n', '1:4-1:5'],
    ['a: ? # who\n', '1:4-1:5'],
    ['a: { b: ?, c: 1 }\n', '1:9-1:10'],
    ['a: { b: ? }\n', '1:9-1:10'],
    ['a: [?]\n', '1:5-1:6'],
    ['a: [ ? ]\n', '1:6-1:7'],
    ['a: [b, ?]\n', '1:8-1:9'],
    ['a: { b: 1, ? }\n', '1:12-1:13'],
    ['a:\n  - ?\n  - b\n', '2:5-2:6'],
    ['a:\n  - ? # who\n', '2:5-2:6'],
    ['a:\r\n  - ?\r\n', '2:5-2:6'],
    ['a:\n  ?\n', '2:3-2:4'],
  ])('%j is told as such, not as a colon or a comma', (text, place) => {
    expect(shownFaults(text)).toEqual([`${place} ${sentence}`]);
  });

  it('a comma that is missing for another reason is still told', () => {
    expect(shownFaults('a: { b: "?" c: 1 }\n').join()).toContain('a comma is missing here');
  });

  it('a value without any key is still told', () => {
    expect(shownFaults('a: { : b }\n').join()).toContain('without a key before its colon');
  });

  it('quoted, or as a part of a word, it is a value', () => {
    expect(shownFaults("a: '?'\nb: what?\nc: { d: why?, e: '?' }\n")).toEqual([]);
  });
});
