import type { Fact, UnknownFact } from '../facts/fact.ts';
import type { Bounds, Line, Test } from '../packs/pack.ts';

export type Truth = 'true' | 'false' | 'unknown';

/**
 * Share of a limit by which a value may miss it and still count as standing at it. It covers the rounding of a unit
 * conversion (217 ksi in MPa) and nothing a gauge could read.
 */
export const relativeTolerance = 1e-9;

/**
 * Whether a fact passes the test of a line. A known list holds as soon as one of its words does.
 * Throws TypeError when the fact's value is of another type than the test: to call that `false` would be to pass a plan
 * because of a defect.
 */
export function truthOf(test: Test, fact: Fact): Truth {
  if ('known' in test) return fact.known === test.known ? 'true' : 'false';
  if (!fact.known) return isOutOfQuestion(test, fact) ? 'false' : 'unknown';
  const value = fact.value;
  if ('range' in test) {
    if (typeof value !== 'number' || Number.isNaN(value)) throw mismatch('a number', value);
    return isWithin(test.range, value) ? 'true' : 'false';
  }
  const type = typeof test.anyOf[0];
  if (typeof value === 'object') {
    if (type !== 'string') throw mismatch(`a ${type}`, value);
    for (const word of value) if (test.anyOf.includes(word)) return 'true';
    return 'false';
  }
  if (typeof value !== type || Number.isNaN(value)) throw mismatch(`a ${type}`, value);
  return test.anyOf.includes(value) ? 'true' : 'false';
}

/** What is steel for certain, of whatever class, is no aluminium: a rule that asks for that need not wait. */
function isOutOfQuestion(test: Test, { among }: UnknownFact): boolean {
  if (among === undefined || !('anyOf' in test)) return false;
  return test.anyOf.every((word) => typeof word === 'string' && !among.includes(word));
}

/**
 * All lines together. One false line settles it, whatever else is unknown and in whatever order the lines stand.
 * With no line it is true.
 */
export function truthOfAll(lines: readonly Line[], factOf: (name: string) => Fact): Truth {
  let truth: Truth = 'true';
  for (const line of lines) {
    const one = truthOf(line.test, factOf(line.fact));
    if (one === 'false') return 'false';
    if (one === 'unknown') truth = 'unknown';
  }
  return truth;
}

/** A value within the tolerance of a limit stands at it: inside `min` and `max`, outside `above` and `below`. */
export function isWithin(bounds: Bounds, value: number): boolean {
  const { min, max, above, below } = bounds;
  if (min !== undefined && value < min && !isAt(min, value)) return false;
  if (max !== undefined && value > max && !isAt(max, value)) return false;
  if (above !== undefined && (value <= above || isAt(above, value))) return false;
  if (below !== undefined && (value >= below || isAt(below, value))) return false;
  return true;
}

function isAt(limit: number, value: number): boolean {
  // An infinite value (no limit is set, so the margin is endless) stands at no limit.
  if (!Number.isFinite(value)) return false;
  return Math.abs(value - limit) <= relativeTolerance * Math.max(Math.abs(limit), Math.abs(value));
}

function mismatch(expected: string, value: unknown): TypeError {
  return new TypeError(`the fact should be ${expected} but is ${JSON.stringify(value)}`);
}
