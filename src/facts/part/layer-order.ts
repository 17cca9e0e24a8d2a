import { listOf } from '../quantity-of.ts';
import type { PartSurvey } from '../survey.ts';

/** A part with its place among the layers of the body. */
export interface LayeredPart {
  readonly part: PartSurvey;
  /** 1 outside; one more than the deepest of the layers that hide it. Undefined where the layers hide each other in a circle. */
  readonly layer: number | undefined;
  /** The parts that hide it. */
  readonly under: readonly PartSurvey[];
  /** The parts that it hides. */
  readonly over: readonly PartSurvey[];
}

/**
 * The parts from the outside in: each after all that hide it, and as near to them as that allows; those alike in the order of the plan.
 * Both `under` and `over` count. Parts of a circle come last, in the order of the plan.
 */
export function layerOrder(
  parts: readonly PartSurvey[],
  partById: ReadonlyMap<string, PartSurvey>,
): readonly LayeredPart[] {
  const { under, over } = linksOf(parts, partById);
  const open = new Map(parts.map((part) => [part, under.get(part)?.size ?? 0]));
  const layers = new Map<PartSurvey, number>();
  const ordered: PartSurvey[] = [];
  // Those to come, the next one last.
  const next = parts.filter((part) => open.get(part) === 0).reverse();
  for (let part = next.pop(); part !== undefined; part = next.pop()) {
    ordered.push(part);
    const layer = layers.get(part) ?? 1;
    layers.set(part, layer);
    const freed: PartSurvey[] = [];
    for (const hidden of over.get(part) ?? []) {
      const left = (open.get(hidden) ?? 0) - 1;
      open.set(hidden, left);
      layers.set(hidden, Math.max(layers.get(hidden) ?? 1, layer + 1));
      if (left === 0) freed.push(hidden);
    }
    next.push(...freed.reverse());
  }
  const inOrder = new Set(ordered);
  return [...ordered, ...parts.filter((part) => !inOrder.has(part))].map((part) => ({
    part,
    layer: inOrder.has(part) ? (layers.get(part) ?? 1) : undefined,
    under: [...(under.get(part) ?? [])],
    over: [...(over.get(part) ?? [])],
  }));
}

type Links = ReadonlyMap<PartSurvey, ReadonlySet<PartSurvey>>;

function linksOf(
  parts: readonly PartSurvey[],
  partById: ReadonlyMap<string, PartSurvey>,
): { readonly under: Links; readonly over: Links } {
  const under = new Map<PartSurvey, Set<PartSurvey>>();
  const over = new Map<PartSurvey, Set<PartSurvey>>();
  const add = (hidden: PartSurvey | undefined, hider: PartSurvey | undefined): void => {
    if (hidden === undefined || hider === undefined || hidden === hider) return;
    under.set(hidden, (under.get(hidden) ?? new Set()).add(hider));
    over.set(hider, (over.get(hider) ?? new Set()).add(hidden));
  };
  for (const one of parts) {
    for (const id of listOf(one.part.under)) add(one, partById.get(id));
    for (const id of listOf(one.part.over)) add(partById.get(id), one);
  }
  return { under, over };
}
