import { readFileSync, readdirSync } from 'node:fs';
import { Ajv } from 'ajv';
import type { ValidateFunction } from 'ajv';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { formats } from '../../src/plan/formats.ts';
import { anyPlan } from '../any-plan.ts';

// Editors of YAML read draft-07 (JSON Schema Validation: draft-handrews-json-schema-validation-01); ajv has both drafts.

const options = { allErrors: true, formats, strict: false };
const schemaOf = (file: string): Record<string, unknown> => {
  const schema: Record<string, unknown> = JSON.parse(readFileSync(file, 'utf8'));
  return schema;
};
const draft07 = schemaOf('schemas/plan.draft-07.schema.json');
const old = new Ajv(options);
const validateOld = old.compile(draft07);
const validateNew = new Ajv2020(options).compile(schemaOf('schemas/plan.schema.json'));

/** Where a value does not fit, without the way that the schema goes there. */
function misfits(validate: ValidateFunction, value: unknown): readonly string[] {
  validate(value);
  const found = (validate.errors ?? [])
    .filter(({ keyword }) => keyword !== 'if')
    .map(({ instancePath, keyword, params }) => `${instancePath} ${keyword} ${JSON.stringify(params)}`);
  return [...new Set(found)].sort();
}

const examples = ['examples/plans', 'examples/class/plans', 'examples/bench'].flatMap((folder) =>
  readdirSync(folder).map((name) => `${folder}/${name}`),
);

test('the copy is a valid schema of draft-07, and no keyword of 2020-12 is left in it', () => {
  expect(draft07['$schema']).toBe('http://json-schema.org/draft-07/schema#');
  expect(old.validateSchema(draft07)).toBe(true);
  expect(JSON.stringify(draft07)).not.toMatch(/\$defs|synonyms|prefixItems|unevaluated/u);
});

test('the copy says as much as the original to who reads it', () => {
  const count = (file: string): number => readFileSync(file, 'utf8').match(/"description":/gu)?.length ?? 0;
  expect(count('schemas/plan.draft-07.schema.json')).toBe(count('schemas/plan.schema.json'));
});

describe('both find the same in', () => {
  test.each(examples)('%s', (file) => {
    let plan: unknown;
    try {
      plan = parse(readFileSync(file, 'utf8'));
    } catch {
      // One plan of the class is no YAML; a schema has nothing to say of it.
      return;
    }
    expect(misfits(validateOld, plan)).toEqual(misfits(validateNew, plan));
  });

  test('a plan with a fault of every kind', () => {
    const plan = {
      format: 2,
      stage: 'soon',
      vehicle: { model_year: 1.5, drive: ['diesel'], earlier_repairs: [{ wen: 1 }], trim: 'x'.repeat(200) },
      references: [{ id: '', covers: { years: 'once' } }],
      parts: [
        {
          thickness: 1.4,
          colour: 'red',
          over: ['a', 1],
          operations: [{ cite: [{ at: 1 }], temperature: 'hot' }],
        },
        'a part',
      ],
      sign_off: { digests: { packs: [{ pack: 1 }] } },
    };
    const found = misfits(validateNew, plan);
    expect(found.length).toBeGreaterThanOrEqual(14);
    expect(misfits(validateOld, plan)).toEqual(found);
  });

  test('plans at random, and what becomes of them when values change places', () => {
    fc.assert(
      fc.property(anyPlan, fc.array(fc.tuple(fc.nat(), fc.nat()), { maxLength: 4 }), (text, swaps) => {
        const plan: unknown = parse(text);
        const places: { readonly holder: object; readonly key: string }[] = [];
        const visit = (value: unknown): void => {
          if (typeof value !== 'object' || value === null) return;
          for (const [key, one] of Object.entries(value)) {
            places.push({ holder: value, key });
            visit(one);
          }
        };
        visit(plan);
        for (const [one, other] of swaps) {
          const [a, b] = [places[one % places.length], places[other % places.length]];
          // One copy: two ways to one value could lead in a circle.
          if (a !== undefined && b !== undefined)
            Reflect.set(a.holder, a.key, structuredClone(Reflect.get(b.holder, b.key)));
        }
        expect(misfits(validateOld, plan)).toEqual(misfits(validateNew, plan));
      }),
      { numRuns: 150 },
    );
  });
});

describe('the copy of the schema of packs', () => {
  const copy = schemaOf('schemas/pack.draft-07.schema.json');
  const validateCopy = new Ajv(options).compile(copy);
  const validatePack = new Ajv2020(options).compile(schemaOf('schemas/pack.schema.json'));
  const files = ['rules/general', 'examples/rules/corvane-tarn', 'examples/rules/amsel-shop'].flatMap(
    (folder) => readdirSync(folder).map((name) => `${folder}/${name}`),
  );

  test('is a valid schema of draft-07, and says as much to who reads it', () => {
    expect(old.validateSchema(copy)).toBe(true);
    expect(JSON.stringify(copy)).not.toMatch(/\$defs|prefixItems|unevaluated/u);
    const count = (file: string): number => readFileSync(file, 'utf8').match(/"description":/gu)?.length ?? 0;
    expect(count('schemas/pack.draft-07.schema.json')).toBe(count('schemas/pack.schema.json'));
  });

  test.each(files)('%s fits both', (file) => {
    const value: unknown = parse(readFileSync(file, 'utf8'));
    expect(misfits(validatePack, value)).toEqual([]);
    expect(misfits(validateCopy, value)).toEqual([]);
  });

  test.each([
    'pack: a\nrules: [{ id: x, since: 1, severity: stopp, colour: red }]\n',
    'pack: a\nlimits: [{ victim: 1, stop_above: hot }]\nprovisions: [{ part: sill, says: perhaps }]\n',
    'pack: a\nformat: 2\nfacts: x\nversion: one\nlayer: top\n',
  ])('both find the same in %j', (text) => {
    const found = misfits(validatePack, parse(text));
    expect(found.length).toBeGreaterThan(0);
    expect(misfits(validateCopy, parse(text))).toEqual(found);
  });
});
