import type { Limit, Pack, Provision, Rule, RuleSeverity } from '../pack.ts';
import { compareItems } from './compare-items.ts';
import type { ChangeKind, PackChange } from './pack-change.ts';

/** Only the severities in order. */
const ranks: Readonly<Record<RuleSeverity, number>> = { note: 0, hold: 1, stop: 2 };

/**
 * What differs from `before` to `after`, each as `packAt` gives a version. Rules come first, then limits, statements of the maker
 * and the other tables; in each the order of the packs. `whole` knows which rule took the place of which. A rule whose place another one takes is told once, as the new one.
 */
export function diffPacks(
  before: Pack,
  after: Pack,
  whole: Pick<Pack, 'rules'> = after,
): readonly PackChange[] {
  return [
    ...ruleChanges(before, after, whole),
    ...limitChanges(before, after),
    ...provisionChanges(before, after),
    ...compareItems(before, after),
  ];
}

function ruleChanges(before: Pack, after: Pack, whole: Pick<Pack, 'rules'>): readonly PackChange[] {
  const [old, now] = [byId(before.rules), byId(after.rules)];
  const changes: PackChange[] = [];
  const taken = new Set<string>();
  for (const rule of after.rules) {
    const same = old.get(rule.id);
    if (same !== undefined) {
      changes.push(...sameRule(same, rule));
      continue;
    }
    const replaced = before.rules.filter(
      ({ id }) => !now.has(id) && whole.rules.some((one) => one.id === id && one.replacedBy === rule.id),
    );
    for (const { id } of replaced) taken.add(id);
    changes.push(begun(rule, replaced));
  }
  for (const { id, severity } of before.rules) {
    if (now.has(id) || taken.has(id)) continue;
    changes.push({ kind: 'withdrawn', what: 'rule', name: id, detail: `was a ${severity}` });
  }
  return changes;
}

function begun(rule: Rule, replaced: readonly Rule[]): PackChange {
  const [first] = replaced;
  if (first === undefined) return { kind: 'added', what: 'rule', name: rule.id, detail: rule.severity };
  const difference = ranks[rule.severity] - Math.max(...replaced.map(({ severity }) => ranks[severity]));
  const kind = difference > 0 ? 'raised' : difference < 0 ? 'lowered' : 'changed';
  const names = replaced.map(({ id, severity }) => `${id} (${severity})`).join(', ');
  return { kind, what: 'rule', name: rule.id, detail: `${rule.severity}, takes the place of ${names}` };
}

function sameRule(old: Rule, now: Rule): readonly PackChange[] {
  const named = { what: 'rule', name: now.id } as const;
  const changes: PackChange[] = [];
  if (old.severity !== now.severity) {
    const kind = ranks[now.severity] > ranks[old.severity] ? 'raised' : 'lowered';
    changes.push({ ...named, kind, detail: `from ${old.severity} to ${now.severity}` });
  }
  const asks = ({ judges, from, when, unless }: Rule): string => JSON.stringify([judges, from, when, unless]);
  const says = ({ message, instead, why, source }: Rule): string =>
    JSON.stringify([message, instead, why, source]);
  if (asks(old) !== asks(now)) changes.push({ ...named, kind: 'changed', detail: 'asks something else' });
  else if (says(old) !== says(now)) changes.push({ ...named, kind: 'changed', detail: 'in its words only' });
  return changes;
}

function limitChanges(before: Pack, after: Pack): readonly PackChange[] {
  const changes: PackChange[] = [];
  for (const limit of after.limits) {
    const old = before.limits.find(({ victim }) => victim === limit.victim);
    if (old === undefined) {
      changes.push({ kind: 'added', what: 'limit', name: limit.victim, detail: limitWords(limit) });
    } else changes.push(...sameLimit(old, limit));
  }
  for (const { victim } of before.limits) {
    if (after.limits.some((limit) => limit.victim === victim)) continue;
    changes.push({ kind: 'withdrawn', what: 'limit', name: victim });
  }
  return changes;
}

function sameLimit(old: Limit, now: Limit): readonly PackChange[] {
  const [was, is] = [limitWords(old), limitWords(now)];
  if (was === is) return [];
  const ends = ({ holdAboveCelsius, stopAboveCelsius, timeAbove }: Limit): readonly number[] =>
    [holdAboveCelsius, stopAboveCelsius, timeAbove?.celsius, timeAbove?.atMostSeconds].map(
      (end) => end ?? Infinity,
    );
  const pairs = ends(now).map((end, index) => end - (ends(old)[index] ?? Infinity));
  const [lower, higher] = [pairs.some((one) => one < 0), pairs.some((one) => one > 0)];
  const kind = lower && !higher ? 'tightened' : higher && !lower ? 'loosened' : 'changed';
  return [{ kind, what: 'limit', name: now.victim, detail: `${is}; was ${was}` }];
}

function limitWords({ holdAboveCelsius, stopAboveCelsius, timeAbove }: Limit): string {
  const ends = [
    holdAboveCelsius === undefined ? undefined : `hold above ${String(holdAboveCelsius)} °C`,
    stopAboveCelsius === undefined ? undefined : `stop above ${String(stopAboveCelsius)} °C`,
    timeAbove === undefined
      ? undefined
      : `at most ${String(timeAbove.atMostSeconds)} s at ${String(timeAbove.celsius)} °C`,
  ];
  return ends.filter((end) => end !== undefined).join(', ');
}

function provisionChanges(before: Pack, after: Pack): readonly PackChange[] {
  const [old, now] = [before, after].map(
    ({ provisions }) => new Map(provisions.map((one) => [keyOf(one), one])),
  );
  const changes: PackChange[] = [];
  for (const [key, one] of now ?? []) {
    if (old?.has(key) !== true) changes.push(provisionChange('added', one));
  }
  for (const [key, one] of old ?? []) {
    if (now?.has(key) !== true) changes.push(provisionChange('withdrawn', one));
  }
  return changes;
}

/** All of it but its history: a statement that says anything else is another one. */
function keyOf({ since: _, until: __, ...one }: Provision): string {
  return JSON.stringify(one);
}

function provisionChange(kind: ChangeKind, one: Provision): PackChange {
  const { document, revision, page, years } = one;
  const said = (['shall', 'shallNot', 'may'] as const).flatMap((form) =>
    one[form].length === 0
      ? []
      : [`${form === 'shallNot' ? 'shall not' : form} ${one[form].map(operationWords).join(', ')}`],
  );
  const where = [document, revision === undefined ? undefined : `revision ${revision}`, page];
  const span = years.from === years.to ? String(years.from) : `${String(years.from)}-${String(years.to)}`;
  return {
    kind,
    what: 'provision',
    name: `${one.part}, ${span}`,
    detail: `${said.join('; ')} (${where.filter((word) => word !== undefined).join(', ')})`,
  };
}

function operationWords({ do: word, extent, at }: Provision['may'][number]): string {
  return [word, extent, at === undefined ? undefined : `at ${at}`]
    .filter((one) => one !== undefined)
    .join(' ');
}

function byId(rules: readonly Rule[]): ReadonlyMap<string, Rule> {
  return new Map(rules.map((rule) => [rule.id, rule]));
}
