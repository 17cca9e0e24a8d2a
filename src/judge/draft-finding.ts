import type { Fact } from '../facts/fact.ts';
import { lookUp, ownFact, ownNames } from '../facts/sheet.ts';
import type { FactSheet } from '../facts/sheet.ts';
import { factEntry } from '../packs/fact-dictionary.ts';
import type { FactDictionary } from '../packs/fact-dictionary.ts';
import { factsOf, readTemplate } from '../packs/message-template.ts';
import type { Segment } from '../packs/message-template.ts';
import type { Bounds, Rule } from '../packs/pack.ts';
import { sourceSentence } from '../packs/source-sentence.ts';
import type { CompiledRule } from './compiled-rule.ts';
import { fillMessage } from './fill-message.ts';
import type { Finding } from './finding.ts';
import type { PlanOrder } from './plan-order.ts';
import { showFacts } from './show-facts.ts';
import type { Shown } from './show-facts.ts';
import { truthOfAll } from './truth.ts';
import { assumptionsOf, usedFacts } from './used-facts.ts';

/** A finding before its place among those like it is known. */
export interface DraftFinding extends Omit<Finding, 'fingerprint'> {
  readonly identity: readonly string[];
}

/** Facts by which a sheet that is neither a part nor an operation is told from its neighbours, whatever its place in a list. */
const namingFacts = /\.(?:id|victim|with|to|point|opening|reference|document|number|name)$/u;

/** Sheets of one kind share their list of names. */
const namingOf = new WeakMap<readonly string[], readonly string[]>();

function namesThatName(names: readonly string[]): readonly string[] {
  const before = namingOf.get(names);
  if (before !== undefined) return before;
  const naming = names.filter((name) => namingFacts.test(name)).sort();
  namingOf.set(names, naming);
  return naming;
}

/** What a rule found on a sheet. `factOf` is that of the sheet. */
export function draftFinding(
  { rule, pack }: CompiledRule,
  sheet: FactSheet,
  factOf: (name: string) => Fact,
  order: PlanOrder,
  dictionary: FactDictionary,
): DraftFinding {
  const message = segmentsOf(rule.message);
  const instead = segmentsOf(insteadOf(rule, factOf));
  const spoken = [...factsOf(message), ...factsOf(instead)];
  const texts = showFacts(shownFacts(spoken, rule, factOf, dictionary));
  const beside = (rule.shows ?? []).filter((name) => factOf(name).known);
  const facts = usedFacts([...rule.when.map((line) => line.fact), ...spoken, ...beside], factOf, dictionary);
  const place = rule.place === undefined ? undefined : factOf(rule.place).at;
  const against = contradicting([...rule.when.map((line) => line.fact), ...spoken], factOf);
  return {
    rule: rule.id,
    pack,
    severity: rule.severity,
    ...whereabouts(sheet),
    pointer: place ?? sheet.at,
    ...(against.length === 0 ? {} : { against }),
    message: sentenceOf(message, texts, order),
    instead: fillMessage(instead, texts),
    why: rule.why,
    source: sourceSentence(rule.source),
    facts,
    assumptions: assumptionsOf(facts, dictionary),
    asksUnknown: false,
    standsForStop: false,
    identity: [pack, rule.id, ...sheetIdentity(sheet, order)],
  };
}

/** More lines than this say less than their number. */
const mostAgainst = 5;

function contradicting(names: readonly string[], factOf: (name: string) => Fact): readonly string[] {
  const pointers = new Set<string>();
  for (const name of names) {
    const fact = factOf(name);
    if (fact.known) for (const pointer of fact.against ?? []) pointers.add(pointer);
  }
  return [...pointers].slice(0, mostAgainst);
}

/** A sentence begins with a capital letter; a key of the plan and the id of a part without a name stay as the author writes them. */
function sentenceOf(
  message: readonly Segment[],
  texts: ReadonlyMap<string, string>,
  order: PlanOrder,
): string {
  const filled = fillMessage(message, texts);
  const [first] = message;
  const isWord = first?.kind === 'fact' && first.name !== 'entry.path';
  const begins = isWord ? texts.get(first.name) : undefined;
  return begins === undefined || order.parts.includes(begins)
    ? filled
    : filled.slice(0, 1).toUpperCase() + filled.slice(1);
}

const provision = 'provision.to_type_in';
const permits = 'provision.permits';

/**
 * What to do instead; where a statement of the maker would lift the finding, with that statement, ready to be filled in. One that is in a
 * pack already is not typed in again: what it still waits for is said.
 */
function insteadOf(rule: Rule, factOf: (name: string) => Fact): string {
  const lifting = rule.unless.filter((lines) => lines.some(({ fact }) => fact === permits));
  if (lifting.length === 0) return rule.instead;
  // A permission to cut lifts nothing at a joint beside the cut.
  const isAllElse = lifting.some(
    (lines) =>
      truthOfAll(
        lines.filter(({ fact }) => fact !== permits),
        factOf,
      ) === 'true',
  );
  if (isAllElse && waits(factOf('provision.open'))) {
    return 'The maker’s statement on this work is in a pack already and does not count yet: {provision.open_text}. Keep what it asks for; where that cannot be, leave this work and go by the joints of the factory.';
  }
  if (rule.instead.includes(provision)) return rule.instead;
  return `${rule.instead}[ If the maker’s procedure permits this very work, type its statement into a vehicle pack and cite it: {${provision}}]`;
}

/** A statement that lacks nothing but its conditions; a document that another took the place of, or that is not cited, is to be looked up. */
function waits(open: Fact): boolean {
  if (!open.known || !Array.isArray(open.value)) return false;
  return open.value.length > 0 && open.value.every((point) => point === 'conditions' || point === 'not kept');
}

type Whereabouts = Pick<Finding, 'part' | 'partName' | 'operation' | 'operationAt'>;

/** Which part and operation a sheet belongs to, as the shop calls them. */
export function whereabouts(sheet: FactSheet): Whereabouts {
  const name = sheet.part === undefined ? undefined : textOf(lookUp(sheet, 'part.name'));
  const operation = sheet.operation === undefined ? undefined : textOf(lookUp(sheet, 'operation.do'));
  const where: { -readonly [Key in keyof Whereabouts]: Whereabouts[Key] } = {};
  if (sheet.part !== undefined) where.part = sheet.part;
  if (name !== undefined) where.partName = name;
  if (operation !== undefined) where.operation = operation;
  if (sheet.operation !== undefined) where.operationAt = sheet.operation;
  return where;
}

/** What a sheet is, without its place in any list: part, operation word and ordinal, kind, and the names on the sheet. */
export function sheetIdentity(sheet: FactSheet, order: PlanOrder): readonly string[] {
  const operation = sheet.operation === undefined ? '' : (order.operations.get(sheet.operation) ?? '');
  const identity = [sheet.part ?? '', operation, sheet.kind];
  if (sheet.kind === 'part' || sheet.kind === 'operation') return identity;
  for (const name of namesThatName(ownNames(sheet))) {
    const text = textOf(ownFact(sheet, name));
    if (text !== undefined) identity.push(`${name}=${text}`);
  }
  return identity;
}

/** The loader has read every message already; a pack made by hand in code may still hold one that does not parse. */
function segmentsOf(text: string): readonly Segment[] {
  const template = readTemplate(text);
  return template.ok ? template.segments : [{ kind: 'text', text }];
}

function shownFacts(
  names: readonly string[],
  rule: Rule,
  factOf: (name: string) => Fact,
  dictionary: FactDictionary,
): readonly Shown[] {
  const shown: Shown[] = [];
  for (const name of new Set(names)) {
    const fact = factOf(name);
    if (!fact.known) continue;
    const unit = factEntry(dictionary, name)?.unit;
    const bounds = boundsOf(rule, name);
    shown.push({
      name,
      value: fact.value,
      ...(unit === undefined ? {} : { unit }),
      ...(bounds === undefined ? {} : { bounds }),
    });
  }
  return shown;
}

function boundsOf(rule: Rule, name: string): Bounds | undefined {
  const line = rule.when.find(({ fact }) => fact === name);
  return line !== undefined && 'range' in line.test ? line.test.range : undefined;
}

function textOf(fact: Fact | undefined): string | undefined {
  return fact?.known === true && typeof fact.value !== 'object' ? String(fact.value) : undefined;
}
