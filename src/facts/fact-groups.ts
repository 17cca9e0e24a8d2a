import type { Fact } from './fact.ts';

export type FactRecord = Readonly<Record<string, Fact>>;

type Group<Given extends readonly unknown[]> = (...given: Given) => FactRecord;

/**
 * Facts that are derived together, group by group: all of one kind of sheet. The values depend on what is given, the names
 * never do; in which group a name is, is learnt when a group is first derived.
 */
export class FactGroups<Given extends readonly unknown[], Name extends string> {
  /** Never there: it lets the compiler see that the groups hold every name of the kind. */
  declare readonly covers?: (name: Name) => void;
  readonly #groups: readonly Group<Given>[];
  readonly #prefixes: readonly string[];
  readonly #groupOf = new Map<string, number>();
  readonly #names: string[] = [];
  #learnt = 0;

  constructor(prefixes: readonly string[], groups: readonly Group<Given>[]) {
    this.#prefixes = prefixes;
    this.#groups = groups;
  }

  get count(): number {
    return this.#groups.length;
  }

  /** Every name; undefined until every group has been derived once. */
  get names(): readonly string[] | undefined {
    return this.#learnt === this.#groups.length ? this.#names : undefined;
  }

  /** The group that holds the name: for sure, or as the next that could. Undefined when none does. */
  groupOf(name: string): number | undefined {
    const group = this.#groupOf.get(name);
    if (group !== undefined || this.#learnt === this.#groups.length) return group;
    return this.#prefixes.some((prefix) => name.startsWith(prefix)) ? this.#learnt : undefined;
  }

  derive(index: number, given: Given): FactRecord {
    const facts = this.#groups[index]?.(...given) ?? {};
    if (index === this.#learnt) this.#learn(facts);
    return facts;
  }

  #learn(facts: FactRecord): void {
    for (const name of Object.keys(facts)) {
      if (this.#groupOf.has(name)) throw new Error(`two groups of facts hold ${name}`);
      this.#groupOf.set(name, this.#learnt);
      this.#names.push(name);
    }
    this.#learnt += 1;
  }
}

type NameIn<One> = One extends (...given: never[]) => infer Facts ? keyof Facts & string : never;

/** `prefixes`: how the names of all the groups begin, `operation.`. */
export function factGroups<
  Given extends readonly unknown[],
  Groups extends readonly ((...given: Given) => FactRecord)[],
>(prefixes: readonly string[], ...groups: Groups): FactGroups<Given, NameIn<Groups[number]>> {
  return new FactGroups(prefixes, groups);
}
