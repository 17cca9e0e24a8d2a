import type { Case as StatedCase, Lines, Rule as StatedRule } from '../../generated/pack-types.ts';
import { pointerTo } from '../../plan/pointer.ts';
import { factEntry, visibleKinds } from '../fact-dictionary.ts';
import type { FactDictionary, FactEntry } from '../fact-dictionary.ts';
import type { FaultList } from './fault-list.ts';
import { implies } from './implies.ts';
import { factsOf, readTemplate } from '../message-template.ts';
import type { Case, Line, Rule, Word } from '../pack.ts';
import { readHistory } from './read-history.ts';
import { readTest, readValue } from './read-line.ts';

/** Reads a rule that has the form of the schema; undefined when something in it cannot be right, all of it told. */
export function readRule(
  stated: StatedRule,
  at: string,
  dictionary: FactDictionary,
  faults: FaultList,
): Rule | undefined {
  const before = faults.faults.length;
  const kinds = Object.keys(dictionary.kinds);
  if (!kinds.includes(stated.judges)) {
    faults.at(
      `${at}/judges`,
      `\`${stated.judges}\` is not a kind of fact sheet.`,
      faults.nearest(stated.judges, kinds),
    );
    return undefined;
  }
  if (!/^[a-z0-9]+(?:-[a-z0-9]+)*$/u.test(stated.id)) {
    faults.at(`${at}/id`, 'The id of a rule has lower-case letters, digits and single hyphens between them.');
  }
  const see = visibleFacts(stated.judges, dictionary);
  const fact = (name: string, place: string, onKey: boolean): FactEntry | undefined => {
    const entry = factEntry(dictionary, name);
    if (entry === undefined) {
      faults.at(place, `There is no fact \`${name}\`.`, faults.nearest(name, see), onKey);
    } else if (!see.includes(name)) {
      faults.at(place, `A rule that judges ${stated.judges} sheets cannot see \`${name}\`.`, [], onKey);
      return undefined;
    }
    return entry;
  };
  const lines = (given: Lines, place: string): readonly Line[] =>
    Object.entries(given).flatMap(([name, test]) => {
      const entry = fact(name, pointerTo(place, name), true);
      const read = entry === undefined ? undefined : readTest(test, entry, pointerTo(place, name), faults);
      return read === undefined ? [] : [{ fact: name, test: read }];
    });

  const when = lines(stated.when, `${at}/when`);
  const unless = listOf(stated.unless).map((given, index) =>
    lines(given, Array.isArray(stated.unless) ? `${at}/unless/${String(index)}` : `${at}/unless`),
  );
  unless.forEach((one, index) => {
    if (one.length === 0) return;
    const place = Array.isArray(stated.unless) ? `${at}/unless/${String(index)}` : `${at}/unless`;
    if (areSame(one, when)) {
      faults.at(place, '`unless` asks the same as `when`: the rule could never find anything.', [], true);
    } else if (implies(when, one)) {
      faults.at(
        place,
        'Wherever `when` holds this exception does too: the rule could never find anything.',
        [],
        true,
      );
    }
  });
  (stated.shows ?? []).forEach((name, index) => fact(name, `${at}/shows/${String(index)}`, false));
  if (stated.place !== undefined) fact(stated.place, `${at}/place`, false);
  for (const key of ['message', 'instead'] as const) {
    const template = readTemplate(stated[key]);
    if (!template.ok) faults.at(`${at}/${key}`, template.sentence);
    else for (const name of factsOf(template.segments)) fact(name, `${at}/${key}`, false);
  }
  if (/[{}]/u.test(stated.why)) {
    faults.at(
      `${at}/why`,
      '`why` is printed as it stands; facts are filled into `message` and `instead` only.',
    );
  }
  readHistory(stated, at, 'rule', faults);
  if (stated.replaced_by !== undefined && stated.until === undefined) {
    faults.at(`${at}/replaced_by`, 'A rule that another one replaces has an `until`.', [], true);
  }
  const cases = (given: readonly StatedCase[] | undefined, key: string): readonly Case[] =>
    (given ?? []).map((one, index) => readCase(one, `${at}/cases/${key}/${String(index)}`, fact, faults));
  const read = {
    finds: cases(stated.cases.finds, 'finds'),
    passes: cases(stated.cases.passes, 'passes'),
    asks: cases(stated.cases.asks, 'asks'),
  };
  if (faults.faults.length > before) return undefined;
  return {
    id: stated.id,
    topic: stated.topic,
    since: stated.since,
    ...(stated.until === undefined ? {} : { until: stated.until }),
    ...(stated.replaced_by === undefined ? {} : { replacedBy: stated.replaced_by }),
    judges: stated.judges,
    severity: stated.severity,
    from: stated.from,
    ...(stated.place === undefined ? {} : { place: stated.place }),
    when,
    unless,
    message: stated.message,
    instead: stated.instead,
    why: stated.why,
    source: stated.source,
    ...(stated.shows === undefined ? {} : { shows: stated.shows }),
    cases: read,
  };
}

function visibleFacts(kind: string, dictionary: FactDictionary): readonly string[] {
  const visible = visibleKinds(dictionary, kind);
  return Object.entries(dictionary.facts)
    .filter(([, entry]) => visible.has(entry.kind))
    .map(([name]) => name);
}

function listOf(unless: StatedRule['unless']): readonly Lines[] {
  if (unless === undefined) return [];
  return isList(unless) ? unless : [unless];
}

function isList(unless: readonly Lines[] | Lines): unless is readonly Lines[] {
  return Array.isArray(unless);
}

/** Whatever the order in which lines, words and ends are written. Lines that were refused are not there: none equals none. */
function areSame(one: readonly Line[], other: readonly Line[]): boolean {
  const form = (lines: readonly Line[]): string => JSON.stringify(lines.map(lineForm).sort());
  return form(one) === form(other);
}

function lineForm({ fact, test }: Line): string {
  if ('anyOf' in test) return JSON.stringify([fact, test.anyOf.map((word) => JSON.stringify(word)).sort()]);
  if ('known' in test) return JSON.stringify([fact, test.known]);
  const { min, max, above, below } = test.range;
  return JSON.stringify([fact, min, max, above, below]);
}

function readCase(
  stated: StatedCase,
  at: string,
  fact: (name: string, place: string, onKey: boolean) => FactEntry | undefined,
  faults: FaultList,
): Case {
  const read: Record<string, Word | readonly string[]> = {};
  for (const [name, value] of Object.entries(stated)) {
    const place = pointerTo(at, name);
    const entry = fact(name, place, true);
    if (entry === undefined) continue;
    if (isWords(value)) {
      if (entry.type !== 'words') faults.at(place, 'This fact has one value, not a list.');
      else if (value.every((word) => readValue(word, entry, place, faults) !== undefined)) read[name] = value;
    } else if (typeof value !== 'object') {
      const single = readValue(value, entry, place, faults);
      if (single !== undefined) read[name] = entry.type === 'words' ? [String(single)] : single;
    }
  }
  return read;
}

function isWords(value: StatedCase[string]): value is readonly string[] {
  return Array.isArray(value);
}
