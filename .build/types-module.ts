import { header } from './generated-file.ts';
import { readSchema } from './json-schema.ts';
import { schemaTypes } from './schema-types.ts';

/** The types of a schema as a module of their own. */
export function typesModule(schemaPath: string, rootName: string): string {
  return `${header([schemaPath])}${schemaTypes(readSchema(schemaPath), rootName)}`;
}
