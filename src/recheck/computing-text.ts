import { countOf } from '../report/count-words.ts';
import type { Paint } from '../report/paint.ts';
import { visibleText } from '../report/visible-text.ts';
import { wrapText } from '../report/wrap-text.ts';
import { factTexts } from './fact-text.ts';
import type { MovedFact } from './moved-facts.ts';
import type { Computing } from './rechecked-plan.ts';
import type { RecheckReport } from './recheck-report.ts';

const indent = '  ';

interface MovedIn extends MovedFact {
  readonly file: string;
}

/** What this planish computes otherwise than the records: whose they are, which facts moved, which verdicts come out otherwise. */
export function computingLines(
  { computedDifferently: plans, left, planish, factSchema }: RecheckReport,
  { columns, mostPlans }: { readonly columns: number; readonly mostPlans: number },
  paint: Paint,
): readonly string[] {
  const lines: string[] = [];
  const add = (text: string, lead = indent): void => {
    lines.push(...wrapText(visibleText(text), columns, `${lead}${indent}`, lead));
  };
  const few = <Item>(items: readonly Item[]): readonly Item[] =>
    mostPlans === 0 ? items : items.slice(0, mostPlans);
  const more = (items: readonly unknown[], lead: string): void => {
    const count = items.length - few(items).length;
    if (count > 0) add(`and ${String(count)} more; --max-plans 0 names all.`, lead);
  };
  if (plans.length > 0) lines.push('', paint.strong('Computed differently'), '');
  const here = `planish ${planish}, fact schema ${String(factSchema)}`;
  for (const [record, count] of recordsOf(plans))
    add(`${countOf(count, 'plan')}: ${record}; this is ${here}.`);

  const moved = grouped(
    plans.flatMap(({ file, computing }) => computing.moved.map((one) => ({ ...one, file }))),
    ({ name }) => name,
  );
  if (moved.size > 0) {
    add(`Facts that moved, of those that the findings of the report carry:`);
    for (const [name, all] of moved) {
      add(`${name}, ${countOf(new Set(all.map(({ file }) => file)).size, 'plan')}:`, `${indent}${indent}`);
      for (const one of few(all)) add(movedText(one), `${indent}${indent}${indent}`);
      more(all, `${indent}${indent}${indent}`);
    }
  } else if (
    plans.some(({ computing }) => computing.by === 'report' && computing.verdictAgain !== undefined)
  ) {
    add('No fact that the findings of the report carry moved.');
  }
  if (plans.some(({ computing }) => computing.by === 'sign-off' && computing.isOther))
    add('Which facts moved since a signature, only a report of then can tell: give it with --report.');

  const others = plans.flatMap((plan) => otherwise(plan).map((text) => `${plan.file}: ${text}`));
  for (const text of few(others)) add(text);
  more(others, indent);
  if (left.length > 0) {
    lines.push('', paint.strong('In the report, and not among these plans'), '');
    for (const file of few(left)) add(file);
    more(left, indent);
  }
  return lines;
}

/** Whose the records are, by their words. */
function recordsOf(plans: RecheckReport['computedDifferently']): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { computing } of plans) {
    const { by, planish, facts } = computing;
    const words = [
      `${by === 'report' ? 'the report is' : 'the sign-off is'} of`,
      ...(planish === undefined ? [] : [`planish ${planish}${facts === undefined ? '' : ','}`]),
      ...(facts === undefined ? [] : [`fact schema ${String(facts)}`]),
    ].join(' ');
    counts.set(words, (counts.get(words) ?? 0) + 1);
  }
  return counts;
}

function movedText({ file, part, rule, then, now }: MovedIn): string {
  const [before, after] = factTexts(then, now);
  return `${file}${part === undefined ? '' : `, ${part}`}: ${before} then, ${after} now (${rule}).`;
}

function otherwise({ computing }: { readonly computing: Computing }): readonly string[] {
  const { verdictThen: then, verdictAgain: again, gone, come, remarks } = computing;
  return [
    ...remarks,
    ...(then === again || then === undefined || again === undefined
      ? []
      : [`${then} in the report; by the same rules ${again} today.`]),
    ...(gone.length === 0 ? [] : [`not found any more: ${[...new Set(gone)].join(', ')}.`]),
    ...(come.length === 0 ? [] : [`not found then: ${[...new Set(come)].join(', ')}.`]),
  ];
}

function grouped<Item>(
  items: readonly Item[],
  keyOf: (item: Item) => string,
): ReadonlyMap<string, readonly Item[]> {
  const groups = new Map<string, Item[]>();
  for (const item of items) {
    const group = groups.get(keyOf(item));
    if (group === undefined) groups.set(keyOf(item), [item]);
    else group.push(item);
  }
  return new Map([...groups].sort(([a], [b]) => (a < b ? -1 : 1)));
}
