import type { LocatedNode, Range } from './node.ts';

export interface Located {
  /** False when the pointer leads further than the plan does; the ranges are then those of the last step that exists. */
  readonly exists: boolean;
  /** Range of the key under which the value stands; none for the whole plan and for entries of a list. */
  readonly key?: Range;
  readonly value: Range;
}

/**
 * Where a JSON pointer (RFC 6901) leads. For what is missing it gives the deepest entry that is there, so that a finding
 * can point at the key from which something is absent. Undefined only for text that is no pointer.
 */
export function locate(root: LocatedNode, pointer: string): Located | undefined {
  if (pointer === '') return { exists: true, value: root.range };
  if (!pointer.startsWith('/')) return undefined;
  let node = root;
  let key: Range | undefined;
  let exists = true;
  for (const step of pointer.slice(1).split('/')) {
    const next = stepInto(node, unescape(step));
    if (next === undefined) {
      exists = false;
      break;
    }
    node = next.node;
    key = next.key;
  }
  return key === undefined ? { exists, value: node.range } : { exists, key, value: node.range };
}

function stepInto(
  node: LocatedNode,
  step: string,
): { readonly node: LocatedNode; readonly key?: Range } | undefined {
  switch (node.kind) {
    case 'scalar':
      return undefined;
    case 'list': {
      const item = /^(0|[1-9][0-9]{0,8})$/.test(step) ? node.items[Number(step)] : undefined;
      return item === undefined ? undefined : { node: item };
    }
    case 'map': {
      const entry = node.entries.get(step);
      return entry === undefined ? undefined : { node: entry.value, key: entry.keyRange };
    }
  }
}

/** `~1` first: `~01` spells `~1`, not `/`. */
function unescape(step: string): string {
  return step.includes('~') ? step.replaceAll('~1', '/').replaceAll('~0', '~') : step;
}
