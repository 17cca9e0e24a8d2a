import { describe, expect, it, test } from 'vitest';
import { readKey } from '../../src/marking/read-key.ts';

const topics = new Set(['make-safe', 'heat']);

const whole = `format: 1
scenario:
  id: one
  vehicle: { maker: Corvane, model: Tarn }
pass: 50 %
parts:
  - name: Door ring, left
    kind: door ring
    side: left
    decisions: [{ do: replace, points: 2 }]
    must_not: [{ do: [section] }]
    citation: { documents: [A-1], revision: B, points: 2, without_revision: 1 }
    asked:
      - { of: joint count, value: 56, within: 2, points: 1 }
      - { of: heat temperature, value: 600 °C, within: 10 K, points: 1 }
      - { of: class, accept: [press-hardened], points: 1 }
completeness: [{ entry: make_safe.low_voltage, points: 1 }]
topics: [{ topic: make-safe, points: 2, each: 1 }]
`;

function faultsOf(text: string): readonly string[] {
  const reading = readKey('key.yaml', new TextEncoder().encode(text), topics);
  return reading.ok
    ? []
    : reading.faults.map(({ line, column, sentence }) => `${String(line)}:${String(column)} ${sentence}`);
}

test('a plan in the place of the key is told in one sentence', () => {
  expect(faultsOf('format: 1\nvehicle: { maker: Corvane }\nparts: [{ id: a, kind: sill }]\n')).toEqual([
    '1:1 This is a repair plan, not a key: a key has a `scenario`, and for each part its `decisions`.',
  ]);
});

test('a part that stands in the key twice, and one decision with two prices', () => {
  const twice = whole.replace(
    'completeness:',
    '  - { name: Door ring left, kind: door ring, decisions: [{ do: heat, points: 1 }] }\ncompleteness:',
  );
  expect(faultsOf(twice)).toEqual([
    '17:13 `Door ring left` is also a name of `Door ring, left`: a student’s part would fit both.',
  ]);
  expect(faultsOf(twice.replace('Door ring left', "'Door ring, left'"))).toEqual([
    '17:13 `Door ring, left` stands in this key already: a student’s part would fit both.',
  ]);
  const priced = (more: string): string =>
    whole.replace(
      'decisions: [{ do: replace, points: 2 }]',
      `decisions: [{ do: replace, points: 2 }, ${more}]`,
    );
  expect(faultsOf(priced('{ do: replace, points: 3 }'))).toEqual([
    '10:68 The same decision is worth 2 points above and 3 here.',
  ]);
  // Whole or in part is another decision.
  expect(faultsOf(priced('{ do: replace, extent: whole, points: 3 }'))).toEqual([]);
});

test('an empty list is told as nothing', () => {
  expect(faultsOf(whole.replace('documents: [A-1]', 'documents: []'))).toEqual([
    '12:28 Nothing is written here; take the key out, or say what is meant.',
  ]);
});

test('a word that a key has elsewhere is not named as the nearest to itself', () => {
  expect(faultsOf(whole.replace('pass: 50 %', 'pass: 50 %\nstage: start')).join('\n')).not.toContain(
    'Nearest known: `stage`',
  );
});

describe('a key', () => {
  it('is read whole', () => {
    const reading = readKey('key.yaml', new TextEncoder().encode(whole), topics);
    expect(reading.ok && reading.key).toMatchObject({
      passShare: 0.5,
      scenario: { id: 'one', stage: 'start' },
      parts: [
        {
          name: 'Door ring, left',
          asked: [
            { right: { value: 56, within: 2 } },
            { right: { value: 600, within: 10 } },
            { right: { words: ['press-hardened'] } },
          ],
        },
      ],
    });
  });

  test.each<[string, string, string, RegExp]>([
    [
      'an unknown key',
      'decisions:',
      'decision:',
      /^10:5 `decision` is not a word.*Nearest known: `decisions`/,
    ],
    ['an unknown operation', 'do: replace', 'do: replce', /^10:23 .*Nearest known: `replace`/],
    ['an unknown kind', 'kind: door ring', 'kind: door rign', /^8:11 .*`door ring`/],
    ['an unknown side', 'side: left', 'side: lefft', /^9:11 .*`left`/],
    ['a question nobody knows', 'of: joint count', 'of: joint cuont', /^14:15 .*`joint count`/],
    ['a number without its unit', '600 °C', '600', /^15:/],
    ['a count with a unit', 'value: 56', 'value: 56 mm', /^14:35 A count is a whole number/],
    ['a tolerance of another kind', 'within: 10 K', 'within: 10 mm', /^15:/],
    [
      'a class that is none',
      'accept: [press-hardened]',
      'accept: [press-hardend]',
      /^16:31 .*`press-hardened`/,
    ],
    ['a word asked as a number', 'accept: [press-hardened]', 'value: 5', /^16:9 `accept` is missing/],
    ['an entry that no plan has', 'make_safe.low_voltage', 'make_safe.low_volt', /^17:25 .*`low_voltage`/],
    ['a topic that no rule has', 'topic: make-safe', 'topic: make-save', /^18:19 .*`make-safe`/],
    ['a share above the whole', '50 %', '150 %', /^5:7 /],
    ['no share at all', '50 %', 'half', /^5:7 /],
    ['points below nothing', 'points: 2, each', 'points: -2, each', /^18:38 /],
    [
      'one that takes off more than there is',
      'each: 1',
      'each: 3',
      /^18:47 One that is open cannot take off more/,
    ],
    [
      'what is accepted and forbidden',
      'do: [section]',
      'do: [section, replace]',
      /^10:23 `replace` is accepted here and forbidden/,
    ],
    [
      'less that is worth as much',
      'without_revision: 1',
      'without_revision: 2',
      /^12:77 A citation that lacks/,
    ],
    ['a revision that cannot lack', 'revision: B, ', '', /^12:\d+ No `revision` is asked for/],
    [
      'no parts',
      whole.slice(whole.indexOf('  - name'), whole.indexOf('completeness')),
      '  []\n',
      /Nothing is written here/,
    ],
    ['another format', 'format: 1', 'format: 2', /^1:9 This planish reads keys/],
    ['text that is no YAML', '{ maker:', '{{ maker:', /^\d+:\d+ /],
  ])('with %s is refused with the place', (_what, good, bad, said) => {
    expect(whole).toContain(good);
    const faults = faultsOf(whole.replace(good, bad));
    expect(faults.join('\n')).toMatch(new RegExp(said.source, 'mu'));
  });

  it('tells two parts that share a name', () => {
    const two = whole.replace(
      'completeness:',
      '  - { name: Ring, also: [door ring LH], decisions: [{ do: leave, points: 1 }] }\ncompleteness:',
    );
    expect(faultsOf(two)[0]).toMatch(/also a name of `Door ring, left`/);
  });

  it('tells every fault at once', () => {
    expect(
      faultsOf(whole.replace('do: replace', 'do: replce').replace('side: left', 'side: lefft')),
    ).toHaveLength(2);
  });
});
