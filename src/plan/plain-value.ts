import type { LocatedNode } from './node.ts';

type PlainObject = Record<string, unknown>;

/**
 * The nodes as plain objects and arrays, for schema validation. A key `__proto__` becomes an ordinary own property, so that
 * the schema sees and refuses it like any other unknown key.
 */
export function plainValue(node: LocatedNode): unknown {
  switch (node.kind) {
    case 'scalar':
      return node.value;
    case 'list': {
      const list: unknown[] = [];
      for (const item of node.items) list.push(plainValue(item));
      return list;
    }
    case 'map': {
      const object: PlainObject = {};
      for (const entry of node.entries.values()) {
        const value = plainValue(entry.value);
        if (entry.key === '__proto__') defineOwn(object, entry.key, value);
        else object[entry.key] = value;
      }
      return object;
    }
  }
}

function defineOwn(object: PlainObject, key: string, value: unknown): void {
  Object.defineProperty(object, key, { value, writable: true, enumerable: true, configurable: true });
}
