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
