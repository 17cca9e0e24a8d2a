import { Ajv2020 } from 'ajv/dist/2020.js';
import standaloneCode from 'ajv/dist/standalone/index.js';
import { _ } from 'ajv/dist/compile/codegen/index.js';
import { build } from 'esbuild';
import path from 'node:path';
import { formats } from '../src/plan/formats.ts';
import { header } from './generated-file.ts';
import { readSchema, root } from './json-schema.ts';

const annotations = ['unit', 'dimension', 'from', 'unknownWhen', 'standsOn', 'synonyms'];
const formatsModule = '../plan/formats.ts';

/**
 * A JSON Schema as one JavaScript function, so that no schema is compiled when planish starts. It stands alone: ajv's own
 * helpers are copied in, and only the named formats are imported. Throws on a format that src/plan/formats.ts lacks.
 */
export async function validatorCode(schemaPath: string, exportName: string): Promise<string> {
  const schema = readSchema(schemaPath);
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
