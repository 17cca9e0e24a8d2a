import path from 'node:path';
import type { LocatedNode } from '../../plan/node.ts';
import { nodeAt } from '../../plan/node-at.ts';
import { plainValue } from '../../plan/plain-value.ts';
import { pointerSteps } from '../../plan/pointer.ts';
import { readYaml } from '../../plan/read-yaml.ts';
import type { PackFile } from '../digest.ts';
import { FaultList } from './fault-list.ts';

/** One YAML file of a pack, with the list of what is wrong in it. */
export interface FileRead {
  readonly name: string;
  /** Undefined when the file is no YAML or holds too long a list, which is told. */
  readonly value: unknown;
  readonly valueAt: (pointer: string) => unknown;
  readonly list: FaultList;
}

/** No list of a pack may be longer (schema: provisions). The validator's work grows with the square of a list's faults. */
const mostItems = 1000;

/** Reads one file as YAML. `folder` is only put before its name where it is shown. */
export function readPackFile(folder: string, { name, text }: PackFile): FileRead {
  const source = { path: path.join(folder, name), text };
  const yaml = readYaml(text);
  if (!yaml.ok) {
    const list = new FaultList(source, undefined);
    for (const fault of yaml.faults) list.atRange(fault.range, fault.sentence);
    return { name, value: undefined, valueAt: () => undefined, list };
  }
  const valueAt = (pointer: string): unknown => {
    const node = nodeAt(yaml.root, pointerSteps(pointer));
    return node === undefined ? undefined : plainValue(node);
  };
  const list = new FaultList(source, yaml.root);
  tellLongLists(yaml.root, list);
  return { name, value: list.faults.length > 0 ? undefined : plainValue(yaml.root), valueAt, list };
}

function tellLongLists(node: LocatedNode, list: FaultList): void {
  if (node.kind === 'scalar') return;
  if (node.kind === 'list' && node.items.length > mostItems) {
    list.atRange(
      node.range,
      `More stands here than a pack ever takes: at most ${String(mostItems)} entries.`,
    );
    return;
  }
  const inner = node.kind === 'list' ? node.items : [...node.entries.values()].map(({ value }) => value);
  for (const one of inner) tellLongLists(one, list);
}
