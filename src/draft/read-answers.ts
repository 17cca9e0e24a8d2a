import type { Plan } from '../generated/plan-types.ts';
import { checkPlan } from '../plan/check-plan.ts';
import type { LocatedNode, MapEntry, MapNode } from '../plan/node.ts';
import { nodeAt } from '../plan/node-at.ts';
import { pointerSteps } from '../plan/pointer.ts';
import { readYaml } from '../plan/read-yaml.ts';
import { placeOf } from '../plan/source-text.ts';

/** What an author has answered: the plan's own words, as far as they are known. */
export type DraftAnswers = Pick<Plan, 'job' | 'vehicle' | 'parts'>;

export type AnswersReading =
  | { readonly ok: true; readonly answers: DraftAnswers }
  | { readonly ok: false; readonly sentences: readonly string[] };

/** What a draft takes; everything else of a plan is a decision, or is read off a page, and belongs into the plan itself. */
const taken: ReadonlyMap<string, readonly string[]> = new Map([
  ['', ['job', 'vehicle', 'parts']],
  ['job', ['number', 'opened', 'written_by']],
  ['job.written_by', ['name', 'role', 'qualification']],
  [
    'vehicle',
    [
      ...['maker', 'model', 'body', 'trim', 'model_year', 'model_year_from', 'vin', 'frame_number'],
      ...['read_from', 'confirmed_at', 'market', 'weight_class', 'build_date', 'plant', 'drive'],
    ],
  ],
  ['parts.*', ['id', 'name', 'kind', 'side', 'damage']],
  ['parts.*.damage', ['kind', 'found_by', 'extent']],
]);

/**
 * Answers as JSON (or YAML), in the form of a plan that holds `job`, `vehicle` and `parts` and nothing else. Each fault is one
 * sentence with its key, and its line where `placed`.
 */
export function readAnswers(text: string, placed: boolean): AnswersReading {
  const yaml = readYaml(text);
  const at = (range: LocatedNode['range'] | undefined): string => {
    if (!placed || range === undefined) return '';
    const { line, column } = placeOf({ path: '', text }, range);
    return `Line ${String(line)}, column ${String(column)}: `;
  };
  if (!yaml.ok)
    return { ok: false, sentences: yaml.faults.map(({ sentence, range }) => `${at(range)}${sentence}`) };
  const { root } = yaml;
  if (root.kind !== 'map')
    return { ok: false, sentences: ['The answers are a block of keys: `job`, `vehicle` and `parts`.'] };
  const unasked = notTaken(root, []).map(
    ({ path, entry }) => `${at(entry.keyRange)}A draft does not take ${named(path)}; write it into the plan.`,
  );
  if (unasked.length > 0) return { ok: false, sentences: unasked };
  const checked = checkPlan(asPlan(root));
  if (!checked.ok) return { ok: false, sentences: checked.faults.map(({ sentence }) => sentence) };
  const faults = checked.faults.map(({ pointer, sentence }) => {
    const steps = pointerSteps(pointer);
    return `${at(nodeAt(root, steps)?.range)}${named(steps)}: ${sentence}`;
  });
  return faults.length > 0 ? { ok: false, sentences: faults } : { ok: true, answers: checked.plan };
}

interface Unasked {
  readonly path: readonly string[];
  readonly entry: MapEntry;
}

/** Keys that a plan has and a draft does not take; what no plan has is told by the check. */
function notTaken(node: LocatedNode, path: readonly string[]): readonly Unasked[] {
  if (node.kind === 'list') return node.items.flatMap((item) => notTaken(item, [...path, '*']));
  const keys = taken.get(path.join('.'));
  if (node.kind !== 'map' || keys === undefined) return [];
  return [...node.entries.values()].flatMap((entry): readonly Unasked[] => {
    const further = [...path, entry.key];
    return keys.includes(entry.key) ? notTaken(entry.value, further) : [{ path: further, entry }];
  });
}

/** The answers in the form of a plan: what they leave out is empty. */
function asPlan(root: MapNode): MapNode {
  const none = { start: 0, end: 0 };
  const with_ = (key: string, value: LocatedNode): readonly [string, MapEntry] => [
    key,
    { key, keyRange: none, value },
  ];
  return {
    ...root,
    entries: new Map([
      with_('format', { kind: 'scalar', value: 1, source: '1', range: none }),
      with_('vehicle', { kind: 'map', entries: new Map(), range: none }),
      with_('parts', { kind: 'list', items: [], range: none }),
      ...root.entries,
    ]),
  };
}

/** `vehicle.market`, `parts, no. 2: side`. */
function named(steps: readonly string[]): string {
  return `\`${steps.map((step) => (/^\d+$/u.test(step) ? String(Number(step) + 1) : step)).join('.')}\``;
}
