export type FactType = 'word' | 'words' | 'text' | 'yes-no' | 'count' | 'number';

/** What is known of a fact before any plan is read; generated from `schemas/facts.schema.json`. */
export interface FactEntry {
  /** The kind of sheet that holds it. */
  readonly kind: string;
  readonly type: FactType;
  /** All words that the fact may have; absent when the list is open. */
  readonly words?: readonly string[];
  /** What the trade writes for some of the words, as in a plan. */
  readonly synonyms?: Readonly<Record<string, string>>;
  /** Unit in which a number is held. */
  readonly unit?: string;
  /** The kind of quantity, by the names of `quantity/dimension.ts`. */
  readonly dimension?: string;
  readonly title?: string;
  /** The keys of a plan that state it, where they are few. */
  readonly keys?: readonly string[];
  /** Known on every sheet. */
  readonly alwaysKnown?: boolean;
  readonly description: string;
}

export interface FactDictionary {
  readonly version: number;
  readonly facts: Readonly<Record<string, FactEntry>>;
  readonly kinds: Readonly<Record<string, { readonly standsOn: readonly string[] }>>;
}

/** `Object.hasOwn` keeps a pack's `constructor` or `__proto__` from being found. */
export function factEntry(dictionary: FactDictionary, name: string): FactEntry | undefined {
  return Object.hasOwn(dictionary.facts, name) ? dictionary.facts[name] : undefined;
}

/** The kinds whose facts a sheet of `kind` sees: its own and, all the way down, those that it stands on. */
export function visibleKinds(dictionary: FactDictionary, kind: string): ReadonlySet<string> {
  const seen = new Set<string>();
  const open = [kind];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (seen.has(next) || !Object.hasOwn(dictionary.kinds, next)) continue;
    seen.add(next);
    open.push(...(dictionary.kinds[next]?.standsOn ?? []));
  }
  return seen;
}
