import type { Fact, FactValue, KnownFact, Provenance, UnknownFact } from './fact.ts';

export function known(value: FactValue, from: Provenance, at?: string, note?: string): KnownFact {
  // Written out, not spread: a plan has thousands of facts.
  if (note === undefined) {
    return at === undefined ? { known: true, value, from } : { known: true, value, from, at };
  }
  return at === undefined ? { known: true, value, from, note } : { known: true, value, from, at, note };
}

/** A value that the plan states in so many words. */
export function stated(value: FactValue, at?: string): KnownFact {
  return known(value, 'stated', at);
}

export function computed(value: FactValue, at?: string, note?: string): KnownFact {
  return known(value, 'computed', at, note);
}

/** What two or more entries of the plan say against each other: a finding names all their lines. */
export function contradicted(value: FactValue, at: string, against: readonly string[]): KnownFact {
  return against.length === 0 ? computed(value, at) : { known: true, value, from: 'computed', at, against };
}

/** Whether entries contradict the one at a place: those that do, none when it stands alone. */
export function contradictedBy(at: string, against: readonly string[]): KnownFact {
  return contradicted(against.length > 0, at, against);
}

/** A value taken from a table of common knowledge; the note names it. */
export function tabled(value: FactValue, note: string, at?: string): KnownFact {
  return known(value, 'table', at, note);
}

/** A value that nobody stated; the note says why it was taken. */
export function assumed(value: FactValue, note: string, at?: string): KnownFact {
  return known(value, 'assumed', at, note);
}

export function unknown(reason: string, at?: string): UnknownFact {
  return at === undefined ? { known: false, reason } : { known: false, reason, at };
}

export function statedOr(value: FactValue | undefined, at: string, reason: string): Fact {
  return value === undefined ? unknown(reason, at) : stated(value, at);
}

export function computedOr(value: FactValue | undefined, at: string, reason: string): Fact {
  return value === undefined ? unknown(reason, at) : computed(value, at);
}
