import type { JsonSchema } from './json-schema.ts';

// Written here because the common converter gives an index signature for if/then/else, an empty list for prefixItems and
// one numbered copy of a type for each described $ref to it.

/** Keywords that narrow a value without changing its TypeScript type, and annotations. */
const withoutType = new Set([
  ...['$schema', '$id', '$comment', '$defs', 'title', 'description', 'examples', 'default', 'deprecated'],
  ...[
    'minLength',
    'maxLength',
    'pattern',
    'format',
    'minimum',
    'maximum',
    'exclusiveMinimum',
    'exclusiveMaximum',
  ],
  ...['multipleOf', 'minItems', 'maxItems', 'uniqueItems', 'minProperties', 'maxProperties', 'propertyNames'],
  ...['dimension', 'synonyms', 'unit', 'from', 'unknownWhen', 'standsOn', 'namesSomething'],
]);
const withType = new Set([
  ...[
    '$ref',
    'type',
    'const',
    'enum',
    'properties',
    'required',
    'additionalProperties',
    'items',
    'prefixItems',
  ],
  ...['if', 'then', 'else', 'anyOf', 'oneOf'],
]);

/**
 * TypeScript declarations for a JSON Schema: one exported type for the root, one for each `$defs` entry and one for each
 * object inside another (named after its owner and key). Everything is read-only. Throws on a keyword that it does not know.
 */
export function schemaTypes(schema: JsonSchema, rootName: string): string {
  const declarations: string[] = [];
  const names = new Map(
    Object.keys(schema.$defs ?? {}).map((key) => [`#/$defs/${key}`, typeName(key, rootName)]),
  );

  const declare = (name: string, part: JsonSchema): void => {
    // The place is taken first, so that an owner stands above what it owns.
    const place = declarations.push('') - 1;
    const text = isPlainObject(part)
      ? `export interface ${name} ${members(part, name)}`
      : `export type ${name} = ${typeOf(part, name)};`;
    declarations[place] = `${comment(part.description, '')}${text}\n`;
  };

  const typeOf = (part: JsonSchema, name: string): string => {
    refuseUnknown(part, name);
    if (part.$ref !== undefined) {
      const target = part.$ref === '#' ? rootName : names.get(part.$ref);
      if (target === undefined) throw new Error(`${name}: ${part.$ref} is not in the schema`);
      return target;
    }
    if (part.const !== undefined) return literal(part.const);
    if (part.enum !== undefined) return part.enum.map(literal).join(' | ');
    const choices = part.anyOf ?? part.oneOf ?? (part.if && [part.then ?? {}, part.else ?? {}]);
    if (choices !== undefined) return [...new Set(choices.map((choice) => typeOf(choice, name)))].join(' | ');
    if (part.type === undefined) return 'unknown';
    const types = typeof part.type === 'string' ? [part.type] : part.type;
    return [...new Set(types.map((type) => ofType(type, part, name)))].join(' | ');
  };

  const ofType = (type: string, part: JsonSchema, name: string): string => {
    switch (type) {
      case 'string':
      case 'boolean':
      case 'null':
        return type;
      case 'integer':
      case 'number':
        return 'number';
      case 'array':
        return listType(part, name);
      case 'object':
        return objectType(part, name);
      default:
        throw new Error(`${name}: type ${type} is not one of JSON Schema's`);
    }
  };

  const listType = (part: JsonSchema, name: string): string => {
    if (part.prefixItems !== undefined) {
      return `readonly [${part.prefixItems.map((item, index) => typeOf(item, `${name}${index + 1}`)).join(', ')}]`;
    }
    const item = typeof part.items === 'object' ? typeOf(part.items, `${name}Item`) : 'unknown';
    return `readonly ${item.includes(' ') ? `(${item})` : item}[]`;
  };

  const objectType = (part: JsonSchema, name: string): string => {
    if (isPlainObject(part)) {
      declare(name, part);
      return name;
    }
    const value =
      typeof part.additionalProperties === 'object'
        ? typeOf(part.additionalProperties, `${name}Value`)
        : 'unknown';
    return `Readonly<Record<string, ${value}>>`;
  };

  const members = (part: JsonSchema, name: string): string => {
    refuseUnknown(part, name);
    const required = new Set(part.required);
    const lines = Object.entries(part.properties ?? {}).map(([key, value]) => {
      const type = typeOf(value, `${name}${pascal(key)}`);
      return `${comment(value.description, '  ')}  readonly ${memberKey(key)}${required.has(key) ? '' : '?'}: ${type};\n`;
    });
    return `{\n${lines.join('')}}`;
  };

  declare(rootName, schema);
  for (const [key, part] of Object.entries(schema.$defs ?? {})) declare(typeName(key, rootName), part);
  refuseTwins(declarations);
  return declarations.join('\n');
}

function isPlainObject(part: JsonSchema): boolean {
  return part.type === 'object' && part.properties !== undefined;
}

function refuseUnknown(part: JsonSchema, name: string): void {
  for (const keyword of Object.keys(part)) {
    if (!withType.has(keyword) && !withoutType.has(keyword)) {
      throw new Error(`${name}: no TypeScript type is known for the keyword ${keyword}`);
    }
  }
  if (
    part.additionalProperties === true ||
    (part.properties !== undefined && typeof part.additionalProperties === 'object')
  ) {
    throw new Error(`${name}: keys beside the named ones have no TypeScript type here`);
  }
}

function refuseTwins(declarations: readonly string[]): void {
  const seen = new Set<string>();
  for (const declaration of declarations) {
    const name = /export (?:interface|type) (\w+)/.exec(declaration)?.[1] ?? '';
    if (seen.has(name)) throw new Error(`two types would be called ${name}`);
    seen.add(name);
  }
}

/** A definition's type is named after its key; where JavaScript has that name already (Date), the root's goes in front. */
function typeName(key: string, rootName: string): string {
  const name = pascal(key);
  return name in globalThis ? rootName + name : name;
}

function pascal(key: string): string {
  return key
    .split(/[^A-Za-z0-9]+/)
    .map((word) => word.charAt(0).toUpperCase() + word.slice(1))
    .join('');
}

function memberKey(key: string): string {
  return /^[A-Za-z_$][\w$]*$/.test(key) ? key : literal(key);
}

function literal(value: unknown): string {
  return typeof value === 'string' ? `'${value.replaceAll(/['\\]/g, '\\$&')}'` : JSON.stringify(value);
}

function comment(description: string | undefined, indent: string): string {
  return description === undefined ? '' : `${indent}/** ${description.replaceAll('*/', '* /')} */\n`;
}
