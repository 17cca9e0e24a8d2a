import type { CheckTrigger, DayOrder } from '../facts/context.ts';
import type { WeldWindow } from '../joint/weld-window.ts';
import type { PackPlace } from './pack-fault.ts';

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
  /** Facts whose numbers stand with the finding beside those that it asks or speaks of. */
  readonly shows?: readonly string[];
  /** Left out where they were proved ahead: of the packs that are built in. */
  readonly cases?: Cases;
}

/** Versions that hold something: from the first, up to but without the last; open where left out. */
export interface History {
  readonly since?: string;
  readonly until?: string;
}

/** What a thing near the heat stands. A later layer may only tighten it. */
export interface Limit extends History {
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
export interface Allowance extends History {
  readonly means: string;
  readonly kelvin: number;
  readonly source: Source;
}

/** How far a kind of heat that is not computed is asked about. */
export interface Reach extends History {
  readonly from: string;
  readonly mm: number;
  readonly source: Source;
}

/** Usual settings of a resistance spot, with where they come from. */
export interface StatedWindow extends WeldWindow, History {
  readonly source: Source;
  readonly note?: string;
}

/** Tolerance of a dimension of the body where the plan states none. A later layer may only tighten it. */
export interface Tolerance extends History {
  readonly of: 'point' | 'opening';
  readonly atMostMm: number;
  readonly source: Source;
  readonly note?: string;
}

/** What of a plan's work asks for which check after the repair. A later layer adds its own. */
export interface Trigger extends CheckTrigger, History {
  readonly source: Source;
  readonly note?: string;
}

/** What has to come before what. A later layer adds its own. */
export interface Order extends DayOrder, History {
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

/** Identification numbers, both ends included. */
export interface VinRange {
  readonly from: string;
  readonly to: string;
}

/** What a vehicle pack is for. A part that is left out is not narrowed. */
export interface PackVehicle {
  readonly maker: string;
  readonly models: readonly string[];
  readonly bodies?: readonly string[];
  readonly years?: Years;
  readonly vins?: VinRange;
}

/** Vehicles that a pack was for until a version. */
export interface FormerVehicle {
  readonly until: string;
  readonly vehicle: PackVehicle;
}

/** An operation as a provision names it: `section at B` is `{do: 'section', at: 'B'}`. */
export interface ProvidedOperation {
  readonly do: string;
  readonly extent?: 'whole' | 'part';
  readonly at?: string;
}

/** The parts and vehicles that an entry of a vehicle pack is about; the bodies are those of the pack when left out. */
export interface Applies {
  /** Kind of part. */
  readonly part: string;
  readonly sides?: readonly string[];
  readonly bodies?: readonly string[];
  readonly years: Years;
  readonly vins?: VinRange;
}

/** Where the maker's document says it. */
export interface Cited {
  readonly document: string;
  readonly revision?: string;
  readonly published?: string;
  readonly page?: string;
}

/** What the maker's document says that a part is. */
export interface PackPart extends Applies, Cited, History {
  readonly grade?: string;
  readonly tensileMpa?: number;
  /** The class as a word; with a grade or strength, the strongest counts. */
  readonly class?: string;
  readonly thicknessMm?: number;
  readonly onePiece?: boolean;
  /** Kinds of part that hide it. */
  readonly under: readonly string[];
}

/** A document, or one revision of it, that another one took the place of. */
export interface SupersededDocument extends History {
  readonly document: string;
  readonly revision?: string;
  readonly by: { readonly document: string; readonly revision?: string; readonly published?: string };
}

/** A rule of a layer below that this pack takes more seriously. */
export interface Raise extends History {
  readonly rule: string;
  readonly to: 'hold' | 'stop';
  readonly why: string;
  readonly source: Source;
}

/** A version that was released; its digest is that of the canonical form. */
export interface Release {
  readonly version: string;
  /** ISO 8601 calendar date. */
  readonly date: string;
  /** Number of the fact schema that it was written for. */
  readonly facts: number;
  readonly digest: string;
  readonly reasons: readonly string[];
}

/** From the bottom up: a later layer may forbid more and never less. */
export const packLayers = ['general', 'market', 'vehicle', 'shop'] as const;
export type PackLayer = (typeof packLayers)[number];

/** One statement of the maker's document: what a part shall, shall not or may get (ISO/IEC Directives, Part 2). */
export interface Provision extends Applies, Cited, History {
  readonly shall: readonly ProvidedOperation[];
  readonly shallNot: readonly ProvidedOperation[];
  readonly may: readonly ProvidedOperation[];
  /** Hold for `shall` and `may`. */
  readonly conditions: readonly string[];
}

/** A statement that nobody has read in the maker's document yet (`says: ?`). It takes part in nothing. */
export interface OpenProvision {
  /** Kind of part. */
  readonly part: string;
  /** As it is written: `section at B`. */
  readonly operation: string;
  readonly place: PackPlace;
}

/**
 * A loaded rule pack with its whole history. Plain data: it goes into the bundle as JSON and comes out the same. What
 * one version of it holds, `packAt` says.
 */
export interface Pack {
  readonly name: string;
  /** The newest version that the files give, released or not. */
  readonly version: string;
  /** Whether `version` is a release, proved by its digest. */
  readonly released: boolean;
  readonly title: string;
  /** Number of the pack format. */
  readonly format: number;
  /** Number of the fact schema that the rules were written for. */
  readonly facts: number;
  readonly layer?: PackLayer;
  /** Markets of a market pack, by the words of the plan. */
  readonly markets?: readonly string[];
  readonly vehicle?: PackVehicle;
  /** The oldest first. */
  readonly vehicleBefore?: readonly FormerVehicle[];
  readonly rules: readonly Rule[];
  readonly limits: readonly Limit[];
  readonly allowances: readonly Allowance[];
  readonly reaches: readonly Reach[];
  readonly windows: readonly StatedWindow[];
  /** Left out when the pack states none. */
  readonly tolerances?: readonly Tolerance[];
  /** Left out when the pack states none. */
  readonly triggers?: readonly Trigger[];
  readonly orders?: readonly Order[];
  readonly provisions: readonly Provision[];
  /** Left out when every statement is filled in. */
  readonly open?: readonly OpenProvision[];
  readonly parts?: readonly PackPart[];
  readonly documents?: readonly SupersededDocument[];
  readonly raises?: readonly Raise[];
  /** The oldest first. */
  readonly releases?: readonly Release[];
  /** Digest of `version`: `sha256:` and 64 hexadecimal digits. */
  readonly digest: string;
  /** Where things stand that only show as wrong beside other packs, by `placeKey`; left out of what comes with planish. */
  readonly places?: Readonly<Record<string, PackPlace>>;
}

/** Key of `Pack.places`. */
export function placeKey(
  what: 'rule' | 'limit' | 'allowance' | 'reach' | 'tolerance' | 'raise' | 'provision' | 'pack',
  name: string | number,
): string {
  return `${what} ${String(name)}`;
}
