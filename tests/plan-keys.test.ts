import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

// A key that nobody reads is silence that looks like care: its description must say so.

// What the sheet shows beside the facts is not judged for that.
const facts = readdirSync('src/facts', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .filter((name) => !/(?:^|[\\/])(?:plan|part|hazards|signature)-shown\.ts$/u.test(name))
  .map((name) => readFileSync(`src/facts/${name}`, 'utf8').replaceAll(/\/\*\*[\s\S]*?\*\/|\/\/.*/gu, ''))
  .join('\n');

function keysOf(node: unknown, at = ''): readonly { readonly key: string; readonly description: string }[] {
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node).flatMap(([name, inner]) => {
    const own =
      at.endsWith('/properties') && typeof inner === 'object' && inner !== null
        ? [{ key: name, description: 'description' in inner ? String(inner.description) : '' }]
        : [];
    return [...own, ...keysOf(inner, `${at}/${name}`)];
  });
}

const keys = keysOf(JSON.parse(readFileSync('schemas/plan.schema.json', 'utf8')));
const isRead = (key: string): boolean =>
  ['format', 'rules'].includes(key) || new RegExp(`\\b${key}\\b`, 'u').test(facts);

test('the schema of plans is looked through', () => {
  expect(keys.length).toBeGreaterThan(200);
});

test('every key that no fact is written from says that it is not judged', () => {
  const silent = keys.filter(({ key, description }) => !isRead(key) && !description.includes('Not judged'));
  expect(silent.map(({ key }) => key)).toEqual([]);
});

test('no key that a fact is written from says that it is not judged', () => {
  const wrong = keys.filter(({ key, description }) => isRead(key) && description.includes('Not judged'));
  expect(wrong.map(({ key }) => key)).toEqual([]);
});
