import { lookUp } from '../facts/sheet.ts';
import type { FactSheet } from '../facts/sheet.ts';
import type { Fact, FactValue } from '../facts/fact.ts';
import type { Finding, UsedFact } from '../judge/finding.ts';
import type { FactDictionary } from '../packs/fact-dictionary.ts';
import { factEntry } from '../packs/fact-dictionary.ts';

/** What a fact was or is; without a value it is unknown, or beyond every number. */
export interface FactThen {
  readonly value?: FactValue;
  readonly unit?: string;
  readonly from: UsedFact['from'];
}

/** A fact that an earlier finding carries and that comes out otherwise today. */
export interface MovedFact {
  readonly rule: string;
  readonly part?: string;
  readonly pointer: string;
  readonly name: string;
  readonly then: FactThen;
  /** Absent when nothing in the plan has such a fact any more. */
  readonly now?: FactThen;
}

/** Of a change in the last digits, another processor is the reason and not another computation. */
const relativeTolerance = 1e-9;

/**
 * Holds the facts that earlier findings carry against those of today: first against the same finding of today, then, where it
 * is not found again, against the sheet that it was about. `kindOf` says which kind of sheet a rule judges.
 */
export function movedFacts(
  earlier: readonly Finding[],
  today: readonly Finding[],
  sheets: readonly FactSheet[],
  kindOf: (rule: string) => string | undefined,
  dictionary: FactDictionary,
): readonly MovedFact[] {
  const left = new Map<string, Finding[]>();
  for (const finding of today) left.set(keyOf(finding), [...(left.get(keyOf(finding)) ?? []), finding]);
  return earlier.flatMap((finding) => {
    const again = left.get(keyOf(finding))?.shift();
    const factNow =
      again === undefined ? fromSheets(finding, sheets, kindOf, dictionary) : fromFinding(again);
    return finding.facts.flatMap((fact): readonly MovedFact[] => {
      const now = factNow(fact.name);
      if (now !== undefined && isSame(fact, now)) return [];
      return [
        {
          rule: finding.rule,
          ...(finding.part === undefined ? {} : { part: finding.part }),
          pointer: finding.pointer,
          name: fact.name,
          then: shortOf(fact),
          ...(now === undefined ? {} : { now: shortOf(now) }),
        },
      ];
    });
  });
}

/** A finding by what it is about; its fingerprint is not asked, for another planish may make it otherwise. */
export function keyOf({ rule, part, pointer, asksUnknown }: Finding): string {
  return JSON.stringify([rule, part, pointer, asksUnknown]);
}

type FactNow = (name: string) => FactThen | undefined;

function fromFinding({ facts }: Finding): FactNow {
  return (name) => facts.find((fact) => fact.name === name);
}

function fromSheets(
  { rule, part, pointer }: Finding,
  sheets: readonly FactSheet[],
  kindOf: (rule: string) => string | undefined,
  dictionary: FactDictionary,
): FactNow {
  const kind = kindOf(rule);
  const about = sheets
    .filter((sheet) => sheet.part === part && (kind === undefined || sheet.kind === kind))
    .filter(({ at }) => pointer === at || pointer.startsWith(`${at}/`) || at.startsWith(`${pointer}/`))
    .toSorted((a, b) => nearness(b.at, pointer) - nearness(a.at, pointer));
  return (name) => {
    for (const sheet of about) {
      const fact = lookUp(sheet, name);
      if (fact !== undefined) return valueOf(fact, factEntry(dictionary, name)?.unit);
    }
    return undefined;
  };
}

/** The sheet at the place itself before those that hold it, and the nearest of those first. */
function nearness(at: string, pointer: string): number {
  return at === pointer ? Number.POSITIVE_INFINITY : pointer.startsWith(at) ? at.length : 0;
}

function valueOf(fact: Fact, unit: string | undefined): FactThen {
  if (!fact.known) return { from: 'unknown' };
  return { value: fact.value, ...(unit === undefined ? {} : { unit }), from: fact.from };
}

function shortOf({ value, unit, from }: FactThen): FactThen {
  const hasValue = value !== undefined && !isEndless(value);
  return { ...(hasValue ? { value } : {}), ...(hasValue && unit !== undefined ? { unit } : {}), from };
}

/** Where a value came from is no part of it, but for known and unknown. A report cannot write a number without end. */
function isSame(then: FactThen, now: FactThen): boolean {
  if ((then.from === 'unknown') !== (now.from === 'unknown')) return false;
  const [a, b] = [shortOf(then), shortOf(now)];
  if (typeof a.value === 'number' && typeof b.value === 'number') {
    const size = Math.max(Math.abs(a.value), Math.abs(b.value));
    return a.unit === b.unit && Math.abs(a.value - b.value) <= relativeTolerance * size;
  }
  return JSON.stringify(a.value) === JSON.stringify(b.value);
}

function isEndless(value: FactValue): boolean {
  return typeof value === 'number' && !Number.isFinite(value);
}
