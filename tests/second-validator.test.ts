import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { globSync } from 'tinyglobby';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';

// The schemas are read by editors and by other people's tools: what ajv takes and refuses, a second validator of JSON Schema
// (python3-jsonschema, as Debian has it) must take and refuse as well. The words that each uses are its own.

const python = ['python3', '/usr/bin/python3'].find(
  (command) => spawnSync(command, ['-W', 'ignore', '-c', 'import jsonschema']).status === 0,
);

/** Which of the values fit the schema: a list of booleans. Formats are left out by both. */
const independent = `
import json, sys
from jsonschema import Draft202012Validator
asked = json.load(sys.stdin)
Draft202012Validator.check_schema(asked["schema"])
validator = Draft202012Validator(asked["schema"])
print(json.dumps([validator.is_valid(value) for value in asked["values"]]))
`;

const sets = [
  // One plan of the class is no YAML, on purpose.
  ['plan', ['examples/{plans,bench,class/plans}/*.yaml', '!examples/class/plans/larch.yaml']],
  ['pack', ['{rules/general,examples/rules/*}/**/*.yaml']],
  ['key', ['examples/class/key.yaml']],
] as const;

function readAny(file: string): unknown {
  const value: unknown = parse(readFileSync(file, 'utf8'));
  return value;
}

function isMap(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The value itself, and beside it each way of spoiling one place of it: a key too many, one too few, another type. */
function withSlips(value: unknown): readonly unknown[] {
  if (!isMap(value)) return [value];
  const keys = Object.keys(value);
  const changed = keys.flatMap((key): readonly unknown[] => {
    const within = value[key];
    const [first, ...others] = Array.isArray(within)
      ? withSlips(within[0]).slice(1)
      : withSlips(within).slice(1);
    const deeper = [first, ...others]
      .filter((one) => one !== undefined)
      .map((one) => ({ ...value, [key]: Array.isArray(within) ? [one, ...within.slice(1)] : one }));
    const without = Object.fromEntries(Object.entries(value).filter(([name]) => name !== key));
    return [without, { ...value, [key]: 17 }, { ...value, [key]: ['text', null] }, ...deeper];
  });
  return [value, { ...value, no_such_key: true }, ...changed];
}

describe.skipIf(python === undefined)('beside python3-jsonschema, where it is installed', () => {
  test.each(sets)(
    'the schema of a %s takes and refuses the same',
    (name, files) => {
      const schema: unknown = JSON.parse(readFileSync(`schemas/${name}.schema.json`, 'utf8'));
      if (!isMap(schema)) throw new Error(`${name} is no schema`);
      const values = globSync([...files]).flatMap((file) => withSlips(readAny(file)));
      const validate = new Ajv2020({ strict: false, validateFormats: false }).compile(schema);
      const ours = values.map((value) => validate(value));
      expect([ours.includes(true), ours.includes(false)]).toEqual([true, true]);
      const answer = spawnSync(python ?? '', ['-W', 'ignore', '-c', independent], {
        input: JSON.stringify({ schema, values }),
        encoding: 'utf8',
        maxBuffer: 64 * 1024 * 1024,
      });
      expect(answer.stderr).toBe('');
      const theirs: unknown = JSON.parse(answer.stdout);
      expect(theirs).toEqual(ours);
    },
    300_000,
  );
});
