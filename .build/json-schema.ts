import { readFileSync } from 'node:fs';
import path from 'node:path';

/** The keywords of JSON Schema 2020-12 that shape a type; the rest is kept as it stands. */
export interface JsonSchema {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, JsonSchema>>;
  readonly title?: string;
  readonly description?: string;
  readonly type?: string | readonly string[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean | JsonSchema;
  readonly items?: boolean | JsonSchema;
  readonly prefixItems?: readonly JsonSchema[];
  readonly if?: JsonSchema;
  readonly then?: JsonSchema;
  readonly else?: JsonSchema;
  readonly anyOf?: readonly JsonSchema[];
  readonly oneOf?: readonly JsonSchema[];
  readonly format?: string;
  readonly [keyword: string]: unknown;
}

export const root = path.dirname(import.meta.dirname);

/** Reads a schema by its path from the top of the checkout. */
export function readSchema(file: string): JsonSchema {
  const schema: unknown = JSON.parse(readFileSync(path.join(root, file), 'utf8'));
  if (!isSchema(schema)) throw new Error(`${file} is not a JSON Schema`);
  return schema;
}

/** Only the outermost form: ajv holds each schema against the metaschema when it compiles it. */
function isSchema(value: unknown): value is JsonSchema {
  return typeof value === 'object' && value !== null && '$schema' in value;
}
