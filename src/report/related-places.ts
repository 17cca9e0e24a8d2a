import type { Finding } from '../judge/finding.ts';
import { nodeAt } from '../plan/node-at.ts';
import type { LocatedNode } from '../plan/node.ts';
import { pointerSteps } from '../plan/pointer.ts';
import { placeOf } from '../plan/source-text.ts';
import type { Place, SourceText } from '../plan/source-text.ts';
import { firstLine } from './finding-range.ts';
import type { RelatedPlace } from './plan-report.ts';

/** Where the entries stand that a finding holds its own against. */
export function againstPlaces(
  source: SourceText,
  root: LocatedNode,
  pointers: readonly string[],
): readonly Place[] {
  return pointers.flatMap((pointer) => {
    const node = nodeAt(root, pointerSteps(pointer));
    return node === undefined ? [] : [placeOf(source, firstLine(node))];
  });
}

/** What contradicts a finding's entry, its part, its operation and the document that it is about, where they stand on other lines than the finding itself. */
export function relatedPlaces(
  source: SourceText,
  root: LocatedNode,
  finding: Finding,
): readonly RelatedPlace[] {
  const steps = pointerSteps(finding.pointer);
  const partAt = steps[0] === 'parts' && steps.length > 2 ? steps.slice(0, 2) : undefined;
  const operationAt = finding.operationAt === undefined ? undefined : pointerSteps(finding.operationAt);
  const own = placeOf(source, firstLine(nodeAt(root, steps) ?? root)).line;
  const places: RelatedPlace[] = [];
  const add = (what: string, node: LocatedNode | undefined): void => {
    if (node === undefined) return;
    const place = placeOf(source, firstLine(node));
    if (place.line !== own && !places.some((one) => one.place.line === place.line))
      places.push({ what, place });
  };
  for (const pointer of finding.against ?? [])
    add('What contradicts it', nodeAt(root, pointerSteps(pointer)));
  if (partAt !== undefined) add('The part', nodeAt(root, partAt));
  if (operationAt !== undefined) {
    const operation = nodeAt(root, operationAt);
    add('The operation', operation);
    add('The document that it cites', citedReference(root, operation));
  }
  return places;
}

function citedReference(root: LocatedNode, operation: LocatedNode | undefined): LocatedNode | undefined {
  const cited = operation === undefined ? undefined : nodeAt(operation, ['cite', 'reference']);
  const references = nodeAt(root, ['references']);
  if (cited?.kind !== 'scalar' || references?.kind !== 'list') return undefined;
  return references.items.find((item) => {
    const id = nodeAt(item, ['id']);
    return id?.kind === 'scalar' && id.value === cited.value;
  });
}
