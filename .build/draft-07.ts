import path from 'node:path';
import { readSchema } from './json-schema.ts';

/** Keywords of 2020-12 that mean something else in draft-07, or nothing; a schema that uses one is not turned over silently. */
const notIn07 = new Set([
  ...['prefixItems', 'unevaluatedProperties', 'unevaluatedItems', 'dependentRequired', 'dependentSchemas'],
  ...['$dynamicRef', '$dynamicAnchor', '$anchor', 'minContains', 'maxContains', '$vocabulary'],
]);

/** Our own keywords, which editors have no use for. */
const own = new Set(['synonyms', 'dimension', 'namesSomething']);

/**
 * A schema of JSON Schema 2020-12 as draft-07, which editors of YAML read: the same files fit both. In draft-07 nothing counts that
 * stands beside a `$ref`, so that the reference goes into an `allOf`.
 */
export function draft07Source(schemaPath: string): string {
  const { $schema, $id, ...rest } = readSchema(schemaPath);
  if ($schema !== 'https://json-schema.org/draft/2020-12/schema')
    throw new Error(`${schemaPath} is no 2020-12`);
  const name = path.basename(schemaPath).replace('.schema.json', '.draft-07.schema.json');
  const schema = {
    $schema: 'http://json-schema.org/draft-07/schema#',
    $id: String($id).replace(path.basename(schemaPath), name),
    $comment: `Made by .build/generate.ts from ${schemaPath}, for editors; do not edit.`,
    ...asSchema(rest),
  };
  return `${JSON.stringify(schema, undefined, 2)}\n`;
}

type Json = Readonly<Record<string, unknown>>;

function asSchema(schema: unknown): Json {
  if (!isObject(schema)) throw new Error('a schema is an object here');
  const out: Record<string, unknown> = {};
  for (const [keyword, value] of Object.entries(schema)) {
    if (notIn07.has(keyword)) throw new Error(`\`${keyword}\` has no match in draft-07`);
    if (own.has(keyword)) continue;
    if (keyword === '$defs') out['definitions'] = mapped(value);
    else if (keyword === 'properties') out[keyword] = mapped(value);
    else if (keyword === '$ref') out[keyword] = String(value).replace('#/$defs/', '#/definitions/');
    else if (['anyOf', 'oneOf', 'allOf'].includes(keyword) && Array.isArray(value))
      out[keyword] = value.map(asSchema);
    else if (['items', 'if', 'then', 'else', 'not', 'additionalProperties'].includes(keyword))
      out[keyword] = typeof value === 'boolean' ? value : asSchema(value);
    else out[keyword] = value;
  }
  const { $ref, ...beside } = out;
  if ($ref === undefined || Object.keys(beside).length === 0) return out;
  if ('allOf' in beside) throw new Error('`$ref` beside `allOf` is not turned over');
  return { ...beside, allOf: [{ $ref }] };
}

function mapped(value: unknown): Json {
  if (!isObject(value)) throw new Error('named schemas are an object');
  return Object.fromEntries(
    Object.entries(value).map(([name, one]) => [name, typeof one === 'boolean' ? one : asSchema(one)]),
  );
}

function isObject(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
