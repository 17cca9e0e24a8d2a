import type { FactValue, Provenance } from '../facts/fact.ts';

/** *stop* must not be done; *hold* must be answered before sign-off; *note* fails nothing. */
export type Severity = 'stop' | 'hold' | 'note';

/** A fact that the rule looked at, with what the report needs to show it. */
export interface UsedFact {
  readonly name: string;
  /** Absent when unknown; numbers in `unit`. */
  readonly value?: FactValue;
  readonly unit?: string;
  readonly from: Provenance | 'unknown';
  /** How the value came about, or why it is unknown. */
  readonly note?: string;
}

/** A named person's accepted *hold*; the finding stays visible. */
export interface AcceptedDeviation {
  readonly by: string;
  readonly role: string;
  readonly date: string;
  readonly reason: string;
  readonly expires: string;
}

/** One thing that one rule found on one sheet: the only thing `judge` gives and `report` takes. */
export interface Finding {
  readonly rule: string;
  readonly pack: string;
  readonly severity: Severity;
  /** Id of the part, as the plan writes it. */
  readonly part?: string;
  /** What the shop calls the part. */
  readonly partName?: string;
  /** The operation word, when the finding concerns one operation. */
  readonly operation?: string;
  /** JSON pointer of that operation. */
  readonly operationAt?: string;
  /** JSON pointer of the primary place in the plan. */
  readonly pointer: string;
  /** JSON pointers of the entries that contradict it; absent when the finding is about one entry. */
  readonly against?: readonly string[];
  readonly message: string;
  readonly instead: string;
  readonly why: string;
  readonly source: string;
  readonly facts: readonly UsedFact[];
  readonly assumptions: readonly string[];
  /** True for the hold that a rule gives when what it asks is unknown. */
  readonly asksUnknown: boolean;
  /** True for a hold that stands where a stop might: the stop hangs on what is unknown here. No deviation accepts it. */
  readonly standsForStop: boolean;
  /** Identity of the finding across edits: made from rule, part, operation and pointer-free facts, never from lines. */
  readonly fingerprint: string;
  readonly deviation?: AcceptedDeviation;
}

/** A general stop or hold that a cited provision of the maker lifted; printed, never silent. */
export interface Lift {
  readonly rule: string;
  readonly pack: string;
  readonly part?: string;
  readonly operation?: string;
  readonly pointer: string;
  /** What lifted it: document, revision, place, and the pack that states it. */
  readonly by: string;
}
