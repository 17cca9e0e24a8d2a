import { formatFaults } from './formats.ts';
import { schemaPartAt } from './schema-part.ts';
import type { SchemaPart } from './schema-keywords.ts';

/**
 * Whether a value is something that a key takes, as far as the value itself goes: a block where a block belongs, a word that is
 * known there, a quantity with its unit. What stands inside of blocks and lists is not looked at. A key with nothing behind it
 * fits everywhere. `root` is the plan as plain objects, `steps` lead to the block.
 */
export function fitsKey(value: unknown, root: unknown, steps: readonly string[], key: string): boolean {
  if (value === null) return true;
  const part = schemaPartAt(withValue(root, steps, key, value), [...steps, key]);
  if (part === undefined) return false;
  const types = [part.type ?? []].flat();
  if (part.enum !== undefined) return typeof value === 'string' && part.enum.includes(value);
  if (Array.isArray(value)) return types.includes('array');
  switch (typeof value) {
    case 'object':
      return types.includes('object');
    case 'boolean':
      return types.includes('boolean');
    case 'number':
      return fitsNumber(value, part, types);
    case 'string':
      return types.includes('string') && fitsFormat(value, part);
    default:
      return false;
  }
}

function fitsNumber(
  value: number,
  { minimum, maximum, format }: SchemaPart,
  types: readonly string[],
): boolean {
  if (types.includes('integer') || types.includes('number'))
    return (
      (Number.isInteger(value) || types.includes('number')) &&
      value >= (minimum ?? -Infinity) &&
      value <= (maximum ?? Infinity)
    );
  // `revision: 4` is text to its author; a bare number is no quantity.
  return types.includes('string') && format === undefined;
}

function fitsFormat(value: string, { format }: SchemaPart): boolean {
  return format === undefined || formatFaults[format]?.(value) === undefined;
}

/** The choice that the schema makes by the kind of a value follows the value at its new place. */
function withValue(root: unknown, [step, ...rest]: readonly string[], key: string, value: unknown): unknown {
  if (step === undefined) return { ...entriesOf(root), [key]: value };
  if (Array.isArray(root)) {
    const list: readonly unknown[] = root;
    return list.map((one, index) => (index === Number(step) ? withValue(one, rest, key, value) : one));
  }
  const entries = entriesOf(root);
  return { ...entries, [step]: withValue(entries[step], rest, key, value) };
}

function entriesOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? Object.fromEntries(Object.entries(value)) : {};
}
