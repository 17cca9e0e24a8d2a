import { header } from './generated-file.ts';
import { readSchema } from './json-schema.ts';

/** The plan's schema in a function: nothing of it is made until a plan has a fault that must be explained. */
export function planSchemaSource(schemaPath: string): string {
  return `${header([schemaPath])}import type { SchemaPart } from '../plan/schema-keywords.ts';

export function planSchema(): SchemaPart {
  return ${JSON.stringify(readSchema(schemaPath))};
}
`;
}
