import type { TopicFile } from '../../generated/pack-types.ts';
import { validatePack } from '../../generated/validate-pack.js';
import type { FactDictionary } from '../fact-dictionary.ts';
import type { FaultList } from './fault-list.ts';
import type { StatedItems } from '../versions/canonical-form.ts';
import { placeKey } from '../pack.ts';
import type {
  Allowance,
  Limit,
  OpenProvision,
  Order,
  PackPart,
  Provision,
  Raise,
  Reach,
  Rule,
  StatedWindow,
  Tolerance,
  Trigger,
  SupersededDocument,
} from '../pack.ts';
import type { PackPlace } from '../pack-fault.ts';
import { readAllowance, readReach } from './read-heat-practice.ts';
import { isSameOrder, readOrder } from './read-order.ts';
import { readLimit } from './read-limit.ts';
import { readPackPart } from './read-pack-part.ts';
import { isOpen, readProvision } from './read-provision.ts';
import { readRaise, readSuperseded } from './read-small-items.ts';
import { readRule } from './read-rule.ts';
import { asksTheSame } from './same-trigger.ts';
import { overlaps } from '../versions/version-span.ts';
import { readTolerance } from './read-tolerance.ts';
import { readTrigger } from './read-trigger.ts';
import { readWindow } from './read-window.ts';

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
  readonly windows: StatedWindow[];
  readonly tolerances: Tolerance[];
  readonly triggers: Trigger[];
  readonly orders: Order[];
  readonly provisions: Provision[];
  readonly open: OpenProvision[];
  readonly parts: PackPart[];
  readonly documents: SupersededDocument[];
  readonly raises: Raise[];
  /** Rule id → where it first stands. */
  readonly ids: Map<string, RulePlace>;
  /** The items as they are written, for the digest. */
  readonly stated: { readonly [Key in keyof StatedItems]: StatedItems[Key][number][] };
  /** By `placeKey`. */
  readonly places: Record<string, PackPlace>;
}

export function emptyGathered(): Gathered {
  return {
    rules: [],
    limits: [],
    allowances: [],
    reaches: [],
    windows: [],
    tolerances: [],
    triggers: [],
    orders: [],
    provisions: [],
    open: [],
    parts: [],
    documents: [],
    raises: [],
    ids: new Map(),
    stated: {
      ...{ rules: [], limits: [], allowances: [], reaches: [], windows: [], tolerances: [] },
      ...{ triggers: [], orders: [], provisions: [], parts: [], documents: [], raises: [] },
    },
    places: {},
  };
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
      if (rule === undefined || before !== undefined) continue;
      into.rules.push(rule);
      into.stated.rules.push(stated);
      into.places[placeKey('rule', rule.id)] = list.placeAt(`${at}/id`);
    }
    for (const stated of topic.limits ?? []) {
      const limit = readLimit(stated, at, dictionary, list);
      if (limit === undefined) continue;
      if (into.limits.some((other) => other.victim === limit.victim && overlaps(other, limit))) {
        list.at(`${at}/victim`, `\`${limit.victim}\` has a limit in this pack already.`);
        continue;
      }
      into.limits.push(limit);
      into.stated.limits.push(stated);
      into.places[placeKey('limit', limit.victim)] = list.placeAt(at);
    }
    for (const stated of topic.allowances ?? []) {
      const allowance = readAllowance(stated, at, dictionary, list);
      if (allowance === undefined) continue;
      if (into.allowances.some((one) => one.means === allowance.means && overlaps(one, allowance))) {
        list.at(`${at}/measured_by`, `\`${allowance.means}\` has an allowance in this pack already.`);
        continue;
      }
      into.allowances.push(allowance);
      into.stated.allowances.push(stated);
      into.places[placeKey('allowance', allowance.means)] = list.placeAt(at);
    }
    for (const stated of topic.reaches ?? []) {
      const reach = readReach(stated, at, dictionary, list);
      if (reach === undefined) continue;
      if (into.reaches.some((one) => one.from === reach.from && overlaps(one, reach))) {
        list.at(`${at}/from`, `\`${reach.from}\` has a reach in this pack already.`);
        continue;
      }
      into.reaches.push(reach);
      into.stated.reaches.push(stated);
      into.places[placeKey('reach', reach.from)] = list.placeAt(at);
    }
    for (const stated of topic.windows ?? []) {
      const window = readWindow(stated, at, list);
      if (window === undefined) continue;
      into.windows.push(window);
      into.stated.windows.push(stated);
    }
    for (const stated of topic.tolerances ?? []) {
      const tolerance = readTolerance(stated, at, list);
      if (tolerance === undefined) continue;
      if (into.tolerances.some((one) => one.of === tolerance.of && overlaps(one, tolerance))) {
        list.at(`${at}/of`, `\`${tolerance.of}\` has a tolerance in this pack already.`);
        continue;
      }
      into.tolerances.push(tolerance);
      into.stated.tolerances.push(stated);
      into.places[placeKey('tolerance', tolerance.of)] = list.placeAt(at);
    }
    for (const stated of topic.triggers ?? []) {
      const trigger = readTrigger(stated, at, dictionary, list);
      if (trigger === undefined) continue;
      if (into.triggers.some((one) => asksTheSame(one, trigger))) {
        list.at(at, 'A trigger of this pack asks for the same check for the same reason already.');
        continue;
      }
      into.triggers.push(trigger);
      into.stated.triggers.push(stated);
    }
    for (const stated of topic.orders ?? []) {
      const order = readOrder(stated, at, list);
      if (order === undefined) continue;
      if (into.orders.some((one) => isSameOrder(one, order) && overlaps(one, order))) {
        list.at(at, `\`${order.first}\` before \`${order.then}\` stands in this pack already.`);
        continue;
      }
      into.orders.push(order);
      into.stated.orders.push(stated);
    }
    for (const stated of topic.provisions ?? []) {
      const provision = readProvision(stated, at, dictionary, list);
      if (provision === undefined) continue;
      if (isOpen(stated)) {
        const { part, operation } = stated;
        into.open.push({ part, operation: operation ?? '', place: list.placeAt(at) });
        continue;
      }
      into.places[placeKey('provision', into.provisions.length)] = list.placeAt(at);
      into.provisions.push(provision);
      into.stated.provisions.push(stated);
    }
    for (const stated of topic.parts ?? []) {
      const part = readPackPart(stated, at, dictionary, list);
      if (part === undefined) continue;
      into.parts.push(part);
      into.stated.parts.push(stated);
    }
    for (const stated of topic.documents ?? []) {
      const document = readSuperseded(stated, at, list);
      if (document === undefined) continue;
      into.documents.push(document);
      into.stated.documents.push(stated);
    }
    for (const stated of topic.raises ?? []) {
      const raise = readRaise(stated, at, list);
      if (raise === undefined) continue;
      into.raises.push(raise);
      into.stated.raises.push(stated);
      into.places[placeKey('raise', raise.rule)] = list.placeAt(at);
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
    if (!isList(items) || items.length > mostItems || !lists.has(key)) continue;
    items.forEach((item, index) => {
      const topic: unknown = { pack: 'alone', [key]: [item] };
      if (validatePack(topic) && !('format' in topic || 'releases' in topic || 'lock' in topic))
        sound.push({ topic, key, index });
    });
  }
  return sound;
}

const lists: ReadonlySet<string> = new Set([
  ...['rules', 'limits', 'allowances', 'reaches', 'windows', 'tolerances'],
  ...['triggers', 'orders', 'provisions', 'parts', 'documents', 'raises'],
]);

/** The most that the schema lets any of the lists hold; a longer one is refused as a whole. */
const mostItems = 1000;

function isList(value: unknown): value is readonly unknown[] {
  return Array.isArray(value);
}
