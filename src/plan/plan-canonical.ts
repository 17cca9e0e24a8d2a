import { createHash } from 'node:crypto';
import { canonicalJson } from './canonical-json.ts';
import type { LocatedNode } from './node.ts';

/**
 * The canonical form of a plan, what the digest of a signature is taken of: JSON in the form of RFC 8785 (keys in
 * order, no white space) and one line feed. It holds every key of the plan, known or not, with its value as read; only the
 * digest itself, `digests.plan` of `sign_off`, is left out. A number stands as the text that the plan writes, since revision
 * 1.10 is not revision 1.1. Comments, the order of keys and the form of the YAML do not count; the order of lists does.
 */
export function canonicalPlan(root: LocatedNode): string {
  return `${canonicalJson(without(written(root), ['sign_off', 'digests', 'plan']))}\n`;
}

/** `sha256:` and the SHA-256 (FIPS 180-4) of the canonical form in UTF-8, in lower-case hexadecimal. */
export function planDigest(root: LocatedNode): string {
  return `sha256:${createHash('sha256').update(canonicalPlan(root), 'utf8').digest('hex')}`;
}

function written(node: LocatedNode): unknown {
  switch (node.kind) {
    case 'scalar':
      return typeof node.value === 'number' ? node.source : node.value;
    case 'list':
      return node.items.map(written);
    case 'map':
      // In this way a key `__proto__` is a key like any other.
      return Object.fromEntries([...node.entries.values()].map(({ key, value }) => [key, written(value)]));
  }
}

function without(value: unknown, [key, ...rest]: readonly string[]): unknown {
  if (key === undefined || typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  const entries: readonly (readonly [string, unknown])[] = Object.entries(value);
  return Object.fromEntries(
    entries
      .filter(([name]) => rest.length > 0 || name !== key)
      .map(([name, one]) => [name, name === key ? without(one, rest) : one]),
  );
}
