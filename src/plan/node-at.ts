import type { LocatedNode } from './node.ts';

/** The node at the end of the steps; undefined when the plan does not go so far. */
export function nodeAt(root: LocatedNode, steps: readonly string[]): LocatedNode | undefined {
  let node: LocatedNode | undefined = root;
  for (const step of steps) {
    if (node?.kind === 'map') node = node.entries.get(step)?.value;
    else if (node?.kind === 'list') node = node.items[Number(step)];
    else return undefined;
  }
  return node;
}
