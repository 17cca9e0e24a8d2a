import type { TopicFile } from '../generated/pack-types.ts';
import { validatePack } from '../generated/validate-pack.js';
import type { FactDictionary } from './fact-dictionary.ts';
import type { FaultList } from './fault-list.ts';
import { readAllowance, readReach } from './heat-practice.ts';
import type { Allowance, Limit, Provision, Reach, Rule } from './pack.ts';
import { readLimit } from './read-limit.ts';
import { readProvision } from './read-provision.ts';
import { readRule } from './read-rule.ts';

/** Where a rule stands: a pointer into one file of the pack. */
export interface RulePlace {
  readonly file: string;
  readonly list: FaultList;
  readonly pointer: string;
}

/** What the topic files of a pack hold, filled file by file. */
export interface Gathered {
  readonly rules: Rule[];
  readonly limits: Limit[];
  readonly allowances: Allowance[];
  readonly reaches: Reach[];
  readonly provisions: Provision[];
  /** Rule id → where it first stands. */
  readonly ids: Map<string, RulePlace>;
}

/** Takes what stands in one topic file, whose value the schema need not have let through: sound items are read all the same. */
export function gatherTopic(
  value: unknown,
  file: string,
  dictionary: FactDictionary,
  list: FaultList,
  into: Gathered,
): void {
  for (const { topic, key, index } of soundItems(value)) {
    if (list.isFull) return;
    const at = `/${key}/${String(index)}`;
    for (const stated of topic.rules ?? []) {
      const before = into.ids.get(stated.id);
      if (before === undefined) into.ids.set(stated.id, { file, list, pointer: at });
      else list.at(`${at}/id`, `The id \`${stated.id}\` is taken by a rule in ${before.file}.`);
      const rule = readRule(stated, at, dictionary, list);
      if (rule !== undefined && before === undefined) into.rules.push(rule);
    }
    for (const stated of topic.limits ?? []) {
      const limit = readLimit(stated, at, dictionary, list);
      if (limit === undefined) continue;
      if (into.limits.some(({ victim }) => victim === limit.victim)) {
        list.at(`${at}/victim`, `\`${limit.victim}\` has a limit in this pack already.`);
      } else into.limits.push(limit);
    }
    for (const stated of topic.allowances ?? []) {
      const allowance = readAllowance(stated, at, dictionary, list);
      if (allowance === undefined) continue;
      if (into.allowances.some(({ means }) => means === allowance.means)) {
        list.at(`${at}/measured_by`, `\`${allowance.means}\` has an allowance in this pack already.`);
      } else into.allowances.push(allowance);
    }
    for (const stated of topic.reaches ?? []) {
      const reach = readReach(stated, at, dictionary, list);
      if (reach === undefined) continue;
      if (into.reaches.some(({ from }) => from === reach.from)) {
        list.at(`${at}/from`, `\`${reach.from}\` has a reach in this pack already.`);
      } else into.reaches.push(reach);
    }
    for (const stated of topic.provisions ?? []) {
      const provision = readProvision(stated, at, dictionary, list);
      if (provision !== undefined) into.provisions.push(provision);
    }
  }
}

interface SoundItem {
  /** A topic file that holds the one item and nothing else. */
  readonly topic: TopicFile;
  readonly key: string;
  readonly index: number;
}

/** One at a time, so that a slip in one rule does not hide those in the others. */
function soundItems(value: unknown): readonly SoundItem[] {
  if (typeof value !== 'object' || value === null) return [];
  const sound: SoundItem[] = [];
  const entries: readonly (readonly [string, unknown])[] = Object.entries(value);
  for (const [key, items] of entries) {
    if (!isList(items) || items.length > mostItems || !lists.includes(key)) continue;
    items.forEach((item, index) => {
      const topic: unknown = { pack: 'alone', [key]: [item] };
      if (validatePack(topic) && !('format' in topic)) sound.push({ topic, key, index });
    });
  }
  return sound;
}

const lists = ['rules', 'limits', 'allowances', 'reaches', 'provisions'];

/** The most that the schema lets any of the lists hold; a longer one is refused as a whole. */
const mostItems = 1000;

function isList(value: unknown): value is readonly unknown[] {
  return Array.isArray(value);
}
