import { validateKey } from '../generated/validate-key.js';
import type { KeyFile } from '../generated/key-types.ts';
import { FaultList } from '../packs/reading/fault-list.ts';
import type { PackFault } from '../packs/pack-fault.ts';
import { decodeText } from '../plan/decode-text.ts';
import type { LocatedNode } from '../plan/node.ts';
import { nodeAt } from '../plan/node-at.ts';
import { plainValue } from '../plan/plain-value.ts';
import { pointerSteps } from '../plan/pointer.ts';
import { readYaml } from '../plan/read-yaml.ts';
import { readDate } from '../quantity/iso-date.ts';
import { readQuantity } from '../quantity/read-quantity.ts';
import { findContradictions } from './key-contradictions.ts';
import type { Key } from './key.ts';
import { readKeyPart } from './read-key-part.ts';
import { checkEntry, checkTopic } from './read-key-entry.ts';
import { tellKeyErrors } from './tell-key-errors.ts';

/** A fault of a key, with its place; of the same form as those of packs. */
export type KeyFault = PackFault;

export type KeyReading =
  { readonly ok: true; readonly key: Key } | { readonly ok: false; readonly faults: readonly KeyFault[] };

/**
 * Reads the key of an exercise, whole or not at all: every fault is told with its line, what is expected and the nearest known
 * word. `topics` are those of the rules that plans will be judged by.
 */
export function readKey(path: string, bytes: Uint8Array, topics: ReadonlySet<string>): KeyReading {
  const decoded = decodeText(bytes);
  const source = { path, text: decoded.text };
  if (!decoded.ok) {
    const list = new FaultList(source, undefined);
    list.atRange(decoded.fault.range, decoded.fault.sentence);
    return { ok: false, faults: list.faults };
  }
  const yaml = readYaml(decoded.text);
  if (!yaml.ok) {
    const list = new FaultList(source, undefined);
    for (const { range, sentence } of yaml.faults) list.atRange(range, sentence);
    return { ok: false, faults: list.faults };
  }
  const list = new FaultList(source, yaml.root);
  const value = plainValue(yaml.root);
  if (!validateKey(value)) {
    if (isPlan(yaml.root)) {
      list.at(
        '',
        'This is a repair plan, not a key: a key has a `scenario`, and for each part its `decisions`.',
      );
      return { ok: false, faults: list.faults };
    }
    const at = (pointer: string): unknown => {
      const node = nodeAt(yaml.root, pointerSteps(pointer));
      return node === undefined ? undefined : plainValue(node);
    };
    tellKeyErrors(validateKey.errors ?? [], at, list);
    return { ok: false, faults: inOrder(list.faults) };
  }
  const key = settled(value, topics, list);
  findContradictions(value, list);
  return list.faults.length > 0 ? { ok: false, faults: inOrder(list.faults) } : { ok: true, key };
}

/** A plan in the place of the key would be told one fault a line. */
function isPlan(root: LocatedNode): boolean {
  return root.kind === 'map' && root.entries.has('vehicle') && !root.entries.has('scenario');
}

function settled(file: KeyFile, topics: ReadonlySet<string>, list: FaultList): Key {
  const { scenario, safety, parts, completeness = [], topics: asked = [] } = file;
  const share = readQuantity(file.pass, 'percent');
  if (!share.ok) list.at('/pass', share.reason);
  else if (share.value <= 0 || share.value > 100)
    list.at('/pass', 'The share from which a plan passes lies above 0 % and is at most 100 %.');
  const day = scenario.as_of === undefined ? undefined : readDate(scenario.as_of);
  if (day?.ok === false) list.at('/scenario/as_of', day.reason);
  completeness.forEach((one, index) => {
    checkEntry(one, `/completeness/${String(index)}`, list);
  });
  asked.forEach((one, index) => {
    checkTopic(one, topics, `/topics/${String(index)}`, list);
  });
  const { maker, model, body, model_year: modelYear } = scenario.vehicle;
  return {
    scenario: {
      id: scenario.id,
      ...(scenario.title === undefined ? {} : { title: scenario.title }),
      vehicle: {
        maker,
        model,
        ...(body === undefined ? {} : { body }),
        ...(modelYear === undefined ? {} : { modelYear }),
      },
      ...(day?.ok === true ? { asOfDay: day.day } : {}),
      stage: scenario.stage ?? 'start',
    },
    passShare: share.ok ? share.value / 100 : 1,
    ...(safety === undefined
      ? {}
      : {
          safety: {
            points: safety.points,
            ...(safety.look_at === undefined ? {} : { lookAt: safety.look_at }),
          },
        }),
    parts: parts.map((part, index) => readKeyPart(part, `/parts/${String(index)}`, list)),
    completeness,
    topics: asked,
  };
}

function inOrder(faults: readonly KeyFault[]): readonly KeyFault[] {
  return faults.toSorted((a, b) => a.line - b.line || a.column - b.column);
}
