import { dimensions } from '../src/quantity/dimension.ts';
import { header } from './generated-file.ts';
import { readSchema } from './json-schema.ts';
import type { JsonSchema } from './json-schema.ts';

/** Names, kinds and words of all facts as TypeScript, from the schema of the fact sheets; synonyms of the words from that of the plan. */
export function factNames(schemaPath: string, planSchemaPath: string): string {
  const schema = readSchema(schemaPath);
  const plan = readSchema(planSchemaPath);
  const kinds = Object.entries(schema.$defs ?? {});
  refuseTwins(kinds);
  const known = new Set(kinds.map(([kind]) => kind));
  const lines = (make: (kind: string, sheet: JsonSchema) => string): string =>
    kinds.map(([kind, sheet]) => make(kind, sheet)).join('\n');

  return `${header([schemaPath, planSchemaPath])}import type { Dimension } from '../quantity/dimension.ts';

export type SheetKind =
${lines((kind) => `  | ${quote(kind)}`)};

/** The facts that each kind of sheet holds itself. */
export interface FactNames {
${lines((kind, sheet) => `  readonly ${quote(kind)}:\n${names(sheet).join('\n')};`)}
}

export interface FactEntry {
  readonly kind: SheetKind;
  readonly type: 'word' | 'words' | 'text' | 'yes-no' | 'count' | 'number';
  /** All words that the fact may have; absent when the list is open. */
  readonly words?: readonly string[];
  /** What the trade writes for some of the words, as in a plan. */
  readonly synonyms?: Readonly<Record<string, string>>;
  /** Unit in which a number is held. */
  readonly unit?: string;
  readonly dimension?: Dimension;
  /** What a report calls the fact. */
  readonly title?: string;
  /** The keys of a plan that state it, where they are few. */
  readonly keys?: readonly string[];
  /** Known on every sheet; the schema gives nothing that would make it unknown. */
  readonly alwaysKnown?: boolean;
  readonly description: string;
}

export const factSchemaVersion = ${JSON.stringify(schema['version'])};

export const sheetKinds: Readonly<Record<SheetKind, { readonly standsOn: readonly SheetKind[] }>> = {
${lines((kind, sheet) => `  ${quote(kind)}: { standsOn: ${list(standsOn(kind, sheet, known))} },`)}
};

export const factDictionary: Readonly<Record<string, FactEntry>> = {
${lines((kind, sheet) => entries(kind, sheet, plan).join('\n'))}
};
`;
}

function names(sheet: JsonSchema): readonly string[] {
  return Object.keys(sheet.properties ?? {}).map((name) => `    | ${quote(name)}`);
}

function entries(kind: string, sheet: JsonSchema, plan: JsonSchema): readonly string[] {
  return Object.entries(sheet.properties ?? {}).map(([name, fact]) => {
    const words = fact.enum ?? (typeof fact.items === 'object' ? fact.items.enum : undefined);
    const entry: Record<string, unknown> = {
      kind,
      type: factType(name, fact),
      words,
      synonyms: words === undefined ? undefined : synonymsOf(fact, words, plan),
      unit: fact['unit'],
      dimension: dimensionOf(name, fact),
      title: fact.title,
      keys: keysOf(fact, plan),
      alwaysKnown: fact['unknownWhen'] === undefined ? true : undefined,
      description: fact.description,
    };
    const fields = Object.entries(entry).filter(([, value]) => value !== undefined);
    return `  ${quote(name)}: { ${fields.map(([key, value]) => `${key}: ${literal(value)}`).join(', ')} },`;
  });
}

function factType(name: string, fact: JsonSchema): string {
  if (fact.enum !== undefined) return 'word';
  switch (fact.type) {
    case 'array':
      return 'words';
    case 'string':
      return 'text';
    case 'boolean':
      return 'yes-no';
    case 'integer':
      return 'count';
    case 'number':
      return 'number';
    default:
      throw new Error(`${name}: a fact is an enum, an array, a string, a boolean, an integer or a number`);
  }
}

function dimensionOf(name: string, fact: JsonSchema): string | undefined {
  const dimension = dimensions.find((known) => known === fact['dimension']);
  if (fact['dimension'] !== undefined && dimension === undefined) {
    throw new Error(`${name}: quantity/dimension.ts has no dimension ${JSON.stringify(fact['dimension'])}`);
  }
  return dimension;
}

function standsOn(kind: string, sheet: JsonSchema, known: ReadonlySet<string>): readonly unknown[] {
  const bases = sheet['standsOn'];
  if (!Array.isArray(bases)) throw new Error(`${kind}: standsOn is not a list`);
  for (const base of bases)
    if (!known.has(String(base))) throw new Error(`${kind} stands on ${String(base)}, which is no sheet`);
  return bases;
}

/** A rule names a fact without its sheet, so one name on two kinds would be two things. */
function refuseTwins(kinds: readonly (readonly [string, JsonSchema])[]): void {
  const owner = new Map<string, string>();
  for (const [kind, sheet] of kinds) {
    for (const name of Object.keys(sheet.properties ?? {})) {
      const other = owner.get(name);
      if (other !== undefined) throw new Error(`${name} is a fact of ${other} and of ${kind}`);
      owner.set(name, kind);
    }
  }
}

/** More keys than these say no more than that something is missing. */
const mostKeys = 3;

/** The keys that hold a value and no further keys, of a fact that can be unknown. */
function keysOf(fact: JsonSchema, plan: JsonSchema): readonly string[] | undefined {
  const from = fact['from'];
  if (fact['unknownWhen'] === undefined || !Array.isArray(from)) return undefined;
  const keys = from
    .map((path) => String(path).split('.'))
    .filter((path) => path.length > 1 && isValue(planPart(plan, path)))
    .map((path) => path.at(-1) ?? '');
  const known = [...new Set(keys)];
  return known.length === from.length && known.length <= mostKeys ? known : undefined;
}

function isValue(part: JsonSchema | undefined): boolean {
  if (part === undefined || part.properties !== undefined) return false;
  return typeof part.items !== 'object' || part.items.properties === undefined;
}

/** The synonyms that the plan's schema gives for words of the keys that a fact comes from. */
function synonymsOf(
  fact: JsonSchema,
  words: readonly unknown[],
  plan: JsonSchema,
): Readonly<Record<string, string>> | undefined {
  const from = fact['from'];
  const found = new Map<string, string>();
  for (const key of Array.isArray(from) ? from : []) {
    const synonyms = planPart(plan, String(key).split('.'))?.['synonyms'];
    if (typeof synonyms !== 'object' || synonyms === null) continue;
    for (const [synonym, word] of Object.entries(synonyms)) {
      if (words.includes(word) && !words.includes(synonym)) found.set(synonym, String(word));
    }
  }
  return found.size === 0 ? undefined : Object.fromEntries(found);
}

function planPart(plan: JsonSchema, keys: readonly string[]): JsonSchema | undefined {
  let part: JsonSchema | undefined = plan;
  for (const key of [...keys, undefined]) {
    for (let next: JsonSchema | undefined = part; next !== undefined;) {
      part = next;
      next =
        part.$ref === undefined
          ? typeof part.items === 'object'
            ? part.items
            : undefined
          : plan.$defs?.[part.$ref.replace('#/$defs/', '')];
    }
    if (key === undefined) break;
    part = part?.properties?.[key];
  }
  return part;
}

function literal(value: unknown): string {
  if (typeof value === 'boolean') return String(value);
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
    const pairs = Object.entries(value).map(([key, one]) => `${quote(key)}: ${quote(String(one))}`);
    return `{ ${pairs.join(', ')} }`;
  }
  return Array.isArray(value) ? list(value) : quote(String(value));
}

function list(values: readonly unknown[]): string {
  return `[${values.map((value) => quote(String(value))).join(', ')}]`;
}

function quote(text: string): string {
  return `'${text.replaceAll(/['\\]/g, '\\$&')}'`;
}
