import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import type { LocatedNode } from '../../src/plan/node.ts';
import { plainValue } from '../../src/plan/plain-value.ts';
import { readYaml } from '../../src/plan/read-yaml.ts';

function read(text: string): LocatedNode {
  const reading = readYaml(text);
  if (!reading.ok) throw new Error(`${reading.faults.map((fault) => fault.sentence).join(' ')}\n${text}`);
  return reading.root;
}

const plain = (text: string) => plainValue(read(text));

describe('plainValue, keys that every object inherits', () => {
  it('makes `__proto__` an own property and leaves the prototype alone', () => {
    const value = Object(plain('__proto__: {admin: true}\na: 1\n'));
    expect(Object.keys(value)).toEqual(['__proto__', 'a']);
    expect(Object.getPrototypeOf(value)).toBe(Object.prototype);
    expect(value.admin).toBeUndefined();
  });

  it('lets a schema refuse it like any unknown key', () => {
    const schema = { type: 'object', properties: { a: { type: 'number' } }, additionalProperties: false };
    const validate = new Ajv2020({ strict: true }).compile(schema);
    expect(validate(plain('a: 1\n'))).toBe(true);
    expect(validate(plain('a: 1\n__proto__: {b: 1}\n'))).toBe(false);
    expect(validate(plain('a: 1\nconstructor: 2\n'))).toBe(false);
  });
});

/** What a plan can hold: words that need no escaping rule of their own, whole numbers, keys in any order. */
const words = fc
  .string({ unit: fc.constantFrom(...Array.from('abz019 :#-,[]{}&*!|>\'"%@`?~.ä°🚗\n')), maxLength: 12 })
  // Package yaml writes a text of blanks and line ends in a way that it does not itself read back.
  .filter((word) => !word.includes('\n') || word === word.trim());
const { tree } = fc.letrec<{ tree: unknown }>((tie) => ({
  tree: fc.oneof(
    { maxDepth: 4 },
    fc.oneof(words, fc.integer(), fc.boolean(), fc.constant(null)),
    fc.array(tie('tree'), { maxLength: 4 }),
    fc.dictionary(
      words.filter((word) => word !== '' && word !== '<<'),
      tie('tree'),
      { maxKeys: 4, noNullPrototype: true },
    ),
  ),
}));
/** A lone scalar may come out as nothing but a remark or a line of dashes; a plan is never one. */
const documents = fc.dictionary(fc.constantFrom('a', 'b', 'c d'), tree, {
  minKeys: 1,
  noNullPrototype: true,
});

function scalarsOf(node: LocatedNode): readonly (LocatedNode & { readonly kind: 'scalar' })[] {
  if (node.kind === 'scalar') return [node];
  if (node.kind === 'list') return node.items.flatMap(scalarsOf);
  return [...node.entries.values()].flatMap((entry) => scalarsOf(entry.value));
}

describe('properties of the reader', () => {
  it('reads back whatever was written', () => {
    fc.assert(
      fc.property(documents, (document) => {
        expect(plain(stringify(document, { aliasDuplicateObjects: false }))).toEqual(document);
        // JSON is YAML written in braces.
        expect(plain(JSON.stringify(document))).toEqual(document);
      }),
    );
  });

  it('gives every scalar a range that holds that scalar and nothing else', () => {
    fc.assert(
      fc.property(documents, (document) => {
        const text = stringify(document, { aliasDuplicateObjects: false });
        for (const scalar of scalarsOf(read(text))) {
          expect(text.slice(scalar.range.start, scalar.range.end)).toBe(scalar.source);
          // A text that states its own indentation (`|2`) counts it from the entry it stands in.
          if (/^[|>][-+]?[1-9]/.test(scalar.source)) continue;
          // At the start of a line these are marks between documents.
          if (/^(?:---|\.\.\.)(?:\s|$)/.test(scalar.source)) continue;
          if (scalar.source === '') expect(scalar.value).toBeNull();
          // A text under `|` or `>` is closed by the line end that its range leaves out.
          else expect(plain(`${scalar.source}\n`)).toBe(scalar.value);
        }
      }),
    );
  });

  it('gives the keys of an entry ranges in order, each before its value', () => {
    fc.assert(
      fc.property(documents, (document) => {
        const check = (node: LocatedNode): void => {
          let from = node.range.start;
          const inside = node.kind === 'list' ? node.items : [];
          for (const item of inside) {
            expect(item.range.start).toBeGreaterThanOrEqual(from);
            from = item.range.end;
            check(item);
          }
          for (const entry of node.kind === 'map' ? node.entries.values() : []) {
            expect(entry.keyRange.start).toBeGreaterThanOrEqual(from);
            expect(entry.value.range.start).toBeGreaterThan(entry.keyRange.start);
            from = entry.value.range.end;
            check(entry.value);
          }
          expect(node.range.end).toBeGreaterThanOrEqual(from);
        };
        check(read(stringify(document, { aliasDuplicateObjects: false })));
      }),
    );
  });

  it('reads the same with remarks and blank lines anywhere between the lines', () => {
    const lines = [
      'format: 1',
      'job: {number: K-1, # why',
      '  opened: 2026-10-05}',
      'parts:',
      '  - id: ring-l',
      '    damage:',
      '      kind: kink',
      '      note:',
      '    operations:',
      '    - do: heat',
      '      near: [{part: x},',
      '        {part: y}]',
      '  - id: sill',
      'finish:',
    ];
    const expected = plain(lines.join('\n'));
    const filler = fc.array(
      fc.constantFrom(
        '',
        '   ',
        '# remark: [x',
        '  # remark',
        '        # remark',
        '            # "remark"',
        `#${'x'.repeat(1100)}`,
      ),
      { maxLength: 4 },
    );
    fc.assert(
      fc.property(
        fc.array(filler, { minLength: lines.length + 1, maxLength: lines.length + 1 }),
        (fillers) => {
          const text = [
            ...(fillers[lines.length] ?? []),
            ...lines.flatMap((line, index) => [line, ...(fillers[index] ?? [])]),
          ];
          expect(plain(text.join('\n'))).toEqual(expected);
          expect(plain(text.join('\r\n'))).toEqual(expected);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('answers any text at all, with values or with sentences that have a place inside it', () => {
    const scraps = fc.array(
      fc.constantFrom(
        'a',
        ': ',
        ':',
        '- ',
        '\n',
        '  ',
        '[',
        ']',
        '{',
        '}',
        ',',
        '"',
        "'",
        '#',
        ' #',
        '&x ',
        '*x',
        '!t ',
        '|',
        '>',
        '%',
        '---',
        '...',
        '?',
        '\t',
        '<<',
        '@',
        '\\',
        '1e999',
        '\r\n',
      ),
      { maxLength: 40 },
    );
    fc.assert(
      fc.property(scraps, (pieces) => {
        const text = pieces.join('');
        const reading = readYaml(text);
        fc.pre(!reading.ok);
        expect(reading.faults.length).toBeGreaterThan(0);
        for (const fault of reading.faults) {
          expect(fault.sentence).toMatch(/[.]$/);
          if (fault.range === undefined) continue;
          expect(fault.range.start).toBeGreaterThanOrEqual(0);
          expect(fault.range.end).toBeGreaterThanOrEqual(fault.range.start);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
