import { planSchema as makePlanSchema } from '../generated/plan-schema.ts';
import type { SchemaPart } from './schema-keywords.ts';

let made: SchemaPart | undefined;

function planSchema(): SchemaPart {
  made ??= makePlanSchema();
  return made;
}

/**
 * The part of the plan's schema that the value at a JSON pointer is held against. Where the schema chooses by the kind of the
 * value (one citation or several), the choice follows `root`, the plan as plain objects. Undefined off the schema's paths.
 */
export function schemaPartAt(root: unknown, steps: readonly string[]): SchemaPart | undefined {
  let value = root;
  let part = settle(planSchema(), value);
  for (const step of steps) {
    const next = Array.isArray(value) ? part.items : propertyOf(part, step);
    value = childOf(value, step);
    if (next === undefined) return undefined;
    part = settle(next, value);
  }
  return part;
}

function propertyOf({ properties }: SchemaPart, key: string): SchemaPart | undefined {
  return properties !== undefined && Object.hasOwn(properties, key) ? properties[key] : undefined;
}

/** Follows `$ref` and the choice of `if`, keeping a description that stands beside the reference. */
function settle(part: SchemaPart, value: unknown): SchemaPart {
  let settled = part;
  for (;;) {
    if (settled.$ref !== undefined) {
      const target = planSchema().$defs?.[settled.$ref.replace('#/$defs/', '')];
      if (target === undefined) return settled;
      settled = settled.description === undefined ? target : { ...target, description: settled.description };
    } else if (settled.if !== undefined) {
      const chosen = isOfType(value, settled.if.type) ? settled.then : settled.else;
      if (chosen === undefined) return settled;
      settled = chosen;
    } else {
      return settled;
    }
  }
}

function isOfType(value: unknown, type: SchemaPart['type']): boolean {
  return type === 'array' ? Array.isArray(value) : typeof value === type;
}

function childOf(value: unknown, step: string): unknown {
  if (Array.isArray(value)) return value[Number(step)];
  return isRecord(value) && Object.hasOwn(value, step) ? value[step] : undefined;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

let keys: ReadonlySet<string> | undefined;

/** Every key that a plan takes at any place. */
export function allPlanKeys(): ReadonlySet<string> {
  if (keys !== undefined) return keys;
  const found = new Set<string>();
  const visit = (value: unknown): void => {
    if (!isRecord(value)) return;
    const { properties } = value;
    if (isRecord(properties)) for (const key of Object.keys(properties)) found.add(key);
    for (const one of Object.values(value)) visit(one);
  };
  visit(planSchema());
  keys = found;
  return found;
}
