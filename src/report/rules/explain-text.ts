import type { ExplainedRule, Outcome, SeenLine } from '../../judge/explain-sheets.ts';
import type { FactValue } from '../../facts/fact.ts';
import { showFacts } from '../../judge/show-facts.ts';
import type { FactDictionary } from '../../packs/fact-dictionary.ts';
import { factEntry } from '../../packs/fact-dictionary.ts';
import type { Place } from '../../plan/source-text.ts';
import { countOf } from '../count-words.ts';
import { testWords } from './line-words.ts';
import { visibleText } from '../visible-text.ts';
import { wrapText } from '../wrap-text.ts';

/** What is shown of one operation or part: each sheet with the rules that were put to it. */
export interface Explanation {
  readonly file: string;
  /** The part, and the operation where one was asked for. */
  readonly of: string;
  readonly stage: string;
  readonly verdict: string;
  readonly packs: readonly string[];
  readonly asOf: string;
  readonly sheets: readonly {
    readonly kind: string;
    readonly place: Place;
    readonly rules: readonly ExplainedRule[];
  }[];
}

const titles: readonly (readonly [outcome: Outcome, title: string])[] = [
  ['failed', 'Could not be asked'],
  ['found', 'Found'],
  ['unknown', 'Could not tell, because something is unknown'],
  ['lifted', 'Not found, because an exception holds'],
  ['passed', 'Not found'],
  ['later stage', 'Not asked before a later stage'],
];

const deep = '     ';

/** Every rule that was asked, what came of it, and what it saw; of a rule that passed, the lines that were not so. */
export function explainText(explanation: Explanation, dictionary: FactDictionary, columns: number): string {
  const { file, of, stage, verdict, packs, asOf, sheets } = explanation;
  const head = `${of}, stage ${stage}, as of ${asOf}, by ${packs.join('; ')}. The plan is ${verdict}.`;
  const lines = [visibleText(file), ...wrapText(visibleText(head), columns, '  ')];
  for (const { kind, place, rules } of sheets) {
    const asked = rules.filter(({ outcome }) => outcome !== 'later stage').length;
    const title = `${kind.slice(0, 1).toUpperCase()}${kind.slice(1)}, line ${String(place.line)}: ${countOf(asked, 'rule')} asked`;
    lines.push('', title, '='.repeat(title.length));
    for (const [outcome, name] of titles) {
      const some = rules.filter((rule) => rule.outcome === outcome);
      if (some.length === 0) continue;
      lines.push('', `${name} (${String(some.length)})`);
      for (const rule of some) lines.push(...ruleLines(rule, dictionary, columns));
    }
  }
  return `${lines.join('\n')}\n`;
}

function ruleLines(rule: ExplainedRule, dictionary: FactDictionary, columns: number): readonly string[] {
  const { outcome, severity, pack, from } = rule;
  const id = pack === 'general' ? rule.rule : `${rule.rule} (${pack})`;
  const later = outcome === 'later stage' ? `, from ${from}` : '';
  const lines = [visibleText(`  ${severity} ${id}${later}`)];
  const add = (seen: SeenLine, lead = ''): void => {
    lines.push(...wrapText(visibleText(`${lead}${seenWords(seen, dictionary)}`), columns, `${deep}  `, deep));
  };
  const when = outcome === 'passed' ? rule.when.filter(({ truth }) => truth === 'false') : rule.when;
  for (const seen of when) add(seen);
  if (outcome === 'passed') return lines;
  for (const one of rule.unless) {
    if (outcome === 'lifted' && one.some(({ truth }) => truth !== 'true')) continue;
    const shown = outcome === 'lifted' ? one : one.filter(({ truth }) => truth !== 'true');
    for (const seen of shown) add(seen, outcome === 'lifted' ? 'lifted, as ' : 'no exception: ');
  }
  return lines;
}

const marks = { true: 'so', false: 'not so', unknown: 'unknown' } as const;

/** `part.class: press-hardened (from a table); asked for mild or high-strength: not so`. */
function seenWords({ line, fact, truth }: SeenLine, dictionary: FactDictionary): string {
  const unit = factEntry(dictionary, line.fact)?.unit;
  const asked = `asked for ${testWords(line.test, unit)}: ${marks[truth]}`;
  if (!fact.known) return `${line.fact}: unknown (${fact.reason.replace(/\.$/u, '')}); ${asked}`;
  const bounds = 'range' in line.test ? { bounds: line.test.range } : {};
  const shown = { name: line.fact, value: fact.value, ...(unit === undefined ? {} : { unit }), ...bounds };
  const text = isBoundless(fact.value) ? 'no limit is set' : (showFacts([shown]).get(line.fact) ?? '');
  return `${line.fact}: ${text} (${fact.from === 'table' ? 'from a table' : fact.from}); ${asked}`;
}

/** A margin over a limit that nobody sets lies under every number. JSON has none for it and says null. */
function isBoundless(value: FactValue): boolean {
  return value === Number.NEGATIVE_INFINITY;
}

/** The same as JSON; numbers in the unit of their fact. */
export function explainJson(explanation: Explanation, dictionary: FactDictionary): string {
  const { of, verdict, packs, asOf, sheets, ...rest } = explanation;
  const seen = ({ line, fact, truth }: SeenLine): object => {
    const unit = factEntry(dictionary, line.fact)?.unit;
    return {
      fact: line.fact,
      asked: testWords(line.test, unit),
      holds: truth,
      ...(fact.known ? { value: isBoundless(fact.value) ? null : fact.value, from: fact.from } : { unknown: fact.reason }),
      ...(fact.known && unit !== undefined ? { unit } : {}),
      ...(fact.known && fact.note !== undefined ? { note: fact.note } : {}),
    };
  };
  const shown = {
    ...rest,
    explains: of,
    verdict,
    judged_by: packs,
    as_of: asOf,
    sheets: sheets.map(({ kind, place, rules }) => ({
      kind,
      line: place.line,
      column: place.column,
      rules: rules.map(({ when, unless, ...rule }) => ({
        ...rule,
        when: when.map(seen),
        unless: unless.map((lines) => lines.map(seen)),
      })),
    })),
  };
  return `${JSON.stringify({ explanation: shown }, undefined, 2)}\n`;
}
