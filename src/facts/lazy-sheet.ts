import type { Fact } from './fact.ts';
import type { FactSheet, SheetKind } from './sheet.ts';

type FactRecord = Readonly<Record<string, Fact>>;

/**
 * Facts that are derived together, group by group: all of one kind of sheet. The values depend on what is given, the names
 * never do.
 */
export interface FactGroups<Given extends readonly unknown[], Name extends string> {
  readonly groups: readonly ((...given: Given) => FactRecord)[];
  /** In which group each name is; learnt from the first sheet. */
  readonly groupOf: Map<string, number>;
  /** The names, likewise. */
  readonly names: string[];
  /** Never there: it lets the compiler see that the groups hold every name of the kind. */
  readonly covers?: (name: Name) => void;
}

type NameIn<Group> = Group extends (...given: never[]) => infer Facts ? keyof Facts & string : never;

export function factGroups<
  Given extends readonly unknown[],
  Groups extends readonly ((...given: Given) => FactRecord)[],
>(...groups: Groups): FactGroups<Given, NameIn<Groups[number]>> {
  return { groups, groupOf: new Map(), names: [] };
}

/**
 * A sheet of which a group is derived when one of its facts is first asked for. Of all facts rules ask for about a quarter: most
 * stand in lines behind one that does not hold.
 */
export function lazySheet<Given extends readonly unknown[], Name extends string>(
  groups: FactGroups<Given, Name>,
  given: Given,
  head: Omit<FactSheet, 'facts' | 'own' | 'names'>,
): FactSheet {
  return new LazySheet(groups, given, head);
}

/** A class and not closures: V8 keeps the last functions that were called, and with them all that they hold. */
class LazySheet<Given extends readonly unknown[], Name extends string> implements FactSheet {
  readonly kind: SheetKind;
  readonly at: string;
  readonly standsOn: readonly FactSheet[];
  declare readonly part?: string;
  declare readonly operation?: string;
  readonly #groups: FactGroups<Given, Name>;
  readonly #given: Given;
  readonly #made: (FactRecord | undefined)[] = [];
  #all: Record<string, Fact> | undefined = undefined;

  constructor(
    groups: FactGroups<Given, Name>,
    given: Given,
    head: Omit<FactSheet, 'facts' | 'own' | 'names'>,
  ) {
    this.kind = head.kind;
    this.at = head.at;
    this.standsOn = head.standsOn;
    if (head.part !== undefined) this.part = head.part;
    if (head.operation !== undefined) this.operation = head.operation;
    this.#groups = groups;
    this.#given = given;
  }

  get facts(): FactRecord {
    if (this.#all !== undefined) return this.#all;
    this.#all = {};
    const { groups, groupOf, names } = this.#groups;
    for (const index of groups.keys()) Object.assign(this.#all, this.#group(index));
    if (names.length === 0) {
      learn(groupOf, this.#made);
      names.push(...groupOf.keys());
    }
    return this.#all;
  }

  own(name: string): Fact | undefined {
    const { groupOf, names } = this.#groups;
    if (this.#all !== undefined || names.length === 0) return this.facts[name];
    const index = groupOf.get(name);
    return index === undefined ? undefined : this.#group(index)?.[name];
  }

  names(): readonly string[] {
    const { names } = this.#groups;
    return names.length === 0 ? Object.keys(this.facts) : names;
  }

  #group(index: number): FactRecord | undefined {
    return (this.#made[index] ??= this.#groups.groups[index]?.(...this.#given));
  }
}

/** Of two groups with one name the later counts, as where they are put together. */
function learn(groupOf: Map<string, number>, made: readonly (FactRecord | undefined)[]): void {
  for (const [index, facts] of made.entries()) {
    for (const name of Object.keys(facts ?? {})) groupOf.set(name, index);
  }
}
