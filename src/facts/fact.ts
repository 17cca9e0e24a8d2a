/** Where a value came from; it says how sure the value is and is shown beside it. */
export type Provenance = 'stated' | 'table' | 'computed' | 'assumed';

export type FactValue = string | number | boolean | readonly string[];

export interface KnownFact {
  readonly known: true;
  /** Numbers are in the unit that `facts.schema.json` gives for this fact. A list holds words, any of which may match. */
  readonly value: FactValue;
  readonly from: Provenance;
  /** JSON pointer of the plan entry that states the value or stands nearest to it. */
  readonly at?: string;
  /** One sentence for the report: the table, the method, or what was assumed and why. */
  readonly note?: string;
  /** JSON pointers of the entries that contradict the one at `at`; a finding on this fact names them as well. */
  readonly against?: readonly string[];
}

export interface UnknownFact {
  readonly known: false;
  /** One sentence: why it is unknown and what would settle it. */
  readonly reason: string;
  readonly at?: string;
  /** The words that it can only be one or some of; left out where it may be any. */
  readonly among?: readonly string[];
}

export type Fact = KnownFact | UnknownFact;
