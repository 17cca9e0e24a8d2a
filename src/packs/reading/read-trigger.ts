import type { Trigger as StatedTrigger } from '../../generated/pack-types.ts';
import { factEntry } from '../fact-dictionary.ts';
import type { FactDictionary } from '../fact-dictionary.ts';
import type { FaultList } from './fault-list.ts';
import type { Trigger } from '../pack.ts';
import { readHistory } from './read-history.ts';

/** Reads a trigger that has the form of the schema; undefined when something in it cannot be right, or would never be pulled. */
export function readTrigger(
  stated: StatedTrigger,
  at: string,
  dictionary: FactDictionary,
  faults: FaultList,
): Trigger | undefined {
  const before = faults.faults.length;
  const history = readHistory(stated, at, 'trigger', faults);
  const { kinds = [], holds = [], named = [], unless_named: unlessNamed = [], was = [], work = [] } = stated;
  const known = factEntry(dictionary, 'part.kind');
  for (const [index, kind] of kinds.entries()) {
    if (known?.words?.includes(kind) === true) continue;
    const nearest = faults.nearest(kind, known?.words ?? [], known?.synonyms);
    faults.at(`${at}/kinds/${String(index)}`, `\`${kind}\` is no kind of part.`, nearest);
  }
  const items = factEntry(dictionary, 'exposure.victim');
  for (const [index, item] of holds.entries()) {
    if (items?.words === undefined || items.words.includes(item)) continue;
    const nearest = faults.nearest(item, items.words, items.synonyms);
    faults.at(`${at}/holds/${String(index)}`, `\`${item}\` is nothing that a part holds.`, nearest);
  }
  const ofParts = kinds.length + holds.length > 0;
  if (ofParts === work.length > 0) {
    faults.at(at, 'A trigger says `kinds` or `holds` of parts, or the `work`, and not both.');
  }
  for (const key of ['named', 'unless_named', 'was'] as const) {
    if (ofParts || stated[key] === undefined) continue;
    faults.at(`${at}/${key}`, `\`${key}\` goes with \`kinds\` or \`holds\`.`, [], true);
  }
  if (stated.sensor !== undefined && stated.asks_for !== 'sensor calibration') {
    faults.at(`${at}/sensor`, '`sensor` goes with `asks_for: sensor calibration`.', [], true);
  }
  if ((stated.point !== undefined) !== (stated.asks_for === 'hold point')) {
    faults.at(at, '`point` goes with `asks_for: hold point`, and that with a `point`.');
  }
  if (faults.faults.length > before) return undefined;
  return {
    ...history,
    asksFor: stated.asks_for,
    sensor: stated.sensor ?? [],
    ...(stated.point === undefined ? {} : { point: stated.point }),
    ...{ kinds, holds, named, unlessNamed, was, work },
    source: stated.source,
    ...(stated.note === undefined ? {} : { note: stated.note }),
  };
}
