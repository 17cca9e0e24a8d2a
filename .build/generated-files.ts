import { readFileSync } from 'node:fs';
import path from 'node:path';
import { builtInCasesJson, builtInPacksJson, builtInPacksSource } from './built-in-packs.ts';
import { draft07Source } from './draft-07.ts';
import { factReference } from './fact-reference.ts';
import { factNames } from './fact-names.ts';
import type { GeneratedFile } from './generated-file.ts';
import { root } from './json-schema.ts';
import { planSchemaSource } from './plan-schema.ts';
import { steelTableSource } from './steel-table.ts';
import { typesModule } from './types-module.ts';
import { validatorCode, validatorTypes } from './validators.ts';

const planSchema = 'schemas/plan.schema.json';
const packSchema = 'schemas/pack.schema.json';
const keySchema = 'schemas/key.schema.json';
const factsSchema = 'schemas/facts.schema.json';
const reportSchema = 'schemas/report.schema.json';
const grades = 'src/steel/data/grades.csv';
const steelNumbers = 'src/steel/data/steel-numbers.csv';

/** Every file of the checkout that is made from others, in the order in which they are made. */
export const generatedFiles: readonly GeneratedFile[] = [
  {
    path: 'src/generated/plan-types.ts',
    madeFrom: [planSchema],
    make: () => typesModule(planSchema, 'Plan'),
  },
  { path: 'src/generated/plan-schema.ts', madeFrom: [planSchema], make: () => planSchemaSource(planSchema) },
  {
    path: 'src/generated/validate-plan.js',
    madeFrom: [planSchema],
    make: () => validatorCode(planSchema, 'validatePlan'),
  },
  {
    path: 'src/generated/validate-plan.d.ts',
    madeFrom: [planSchema],
    make: () => validatorTypes(planSchema, 'validatePlan', 'Plan', './plan-types.ts'),
  },
  {
    path: 'src/generated/pack-types.ts',
    madeFrom: [packSchema],
    make: () => typesModule(packSchema, 'PackFile'),
  },
  {
    path: 'src/generated/validate-pack.js',
    madeFrom: [packSchema],
    make: () => validatorCode(packSchema, 'validatePack'),
  },
  {
    path: 'src/generated/validate-pack.d.ts',
    madeFrom: [packSchema],
    make: () => validatorTypes(packSchema, 'validatePack', 'PackFile', './pack-types.ts'),
  },
  {
    path: 'src/generated/key-types.ts',
    madeFrom: [keySchema],
    make: () => typesModule(keySchema, 'KeyFile'),
  },
  {
    path: 'src/generated/validate-key.js',
    madeFrom: [keySchema],
    make: () => validatorCode(keySchema, 'validateKey'),
  },
  {
    path: 'src/generated/validate-key.d.ts',
    madeFrom: [keySchema],
    make: () => validatorTypes(keySchema, 'validateKey', 'KeyFile', './key-types.ts'),
  },
  {
    path: 'src/generated/fact-names.ts',
    madeFrom: [factsSchema, planSchema],
    make: () => factNames(factsSchema, planSchema),
  },
  { path: 'rules/FACTS.md', madeFrom: [factsSchema, planSchema], make: () => factReference(factsSchema) },
  {
    path: 'src/generated/steel-table.ts',
    madeFrom: [grades, steelNumbers],
    make: () => steelTableSource(readText(grades), readText(steelNumbers)),
  },
  { path: 'src/generated/built-in-packs.json', madeFrom: ['rules'], make: () => builtInPacksJson() },
  { path: 'src/generated/built-in-cases.json', madeFrom: ['rules'], make: () => builtInCasesJson() },
  { path: 'src/generated/built-in-packs.ts', madeFrom: ['rules'], make: () => builtInPacksSource() },
  {
    path: 'src/generated/validate-report.js',
    madeFrom: [reportSchema],
    make: () => validatorCode(reportSchema, 'validateReport'),
  },
  {
    path: 'src/generated/validate-report.d.ts',
    madeFrom: [reportSchema],
    make: () => validatorTypes(reportSchema, 'validateReport', 'Report', '../../schemas/report.d.ts'),
  },
  {
    path: 'schemas/plan.draft-07.schema.json',
    madeFrom: [planSchema],
    make: () => draft07Source(planSchema),
  },
  {
    path: 'schemas/pack.draft-07.schema.json',
    madeFrom: [packSchema],
    make: () => draft07Source(packSchema),
  },
  { path: 'schemas/report.d.ts', madeFrom: [reportSchema], make: () => typesModule(reportSchema, 'Report') },
];

function readText(file: string): string {
  return readFileSync(path.join(root, file), 'utf8');
}
