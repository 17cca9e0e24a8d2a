import { plainValue } from '../../plan/plain-value.ts';
import { readYaml } from '../../plan/read-yaml.ts';
import type { PackFile } from '../digest.ts';
import { yamlScalar } from './yaml-scalar.ts';

/** Vehicle of a plan, as far as a new pack needs it. */
export interface ScaffoldVehicle {
  readonly maker: string;
  readonly model: string;
  readonly modelYear: number;
}

/**
 * The files of a new pack of the shop: what it is, and one rule with its cases, to be changed. `schema` is where an editor finds the
 * schema of packs; without it no line for editors is written.
 */
export function shopScaffold(name: string, facts: number, schema?: string): readonly PackFile[] {
  const house = `${forEditors(schema)}# The rules of the house, one file a topic. This one is an example: change it.
# What each key means, and every fact that a rule can ask about: rules/README.md of planish.
pack: ${name}
rules:
  - id: ${name}-no-torch-on-structure
    topic: heat
    since: 1.0.0
    judges: operation
    severity: hold
    from: draft
    when: { part.structural: true, operation.source: torch }
    message: '{part.name} is structure and is heated with a torch.'
    instead: Use induction, and read the temperature at the part.
    why: A flame is held to no temperature; the house wants it read and written down.
    source: { document: House rules, page: p. 1 }
    cases:
      finds: [{ part.structural: true, operation.source: torch }]
      passes:
        - { part.structural: false, operation.source: torch }
        - { part.structural: true, operation.source: induction }
      asks: [{ operation.source: torch }]
`;
  return [
    { name: 'pack.yaml', text: manifest(name, facts, 'Rules of the house', 'layer: shop\n', schema) },
    { name: 'house.yaml', text: house },
  ];
}

/**
 * The files of a new vehicle pack with the statements that a plan would need, each with `says: ?`. `statements` are flow mappings as
 * the fact provision.to_type_in writes them; one that names no kind of part or no year comes back in `left`.
 */
export function vehicleScaffold(
  name: string,
  facts: number,
  vehicle: ScaffoldVehicle,
  statements: readonly { readonly text: string; readonly rules: readonly string[] }[],
  schema?: string,
): { readonly files: readonly PackFile[]; readonly written: number; readonly left: readonly string[] } {
  const { maker, model, modelYear } = vehicle;
  const more = `vehicle: { maker: ${yamlScalar(maker)}, models: [${yamlScalar(model)}], years: ${String(modelYear)} }\n`;
  const title = `${maker} ${model}, model year ${String(modelYear)}`;
  const entries: string[] = [];
  const left: string[] = [];
  for (const { text, rules } of statements) {
    const entry = openEntry(text, rules);
    if (entry === undefined) left.push(text);
    else entries.push(entry);
  }
  const provisions = `${forEditors(schema)}# What the maker's documents would have to say for the plan to be let through. Read each document for this very year,
# then write may, shall or shall not instead of ?, and your name. Until then nothing here permits anything.
pack: ${name}
provisions:
${entries.join('')}`;
  const files = [{ name: 'pack.yaml', text: manifest(name, facts, title, more, schema) }];
  if (entries.length > 0) files.push({ name: 'provisions.yaml', text: provisions });
  return { files, written: entries.length, left };
}

/** With it, an editor with a YAML language server completes and explains keys and names of facts. */
function forEditors(schema: string | undefined): string {
  return schema === undefined ? '' : `# yaml-language-server: $schema=${schema}\n`;
}

function manifest(name: string, facts: number, title: string, more: string, schema?: string): string {
  return `${forEditors(schema)}pack: ${name}
format: 1
facts: ${String(facts)}
version: 1.0.0
title: ${yamlScalar(title)}
${more}`;
}

/** The fact writes what it does not know as an ellipsis. */
const notStated = '…';

function openEntry(text: string, rules: readonly string[]): string | undefined {
  const yaml = readYaml(text);
  if (!yaml.ok) return undefined;
  const value: unknown = plainValue(yaml.root);
  const entry = new Map(typeof value === 'object' && value !== null ? Object.entries(value) : []);
  const word = (key: string): string => {
    const said: unknown = entry.get(key);
    const one: unknown = Array.isArray(said) ? said[0] : said;
    return typeof one === 'string' && one !== notStated ? one : '?';
  };
  const [part, years, operation] = [word('part'), word('years'), word('may')];
  if ([part, years, operation].some((one) => one === '?' || one.includes(notStated))) return undefined;
  const stated = (['document', 'revision', 'page'] as const)
    .map((key) => `    ${key}: ${yamlScalar(word(key))}\n`)
    .join('');
  return `  # Without it: ${rules.join(', ')}
  - part: ${yamlScalar(part)}
    years: ${yamlScalar(years)}
${stated}    operation: ${yamlScalar(operation)}
    says: '?'
    filled_by: '?'
`;
}
