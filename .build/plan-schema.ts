import { header } from './generated-file.ts';
import { readSchema } from './json-schema.ts';

/** The plan's schema as text: parsed only when a plan has a fault that must be explained. */
export function planSchemaText(schemaPath: string): string {
  const text = JSON.stringify(JSON.stringify(readSchema(schemaPath)));
  return `${header([schemaPath])}export const planSchemaText =\n  ${text};\n`;
}
