import type { Finding } from '../judge/finding.ts';
import { locate } from '../plan/locate.ts';
import { nodeAt } from '../plan/node-at.ts';
import type { LocatedNode, Range } from '../plan/node.ts';
import { pointerSteps } from '../plan/pointer.ts';

/**
 * The stretch of the plan that a finding points at: a value that is wrong, the key of a block, of something unknown or of nothing, the key
 * of the nearest entry above something that is missing, or of what asks for it. Of an entry in a list its first line, never the whole block.
 */
export function findingRange(root: LocatedNode, finding: Finding): Range {
  const { pointer } = finding;
  const located = locate(root, pointer);
  if (located === undefined) return firstLine(root);
  if (!located.exists) return located.key ?? rangeOfMissing(root, pointer);
  const isUnknownKey = finding.facts.some(
    ({ name, value }) => name === 'entry.fault' && value === 'unknown key',
  );
  const node = nodeAt(root, pointerSteps(pointer));
  const isValue = node?.kind === 'scalar' && node.range.end > node.range.start;
  if (located.key !== undefined && (isUnknownKey || !isValue)) return located.key;
  return node === undefined ? located.value : firstLine(node);
}

/** The deepest step of the pointer that exists. */
function nearest(root: LocatedNode, pointer: string): readonly string[] {
  const steps = [...pointerSteps(pointer)];
  while (steps.length > 0 && nodeAt(root, steps) === undefined) steps.pop();
  return steps;
}

/** What asks for a block that a plan leaves out altogether: the work on its parts, or the stage. */
const askedBy: Readonly<Record<string, string>> = {
  damage: 'parts',
  finish: 'parts',
  hold_points: 'parts',
  make_safe: 'parts',
  measurements: 'parts',
  record: 'stage',
  sign_off: 'stage',
  verify: 'parts',
};

function rangeOfMissing(root: LocatedNode, pointer: string): Range {
  const steps = nearest(root, pointer);
  if (steps.length > 0 || root.kind !== 'map') return firstLine(nodeAt(root, steps) ?? root);
  const [block = ''] = pointerSteps(pointer);
  const asking = Object.hasOwn(askedBy, block) ? root.entries.get(askedBy[block] ?? '') : undefined;
  return asking?.keyRange ?? firstLine(root);
}

/** Of a block its first entry, of a list its first item: never the whole block. */
export function firstLine(node: LocatedNode): Range {
  if (node.kind === 'scalar') return node.range;
  if (node.kind === 'list') return node.items[0] === undefined ? node.range : firstLine(node.items[0]);
  for (const { keyRange, value } of node.entries.values()) {
    return value.kind === 'scalar' ? { start: keyRange.start, end: value.range.end } : keyRange;
  }
  return node.range;
}
