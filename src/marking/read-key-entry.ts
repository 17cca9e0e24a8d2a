import type { KeyEntry, KeyTopic } from '../generated/key-types.ts';
import type { FaultList } from '../packs/reading/fault-list.ts';
import { schemaPartAt } from '../plan/schema-part.ts';

/** Tells of an entry that no plan has. */
export function checkEntry({ entry }: KeyEntry, pointer: string, list: FaultList): void {
  const steps = entry.split('.');
  for (let length = 1; length <= steps.length; length += 1) {
    if (schemaPartAt({}, steps.slice(0, length)) !== undefined) continue;
    const step = steps[length - 1] ?? '';
    const known = Object.keys(schemaPartAt({}, steps.slice(0, length - 1))?.properties ?? {});
    const near = list.nearest(step, known);
    list.at(`${pointer}/entry`, `A plan has no \`${steps.slice(0, length).join('.')}\`.`, near);
    return;
  }
}

/** Tells of a topic that no rule has, and of a share that takes off more than there is. */
export function checkTopic(
  { topic, points, each }: KeyTopic,
  topics: ReadonlySet<string>,
  pointer: string,
  list: FaultList,
): void {
  if (!topics.has(topic)) {
    const known = [...topics].sort();
    const near = list.nearest(topic, known);
    list.at(`${pointer}/topic`, `No rule has the topic \`${topic}\`; known are ${known.join(', ')}.`, near);
  }
  if (each !== undefined && each > points)
    list.at(`${pointer}/each`, 'One that is open cannot take off more than the topic is worth.');
}
