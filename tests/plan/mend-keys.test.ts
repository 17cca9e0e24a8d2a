import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isScalar, parseDocument, visit } from 'yaml';
import { mendKeys } from '../../src/plan/mend-keys.ts';
import { looksSigned } from '../../src/plan/looks-signed.ts';
import { readYaml } from '../../src/plan/read-yaml.ts';
import { anyPlan } from '../any-plan.ts';

const mend = (text: string): string => mendKeys(text)?.text ?? 'not read';

const inPart = (lines: string): string => `format: 1\nvehicle: {}\nparts:\n  - id: p\n    ${lines}\n`;

describe('a key that can only mean one', () => {
  test.each<readonly [string, string, string]>([
    ['one letter left out', 'thicknes: 1.4 mm', 'thickness: 1.4 mm'],
    ['two letters changed places', 'strucutral: true', 'structural: true'],
    ['two slips in a long word', 'closd_secton: true', 'closed_section: true'],
    ['capitals', 'Thickness: 1.4 mm', 'thickness: 1.4 mm'],
    ['a hyphen', 'grade-from: { at: p. 4 }', 'grade_from: { at: p. 4 }'],
    ['a blank', 'joined to: [q]', 'joined_to: [q]'],
    ['no blank at all', 'onePiece: true', 'one_piece: true'],
    ['a word of the trade', 'tensile: 590 MPa', 'strength: 590 MPa'],
    ['in quotes', '"thicknes": 1.4 mm', 'thickness: 1.4 mm'],
    [
      'in a block that is misspelt itself',
      'damagee: { founded_by: seen, kindd: dent }',
      'damage: { found_by: seen, kindd: dent }',
    ],
    ['with nothing behind it', 'thicknes:', 'thickness:'],
    ['with a remark behind it', 'thicknes: 1.4 mm # as read', 'thickness: 1.4 mm # as read'],
    ['of a list in place of one', 'operationss:\n      - { do: heat }', 'operations:\n      - { do: heat }'],
  ])('%s', (_what, from, to) => {
    expect(mend(inPart(from))).toBe(inPart(to));
  });

  test('at the top of a plan too', () => {
    expect(mend('format: 1\nvehicel: { make: Corvane, modelYear: 2021 }\nparts: []\n')).toBe(
      'format: 1\nvehicle: { maker: Corvane, model_year: 2021 }\nparts: []\n',
    );
  });
});

describe('a key is left as it is', () => {
  test.each<readonly [string, string]>([
    ['where the meant one stands beside it', 'thickness: 1.4 mm\n    thicknes: 1.5 mm'],
    ['where two would become one', 'thicknes: 1.4 mm\n    thickness_: 1.5 mm'],
    ['where it is too short to be sure', 'syde: left'],
    ['where nothing is near', 'colour: red'],
    ['where it is a key elsewhere in a plan', 'temperature: 20 °C'],
    ['where the value is none that the key takes: a bare number', 'thicknes: 1.4'],
    ['where the value is none that the key takes: a block', 'thicknes: { min: 1 mm }'],
    ['where the value is a word that is not known', 'conditionn: splendid'],
    ['where a number makes it another one', 'grade2: DC04'],
    ['where a further word does', 'thickness_b: 1.4 mm'],
    ['where the opposite is written', 'unstructural: true'],
    ['where the word means several things', 'material: 22MnB5'],
    ['`time`, which is one letter from `times`', 'operations: [{ do: heat, time: 3 }]'],
  ])('%s', (_what, lines) => {
    expect(mend(inPart(lines))).toBe(inPart(lines));
  });

  test.each([
    'sign_of: { date: 2026-10-17 }',
    'signature: { date: 2026-10-17 }',
    'deviation: []',
    'deviatons: []',
  ])('where somebody would put a name to it: %s', (line) => {
    const text = `format: 1\nvehicle: {}\nparts: []\n${line}\n`;
    expect(mend(text)).toBe(text);
  });

  test('and words and values are: operations, grades, quantities', () => {
    const text = inPart('grade: 22MnB5+AS15O\n    operations: [{ do: spilce, temperature: 600 C° }]');
    expect(mend(text)).toBe(text);
  });

  test('and a text that cannot be read is not mended at all', () => {
    expect(mendKeys('a: [\n')).toBeUndefined();
    expect(mendKeys('a: 1\n---\nb: 2\n')).toBeUndefined();
  });
});

test.each<readonly [string, boolean]>([
  ['sign_off: { date: 2026-10-17 }', true],
  ['sign_of: { date: 2026-10-17 }', true],
  ['Sign-Off: { date: 2026-10-17 }', true],
  ['signature: { date: 2026-10-17 }', true],
  ['sign_off:', false],
  ['stage: start', false],
])('whether a plan looks signed: %s', (line, expected) => {
  const yaml = readYaml(`format: 1\n${line}\n`);
  expect(yaml.ok && looksSigned(yaml.root)).toBe(expected);
});

/** A slip of the finger in a word. */
const slip = fc
  .record({
    at: fc.nat(),
    kind: fc.constantFrom('left out', 'twice', 'swapped', 'capital', 'hyphen', 'other'),
  })
  .map(({ at, kind }) => (word: string): string => {
    const index = at % word.length;
    const [head, letter, tail] = [word.slice(0, index), word.charAt(index), word.slice(index + 1)];
    switch (kind) {
      case 'left out':
        return head + tail;
      case 'twice':
        return head + letter + letter + tail;
      case 'swapped':
        return head + tail.slice(0, 1) + letter + tail.slice(1);
      case 'capital':
        return head + letter.toUpperCase() + tail;
      case 'hyphen':
        return word.replaceAll('_', '-');
      default:
        return `${head}x${tail}`;
    }
  });

/** The text with the letters of its keys taken out, from the parser's own tokens and not from ours. */
function withoutKeys(text: string): string {
  const document = parseDocument(text, { keepSourceTokens: true });
  const keys: (readonly [number, number])[] = [];
  visit(document, {
    Pair: (_key, { key }) => {
      if (isScalar(key) && key.range) keys.push([key.range[0], key.range[1]]);
    },
  });
  return keys
    .sort(([a], [b]) => b - a)
    .reduce((before, [start, end]) => before.slice(0, start) + before.slice(end), text);
}

test('whatever keys are misspelt, nothing but keys changes, and a second time nothing at all', () => {
  let mendedOnce = 0;
  fc.assert(
    fc.property(
      anyPlan,
      fc.array(fc.tuple(fc.nat(), slip), { minLength: 1, maxLength: 6 }),
      (text, slips) => {
        const document = parseDocument(text);
        const keys: { value: unknown }[] = [];
        visit(document, {
          Pair: (_key, { key }) => {
            if (isScalar(key)) keys.push(key);
          },
        });
        for (const [choice, change] of slips) {
          const key = keys[choice % keys.length];
          if (key !== undefined && typeof key.value === 'string' && key.value !== '')
            key.value = change(key.value);
        }
        const misspelt = document.toString({ lineWidth: 0 });
        const mended = mendKeys(misspelt);
        fc.pre(mended !== undefined);
        mendedOnce += mended.keys > 0 ? 1 : 0;
        expect(withoutKeys(mended.text)).toBe(withoutKeys(misspelt));
        expect(mendKeys(mended.text)).toEqual({ text: mended.text, keys: 0 });
      },
    ),
    { numRuns: 150 },
  );
  // Else the property would hold of a mending that does nothing.
  expect(mendedOnce).toBeGreaterThan(30);
});
