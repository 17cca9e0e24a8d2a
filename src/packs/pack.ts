/** A word, count or yes/no that a fact may equal. */
export type Word = string | number | boolean;

/** Ends of a range, in the unit of the fact. `min` and `max` belong to it, `above` and `below` do not. */
export interface Bounds {
  readonly min?: number;
  readonly max?: number;
  readonly above?: number;
  readonly below?: number;
}

/** What one line asks of its fact. */
export type Test =
  { readonly anyOf: readonly Word[] } | { readonly range: Bounds } | { readonly known: boolean };

export interface Line {
  readonly fact: string;
  readonly test: Test;
}

export type RuleSeverity = 'stop' | 'hold' | 'note';
export type Stage = 'draft' | 'start' | 'release';

/** Where a rule or limit comes from. With `mark: memory` it was not read again when it was written down. */
export interface Source {
  /** `common`: common practice, with no published source. */
  readonly practice?: string;
  readonly standard?: string;
  readonly clause?: string;
  readonly document?: string;
  readonly revision?: string;
  readonly page?: string;
  readonly mark?: 'seen' | 'memory';
}

/** The facts of one made-up sheet; what is left out is unknown. Numbers are in the unit of the fact. */
export type Case = Readonly<Record<string, Word | readonly string[]>>;

export interface Cases {
  readonly finds: readonly Case[];
  readonly passes: readonly Case[];
  readonly asks: readonly Case[];
}

export interface Rule {
  readonly id: string;
  readonly topic: string;
  /** First version that holds the rule. */
  readonly since: string;
  /** First version that no longer holds it. */
  readonly until?: string;
  readonly replacedBy?: string;
  /** The kind of fact sheet that the rule is asked about. */
  readonly judges: string;
  readonly severity: RuleSeverity;
  /** First stage at which the rule judges; it judges at every later one too. */
  readonly from: Stage;
  /** Fact whose plan entry is the place of the finding; without it, the entry that the sheet describes. */
  readonly place?: string;
  /** All must hold. */
  readonly when: readonly Line[];
  /** Alternatives; the rule finds nothing when every line of one of them holds. */
  readonly unless: readonly (readonly Line[])[];
  readonly message: string;
  readonly instead: string;
  readonly why: string;
  readonly source: Source;
  readonly cases: Cases;
}

/** What a thing near the heat stands. A later layer may only tighten it. */
export interface Limit {
  readonly victim: string;
  readonly holdAboveCelsius?: number;
  readonly stopAboveCelsius?: number;
  /** Longer than `atMostSeconds` at `celsius` or more is over the limit. */
  readonly timeAbove?: TimeAbove;
  readonly atWork?: string;
  readonly source: Source;
  readonly note?: string;
}

/** What is added to a stated temperature, by what measures it. */
export interface Allowance {
  readonly means: string;
  readonly kelvin: number;
  readonly source: Source;
}

/** How far a kind of heat that is not computed is asked about. */
export interface Reach {
  readonly from: string;
  readonly mm: number;
  readonly source: Source;
}

export interface TimeAbove {
  readonly celsius: number;
  readonly atMostSeconds: number;
}

export interface Years {
  readonly from: number;
  readonly to: number;
}

/** What a vehicle pack is for. A part that is left out is not narrowed. */
export interface PackVehicle {
  readonly maker: string;
  readonly models: readonly string[];
  readonly bodies?: readonly string[];
  readonly years?: Years;
}

/** An operation as a provision names it: `section at B` is `{do: 'section', at: 'B'}`. */
export interface ProvidedOperation {
  readonly do: string;
  readonly extent?: 'whole' | 'part';
  readonly at?: string;
}

/** One statement of the maker's document: what a part shall, shall not or may get (ISO/IEC Directives, Part 2). */
export interface Provision {
  readonly part: string;
  readonly sides?: readonly string[];
  readonly bodies?: readonly string[];
  readonly years: Years;
  readonly document: string;
  readonly revision?: string;
  readonly published?: string;
  readonly page?: string;
  readonly shall: readonly ProvidedOperation[];
  readonly shallNot: readonly ProvidedOperation[];
  readonly may: readonly ProvidedOperation[];
  /** Hold for `shall` and `may`. */
  readonly conditions: readonly string[];
}

/** A loaded rule pack. Plain data: it goes into the bundle as JSON and comes out the same. */
export interface Pack {
  readonly name: string;
  readonly version: string;
  readonly released: boolean;
  readonly title: string;
  /** Number of the pack format. */
  readonly format: number;
  /** Number of the fact schema that the rules were written for. */
  readonly facts: number;
  readonly vehicle?: PackVehicle;
  readonly rules: readonly Rule[];
  readonly limits: readonly Limit[];
  readonly allowances: readonly Allowance[];
  readonly reaches: readonly Reach[];
  readonly provisions: readonly Provision[];
  /** `sha256:` and 64 hexadecimal digits. */
  readonly digest: string;
}
