import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Allowed, CheckRow } from './check-row.ts';
import { computers } from './computers.ts';
import type { Given } from './computers.ts';

/** What the writer of the handbook worked out in programs of his own: a second opinion, and nothing that is published. */
const handbookFolder = path.join(import.meta.dirname, '../../heat/handbook-checks');

/**
 * All rows of the JSON files beside this one, of published values, and of those of the handbook's writer. A file is a list of
 * groups: `what` with {names} of the numbers given, `source`, `unit`, `compute` (a name in `computers.ts`), `allowed` (see `Allowed`), `ambient` where a share is one of the rise
 * above it, and `rows`, each `given` and `expected`.
 */
export function jsonRows(): readonly CheckRow[] {
  return [import.meta.dirname, handbookFolder].flatMap((folder) =>
    readdirSync(folder)
      .filter((name) => name.endsWith('.json'))
      .toSorted()
      .flatMap((name) =>
        listOf(JSON.parse(readFileSync(path.join(folder, name), 'utf8'))).flatMap(rowsOfGroup),
      ),
  );
}

function rowsOfGroup(group: unknown): readonly CheckRow[] {
  const name = textOf(group, 'compute');
  const compute = computers[name];
  if (!compute) throw new Error(`no computer is named ${name}`);
  const ambient = partOf(group, 'ambient');
  return listOf(partOf(group, 'rows')).map((row) => {
    const given = givenOf(partOf(row, 'given'));
    const expected = numberOf(row, 'expected');
    return {
      what: textOf(group, 'what').replaceAll(/\{(\w+)\}/g, (_, key: string) => String(given[key])),
      source: textOf(group, 'source'),
      unit: textOf(group, 'unit'),
      expected,
      computed: compute(given),
      allowed: allowedOf(partOf(group, 'allowed')),
      ...(typeof ambient === 'number' ? { base: expected - ambient } : {}),
    };
  });
}

function partOf(whole: unknown, key: string): unknown {
  if (typeof whole !== 'object' || whole === null) throw new Error(`no object to look for ${key} in`);
  return Object.entries(whole).find(([name]) => name === key)?.[1];
}

function listOf(value: unknown): readonly unknown[] {
  if (!Array.isArray(value)) throw new Error('a list was expected');
  return value;
}

function textOf(whole: unknown, key: string): string {
  const value = partOf(whole, key);
  if (typeof value !== 'string') throw new Error(`${key} is no text`);
  return value;
}

function numberOf(whole: unknown, key: string): number {
  const value = partOf(whole, key);
  if (typeof value !== 'number') throw new Error(`${key} is no number`);
  return value;
}

function givenOf(value: unknown): Given {
  if (typeof value !== 'object' || value === null) throw new Error('a row gives nothing');
  return Object.fromEntries(
    Object.entries(value).map(([key, one]): [string, number | string] => {
      if (typeof one !== 'number' && typeof one !== 'string')
        throw new Error(`${key} is neither number nor text`);
      return [key, one];
    }),
  );
}

function allowedOf(value: unknown): Allowed {
  const found: Record<string, number> = {};
  for (const key of ['absolute', 'share', 'lowShare']) {
    const one = partOf(value, key);
    if (typeof one === 'number') found[key] = one;
  }
  if (Object.keys(found).length === 0) throw new Error('nothing is allowed');
  return found;
}
