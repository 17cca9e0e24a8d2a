import { describe, expect, test } from 'vitest';
import { explainEntry, explainUnknownKey } from '../../src/plan/explain-entry.ts';
import type { LocatedNode } from '../../src/plan/node.ts';
import type { SchemaPart } from '../../src/plan/schema-keywords.ts';

const range = { start: 0, end: 1 };
const scalar = (source: string, value: string | number | boolean | null = source): LocatedNode => ({
  kind: 'scalar',
  value,
  source,
  range,
});
const map: LocatedNode = { kind: 'map', entries: new Map(), range };
const list: LocatedNode = { kind: 'list', items: [], range };

function explain(keyword: string, part: SchemaPart | undefined, given: LocatedNode | undefined): string {
  const { fault, sentence } = explainEntry({ instancePath: '/x', keyword, params: {} }, part, given);
  return `${fault}: ${sentence}`;
}

describe('a word', () => {
  const words: SchemaPart = { enum: ['section', 'butt weld', 'heat'], synonyms: { splice: 'section' } };

  test.each([
    ['a slip of the pen', 'sektion', 'Nearest known: `section`.'],
    ['capitals', 'Butt Weld', 'Nearest known: `butt weld`.'],
    ['what others call it', 'splice', 'Nearest known: `section`.'],
    ['in quotes', '"splice"', 'unknown word: `splice` is not a word known here. Nearest known: `section`.'],
    ['nothing like it', 'xyzzy', 'Known: `section`, `butt weld`, `heat`.'],
  ])('%s', (_name, source, said) => {
    expect(explain('enum', words, scalar(source))).toContain(said);
  });

  test('of many known words a few are listed and the rest counted', () => {
    const many = { enum: Array.from({ length: 20 }, (_, n) => `word number ${String(n)}`) };
    const said = explain('enum', many, scalar('zzz'));
    expect(said).toContain('`word number 15` and 4 more.');
    expect(said).not.toContain('word number 16');
  });

  test('a long text is cut where it is named', () => {
    const said = explain('enum', words, scalar(`s${'x'.repeat(500)}`));
    expect(said.length).toBeLessThan(150);
  });

  test('a block or a list where a word is due', () => {
    expect(explain('enum', words, map)).toBe(
      'wrong kind: Here stands a block of keys; expected is one of the known words.',
    );
    expect(explain('enum', words, list)).toBe(
      'wrong kind: Here stands a list; expected is one of the known words.',
    );
  });
});

describe('a value of another kind', () => {
  test.each<readonly [SchemaPart, LocatedNode | undefined, string]>([
    [{ type: 'boolean' }, scalar('yes'), 'Here stands `yes`; expected is true or false.'],
    [{ type: 'integer' }, scalar('2.5', 2.5), 'Here stands `2.5`; expected is a whole number.'],
    [{ type: 'number' }, list, 'Here stands a list; expected is a number.'],
    [{ type: 'string' }, map, 'Here stands a block of keys; expected is text.'],
    [{ type: 'array' }, scalar('M1'), 'Here stands `M1`; expected is a list.'],
    [{ type: 'object' }, scalar('M1'), 'Here stands `M1`; expected is a block of keys.'],
    [{ type: ['boolean', 'string'] }, list, 'Here stands a list; expected is true or false or text.'],
    [{ type: 'object' }, scalar('', null), 'Here stands nothing; expected is a block of keys.'],
    [{ type: 'object' }, undefined, 'Here stands nothing; expected is a block of keys.'],
    [{ enum: ['a'] }, map, 'Here stands a block of keys; expected is one of the known words.'],
  ])('%j', (part, given, said) => {
    expect(explain('type', part, given)).toBe(`wrong kind: ${said}`);
  });

  test('a bare number where a quantity is due is a quantity without its unit', () => {
    const said = explain('type', { type: 'string', format: 'temperature' }, scalar('700', 700));
    expect(said).toBe('unreadable quantity: "700" has no unit: write °C, °F or K after the number.');
  });

  test('a keyword without a sentence of its own still says what stands there and what is due', () => {
    expect(explain('pattern', { type: 'string' }, scalar('x'))).toBe(
      'wrong kind: Here stands `x`; expected is text.',
    );
    expect(explain('pattern', undefined, scalar('x'))).toBe(
      'wrong kind: Here stands `x`; expected is something else.',
    );
  });
});

describe('formats', () => {
  test.each([
    ['calendar-date', '2026-02-30', 'no such date'],
    ['moment', '2026-10-05T25:00', 'no such date'],
    ['years', '2O21', 'no such date'],
    ['length', '"1,4 mm"', 'unreadable quantity'],
    ['signed-length', 'ten', 'unreadable quantity'],
    ['stress', '1500 °C', 'unreadable quantity'],
  ])('%s: %s', (format, source, fault) => {
    const said = explain('format', { type: 'string', format }, scalar(source));
    expect(said.startsWith(`${fault}: `)).toBe(true);
    expect(said).toContain(source.replaceAll('"', ''));
  });

  test('a format that is not known here is still told', () => {
    expect(explain('format', { format: 'colour' }, scalar('red'))).toBe(
      'unreadable quantity: red cannot be read here.',
    );
  });
});

describe('ranges and lengths', () => {
  test('a number out of range is told with the range', () => {
    expect(explain('minimum', { minimum: 1, maximum: 100 }, scalar('0', 0))).toBe(
      'outside the range: 0 lies outside 1 to 100.',
    );
    expect(explain('maximum', { minimum: 1900 }, scalar('9999', 9999))).toBe(
      'outside the range: 9999 lies outside 1900 to any highest value.',
    );
  });

  test.each([
    ['maxLength', 'too long'],
    ['minLength', 'wrong kind'],
  ])('%s is %s', (keyword, fault) => {
    expect(explain(keyword, { type: 'string' }, scalar('x'))).toMatch(new RegExp(`^${fault}: .+\\.$`, 'u'));
  });
});

describe('a list of another length', () => {
  const list = (length: number): LocatedNode => ({
    kind: 'list',
    items: Array.from({ length }, () => scalar('1 mm')),
    range,
  });
  const told = (keyword: string, limit: number, part: SchemaPart, given: LocatedNode): string =>
    explainEntry({ instancePath: '', keyword, params: { limit } }, part, given).sentence;

  test('says how many entries stand there and how many are needed', () => {
    const three = { minItems: 3, maxItems: 3 };
    expect(told('minItems', 3, three, list(2))).toBe('Here stand 2 entries; 3 are needed.');
    expect(told('maxItems', 3, three, list(4))).toBe('Here stand 4 entries; 3 are needed.');
    expect(told('minItems', 3, { minItems: 3 }, list(1))).toBe('Here stands 1 entry; at least 3 are needed.');
    expect(told('maxItems', 5, { maxItems: 5 }, list(6))).toBe(
      'Here stand 6 entries; at most 5 can be taken.',
    );
    expect(told('minItems', 3, three, list(0))).toBe('Here stand no entries; 3 are needed.');
  });
});

describe('a key that is not known', () => {
  const part: SchemaPart = { properties: { maker: {}, model: {}, model_year: {} } };

  test.each([
    ['makr', 'Nearest known: `maker`.'],
    ['manufacturer', 'Nearest known: `maker`.'],
    ['year', 'Nearest known: `model_year`.'],
    ['Model Year', 'Nearest known: `model_year`.'],
    ['xyzzy', 'Known: `maker`, `model`, `model_year`.'],
    ['__proto__', 'Known: `maker`, `model`, `model_year`.'],
  ])('%s', (key, said) => {
    const explained = explainUnknownKey(key, part);
    expect(explained.fault).toBe('unknown key');
    expect(explained.sentence).toContain(`\`${key}\` is not a key that a plan has here. ${said}`);
  });

  test('where nothing is known nothing is suggested', () => {
    expect(explainUnknownKey('x', undefined).sentence).toBe('`x` is not a key that a plan has here.');
  });

  test('a synonym is only named where the plan takes its word', () => {
    expect(explainUnknownKey('manufacturer', { properties: { wax: {} } }).sentence).not.toContain('`maker`');
  });
});
