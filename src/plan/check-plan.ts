import type { Plan } from '../generated/plan-types.ts';
import { validatePlan } from '../generated/validate-plan.js';
import type { EntryFault } from './entry-fault.ts';
import { cutByComma, explainCutText } from './cut-by-comma.ts';
import { explainEntry, explainUnknownKey } from './explain-entry.ts';
import type { EntryExplanation } from './explain-entry.ts';
import type { ReadFault } from './fault.ts';
import { dropLeftBlank } from './left-blank.ts';
import { nodeAt } from './node-at.ts';
import type { LocatedNode } from './node.ts';
import { plainValue } from './plain-value.ts';
import { pointerSteps, pointerTo } from './pointer.ts';
import type { SchemaError } from './schema-error.ts';
import { schemaPartAt } from './schema-part.ts';
import type { SchemaPart } from './schema-keywords.ts';

export type PlanCheck =
  | { readonly ok: true; readonly plan: Plan; readonly faults: readonly EntryFault[] }
  | { readonly ok: false; readonly faults: readonly ReadFault[] };

/** Each round takes out what the one before could not see: a list entry that became empty, a map left without a key. */
const mostRounds = 8;

/**
 * Holds a located plan against the plan schema. What does not fit is taken out, so that its value is unknown, and is told as
 * an entry fault; a plan without `format`, `vehicle` or `parts` cannot be judged at all. A key with nothing behind it, or a
 * text that says nothing, counts as left out.
 */
export function checkPlan(root: LocatedNode): PlanCheck {
  const refused = refusal(root);
  if (refused.length > 0) return { ok: false, faults: refused };
  const value = plainValue(root);
  dropLeftBlank(value);
  const faults = new Map<string, EntryFault>();
  for (let round = 0; round < mostRounds; round += 1) {
    if (validatePlan(value)) return { ok: true, plan: value, faults: [...faults.values()] };
    mend(value, validatePlan.errors ?? [], root, faults);
  }
  return {
    ok: false,
    faults: [{ sentence: 'The form of this plan is too far from a plan to be judged.', range: root.range }],
  };
}

function refusal(root: LocatedNode): readonly ReadFault[] {
  if (root.kind !== 'map') {
    return [
      { sentence: 'A plan is a block of keys with `format`, `vehicle` and `parts`.', range: root.range },
    ];
  }
  const faults: ReadFault[] = [];
  for (const key of ['format', 'vehicle', 'parts']) {
    const entry = root.entries.get(key);
    if (entry === undefined) {
      faults.push({
        sentence: `The plan has no \`${key}\`; without it nothing can be judged.`,
        range: root.range,
      });
      continue;
    }
    const { value } = entry;
    if (key === 'format' && !(value.kind === 'scalar' && value.value === 1)) {
      faults.push({ sentence: 'This planish reads plans of `format: 1`.', range: value.range });
    }
    if (key === 'vehicle' && value.kind !== 'map') {
      faults.push({ sentence: '`vehicle` must be a block of keys.', range: entry.keyRange });
    }
    if (key === 'parts' && value.kind !== 'list') {
      faults.push({ sentence: '`parts` must be a list of parts.', range: entry.keyRange });
    }
    if (key === 'parts' && value.kind === 'list' && value.items.length > mostParts) {
      faults.push({
        sentence: `\`parts\` has more than ${String(mostParts)} entries; no plan does.`,
        range: entry.keyRange,
      });
    }
  }
  return faults;
}

const mostParts = 2000;

function mend(
  root: unknown,
  errors: readonly SchemaError[],
  nodes: LocatedNode,
  faults: Map<string, EntryFault>,
): void {
  // Parts of the schema are looked up before anything is changed: the choice of `if` follows the value as written.
  const found = errors
    .filter((error) => error.keyword !== 'if')
    .map((error) => ({ error, part: schemaPartAt(root, pointerSteps(error.instancePath)) }));
  const done = new Set<string>();
  const emptied: { readonly list: unknown[]; readonly index: number }[] = [];

  for (const { error, part } of found) {
    const extra = error.params['additionalProperty'];
    const key = error.keyword === 'additionalProperties' && typeof extra === 'string' ? extra : undefined;
    const pointer = key === undefined ? error.instancePath : pointerTo(error.instancePath, key);
    if (done.has(pointer)) continue;
    done.add(pointer);
    const steps = pointerSteps(pointer);
    const given = nodeAt(nodes, steps);
    const change = (replacement: Replacement): void => {
      replace(root, steps, replacement, emptied);
    };
    if (key === undefined && given?.kind === 'scalar') {
      if (given.value === null) {
        // Nothing behind a key: left out, as in a form not yet filled in.
        change(takesBlock(part) ? { with: {} } : 'nothing');
        continue;
      }
      if (error.keyword === 'type' && takesFreeText(part) && typeof given.value !== 'string') {
        // `revision: 4` and `trim: 1.10` are text to their author: the source, not the number, counts.
        change({ with: given.source });
        continue;
      }
    }
    if (!faults.has(pointer) && !isKnockOn(error, pointer, faults)) {
      const explained =
        key === undefined ? explainEntry(error, part, given) : explainKey(key, part, nodes, steps);
      if (explained !== undefined) faults.set(pointer, { ...explained, pointer });
    }
    change(takesBlock(part) && key === undefined ? { with: {} } : 'nothing');
  }
  // From the back, so that the indexes of what is still to be taken out stay right.
  for (const { list, index } of emptied.toSorted((a, b) => b.index - a.index)) list.splice(index, 1);
}

/** Undefined for what is left of a text of which the comma before has been told. */
function explainKey(
  key: string,
  part: SchemaPart | undefined,
  nodes: LocatedNode,
  steps: readonly string[],
): EntryExplanation | undefined {
  const map = nodeAt(nodes, steps.slice(0, -1));
  const cut = map?.kind === 'map' ? cutByComma(map, key) : 'nowhere';
  if (cut === 'nowhere') return explainUnknownKey(key, part);
  return cut === 'before' ? undefined : explainCutText(cut.of, key);
}

/** A list that is too short only since an entry, told already, was taken out of it. */
function isKnockOn(error: SchemaError, pointer: string, faults: ReadonlyMap<string, EntryFault>): boolean {
  return error.keyword === 'minItems' && [...faults.keys()].some((told) => told.startsWith(`${pointer}/`));
}

type Replacement = 'nothing' | { readonly with: unknown };

/**
 * An entry of a list that should have been a block becomes an empty block (an operation nobody can read is still an
 * operation); other list entries and keys are taken out.
 */
function replace(
  root: unknown,
  steps: readonly string[],
  replacement: Replacement,
  emptied: { readonly list: unknown[]; readonly index: number }[],
): void {
  const last = steps.at(-1);
  let parent = root;
  for (const step of steps.slice(0, -1)) parent = childOf(parent, step);
  if (last === undefined) return;
  if (Array.isArray(parent)) {
    const list: unknown[] = parent;
    if (replacement === 'nothing') emptied.push({ list, index: Number(last) });
    else list[Number(last)] = replacement.with;
  } else if (isRecord(parent)) {
    const isBlockForKey = replacement !== 'nothing' && isRecord(replacement.with);
    if (replacement === 'nothing' || isBlockForKey) Reflect.deleteProperty(parent, last);
    else parent[last] = replacement.with;
  }
}

function takesBlock(part: SchemaPart | undefined): boolean {
  return part?.type === 'object';
}

function takesFreeText(part: SchemaPart | undefined): boolean {
  return part?.type === 'string' && part.format === undefined;
}

function childOf(value: unknown, step: string): unknown {
  if (Array.isArray(value)) return value[Number(step)];
  return isRecord(value) && Object.hasOwn(value, step) ? value[step] : undefined;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
