import type { Fact } from './fact.ts';
import type { FactGroups, FactRecord } from './fact-groups.ts';
import type { FactSheet, SheetKind } from './sheet.ts';

type Head = Omit<FactSheet, 'facts' | 'own' | 'names'>;

/**
 * A sheet of which a group is derived when one of its facts is first asked for. Of all facts rules ask for about a quarter: most
 * stand in lines behind one that does not hold.
 */
export function lazySheet<Given extends readonly unknown[], Name extends string>(
  groups: FactGroups<Given, Name>,
  given: Given,
  head: Head,
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
  readonly #derived: (FactRecord | undefined)[] = [];
  #all: Record<string, Fact> | undefined = undefined;

  constructor(groups: FactGroups<Given, Name>, given: Given, head: Head) {
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
    for (let index = 0; index < this.#groups.count; index += 1) Object.assign(this.#all, this.#group(index));
    return this.#all;
  }

  own(name: string): Fact | undefined {
    if (this.#all !== undefined) return this.#all[name];
    // While groups are still being learnt, the answer is the next one to look into.
    let last: number | undefined;
    let index = this.#groups.groupOf(name);
    while (index !== undefined && index !== last) {
      const fact = this.#group(index)[name];
      if (fact !== undefined) return fact;
      last = index;
      index = this.#groups.groupOf(name);
    }
    return undefined;
  }

  names(): readonly string[] {
    return this.#groups.names ?? Object.keys(this.facts);
  }

  #group(index: number): FactRecord {
    return (this.#derived[index] ??= this.#groups.derive(index, this.#given));
  }
}
