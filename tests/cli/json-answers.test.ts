import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import type { ValidateFunction } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { runPlanish } from './run-planish.ts';

// Programs read these answers, so each has a schema. `check`, `heat` and `recheck` are held against theirs in their own tests.

function validator(name: string): ValidateFunction {
  const schema: object = JSON.parse(readFileSync(`schemas/${name}.schema.json`, 'utf8'));
  return new Ajv2020({ strict: true, strictRequired: false, allErrors: true, allowUnionTypes: true }).compile(
    schema,
  );
}

function answered(args: readonly string[]): object {
  const { stdout, stderr } = runPlanish(args);
  expect(stderr).toBe('');
  const answer: object = JSON.parse(stdout);
  return answer;
}

const old = 'examples/plans/ring-sectioned-by-old-document.yaml';
const explained = ['check', '--as-of', '2026-10-21', '--format', 'json', '--explain'];

const designations = [
  ...[
    '22MnB5+AS150',
    'DP 980',
    '600',
    'boron',
    'EN AW-6082-T6',
    '470 HV',
    'XQ-17',
    '1.4301',
    'DC04+ZE50/50',
    '590 MPa',
  ],
  ...['SPFC980Y 1.6T + SPFC590Y 1.4T', 'AZ31', 'HC340LA', 'high tensile', 'DC04 or 22MnB5', 'CR4', ''],
];

const answers: readonly (readonly [schema: string, args: readonly string[]])[] = [
  ['rules', ['rules', '--format', 'json', '--rules', 'examples/rules']],
  ['rules', ['rules', '--format', 'json', 'section']],
  ['rules', ['rules', '--format', 'json', 'section-ultra-high-strength-held']],
  ['packs', ['packs', '--format', 'json', '--rules', 'examples/rules']],
  ['packs-diff', ['packs', 'diff', '--format', 'json', 'general@1', 'general@2']],
  ['packs-diff', ['packs', 'diff', '--format', 'json', 'general@2', 'general@3']],
  ['packs-diff', ['packs', 'diff', '--format', 'json', 'general@1', 'general@1']],
  ['packs-diff', ['packs', 'diff', '--format', 'json', 'general', 'examples/rules/corvane-tarn']],
  ['steel', ['steel', '--format', 'json', '--find', ...designations]],
  ['marks', ['mark', '--key', 'examples/class/key.yaml', '--format', 'json', 'examples/class/plans']],
  [
    'marks',
    ['mark', '--key', 'examples/class/key.yaml', '--format', 'json', 'examples/class/plans/ash.yaml'],
  ],
  ['explanation', [...explained, 'ring-l/section', old]],
  ['explanation', [...explained, 'ring-l', old]],
  ['explanation', [...explained, 'sill-l', 'examples/plans/electric-sill.yaml']],
];

describe('the answers as JSON keep to their schemas', () => {
  test.each(answers)('%s: planish %j', (name, args) => {
    const validate = validator(name);
    const answer = answered(args);
    expect(validate(answer), JSON.stringify(validate.errors)).toBe(true);
  });

  test.each(answers)('%s: what no schema knows is refused, at any depth: %j', (name, args) => {
    const validate = validator(name);
    for (const spoilt of withOneKeyMore(answered(args))) expect(validate(spoilt)).toBe(false);
  });
});

/** The answer with a key too many, once at its top and once in the first object of each list on the way down. */
function withOneKeyMore(value: object): readonly object[] {
  if (Array.isArray(value)) return deeper(value).filter((one) => one instanceof Object);
  const spoilt = Object.entries(value).flatMap(([key, within]: [string, unknown]) =>
    // A made-up sheet of a case holds facts by their names, and may hold any.
    key === 'cases' ? [] : deeper(within).map((one) => ({ ...value, [key]: one })),
  );
  return [{ ...value, nobody_knows: 1 }, ...spoilt];
}

function deeper(value: unknown): readonly unknown[] {
  if (Array.isArray(value)) {
    const [first, ...rest]: readonly unknown[] = value;
    return deeper(first).map((one) => [one, ...rest]);
  }
  return typeof value === 'object' && value !== null ? withOneKeyMore(value) : [];
}
