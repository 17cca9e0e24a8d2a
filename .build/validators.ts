import { Ajv2020 } from 'ajv/dist/2020.js';
import standaloneCode from 'ajv/dist/standalone/index.js';
import { _ } from 'ajv/dist/compile/codegen/index.js';
import { build } from 'esbuild';
import path from 'node:path';
import { formats } from '../src/plan/formats.ts';
import { header } from './generated-file.ts';
import { readSchema, root } from './json-schema.ts';
import type { JsonSchema } from './json-schema.ts';

const annotations = ['unit', 'dimension', 'from', 'unknownWhen', 'standsOn', 'synonyms', 'namesSomething'];
const annotation = new Set([...annotations, 'description', 'title', 'examples']);
const formatsModule = '../plan/formats.ts';

/**
 * A JSON Schema as one JavaScript function, so that no schema is compiled when planish starts. It stands alone: ajv's own
 * helpers are copied in, and only the named formats are imported. Throws on a format that src/plan/formats.ts lacks.
 */
export async function validatorCode(schemaPath: string, exportName: string): Promise<string> {
  const schema = withoutAnnotations(readSchema(schemaPath));
  const ajv = new Ajv2020({
    strict: true,
    allowUnionTypes: true,
    allErrors: true,
    // One function a definition: inlined, the plan validator is six times the size and slower to load.
    inlineRefs: false,
    messages: false,
    formats,
    code: { source: true, esm: true, lines: true, formats: _`formats` },
  });
  ajv.addVocabulary(annotations);
  const code = standaloneCode
    .default(ajv, ajv.compile(schema))
    .replace(
      /export const validate = (\w+);\s*export default \w+;/,
      (_whole, name: string) => `export { ${name} as ${exportName} };`,
    );
  return header([schemaPath]) + (await selfContained(code, exportName));
}

/** The validator keeps the schemas that it looks keys up in, and each start would make all their prose. */
function withoutAnnotations(schema: JsonSchema): JsonSchema {
  return Object.fromEntries(
    Object.entries(schema)
      .filter(([keyword]) => !annotation.has(keyword))
      .map(([keyword, value]) => [keyword, valueWithoutAnnotations(keyword, value)]),
  );
}

function valueWithoutAnnotations(keyword: string, value: unknown): unknown {
  // Below these stand names that a plan may give a value to, one of which may be spelled as a keyword; then their schemas.
  if (['properties', 'patternProperties', '$defs'].includes(keyword) && isObject(value))
    return Object.fromEntries(
      Object.entries(value).map(([name, one]) => [name, isObject(one) ? withoutAnnotations(one) : one]),
    );
  if (Array.isArray(value))
    return value.map((one: unknown) => (isObject(one) ? withoutAnnotations(one) : one));
  return isObject(value) && keyword !== 'const' ? withoutAnnotations(value) : value;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

async function selfContained(code: string, exportName: string): Promise<string> {
  const result = await build({
    stdin: {
      contents: code.includes('formats') ? `import { formats } from '${formatsModule}';\n${code}` : code,
      resolveDir: path.join(root, 'src/generated'),
      sourcefile: `${exportName}.js`,
    },
    bundle: true,
    external: [formatsModule],
    format: 'esm',
    platform: 'neutral',
    target: 'node20.19',
    minifySyntax: true,
    write: false,
  });
  const [output] = result.outputFiles;
  if (output === undefined) throw new Error(`esbuild gave no output for ${exportName}`);
  return output.text;
}

/** The type that goes with it, so that TypeScript takes a validated value without a cast. */
export function validatorTypes(
  schemaPath: string,
  exportName: string,
  typeName: string,
  typeModule: string,
): string {
  return `${header([schemaPath])}import type { SchemaError } from '../plan/schema-error.ts';
import type { ${typeName} } from '${typeModule}';

/** True when the value has the form of ${schemaPath}; what is wrong with it is in \`errors\` until the next call. */
export declare const ${exportName}: {
  (value: unknown): value is ${typeName};
  readonly errors?: readonly SchemaError[] | null;
};
`;
}
