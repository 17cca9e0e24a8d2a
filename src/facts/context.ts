import type { OrderEvent } from '../generated/pack-types.ts';
import type { HeldLap, LapAnswer } from '../heat/sheet/held-lap.ts';
import type { HeldSheet, SheetAnswer } from '../heat/sheet/held-sheet.ts';
import type { WeldWindow } from '../joint/weld-window.ts';

/** What may be asked of a heat limit; a pack sets it. */
export interface HeatLimit {
  readonly holdAboveCelsius?: number;
  readonly stopAboveCelsius?: number;
  readonly timeAbove?: { readonly celsius: number; readonly atMostSeconds: number };
}

/** What packs say of how heat is measured and how far it is asked about. */
export interface HeatPractice {
  /** What is added to a stated temperature, K, by the word of the means; `none` where nothing measures. */
  readonly allowanceKelvin: ReadonlyMap<string, number>;
  /** How far a kind of heat that is not computed is asked about, mm; one that is not named, at any distance. */
  readonly reachMm: ReadonlyMap<string, number>;
}

/** An operation as a maker's document names it. */
export interface NamedOperation {
  readonly do: string;
  readonly extent?: 'whole' | 'part';
  readonly at?: string;
}

/** What an entry of a vehicle pack is about, and where the maker's document says it. */
export interface MakerEntry {
  readonly part: string;
  readonly sides?: readonly string[];
  readonly bodies?: readonly string[];
  readonly years: { readonly from: number; readonly to: number };
  readonly vins?: { readonly from: string; readonly to: string };
  readonly document: string;
  readonly revision?: string;
  readonly published?: string;
  readonly page?: string;
}

/** What the maker's document says one kind of part is. */
export interface MakerPart extends MakerEntry {
  readonly grade?: string;
  readonly tensileMpa?: number;
  /** A strength class, by the words of a plan. */
  readonly class?: string;
  readonly thicknessMm?: number;
  readonly onePiece?: boolean;
  /** Kinds of part that hide it. */
  readonly under: readonly string[];
}

/** A document, or one revision of it, that another one took the place of. */
export interface SupersededDocument {
  readonly document: string;
  readonly revision?: string;
  readonly by: { readonly document: string; readonly revision?: string; readonly published?: string };
}

/** What the maker's document says of the work on one kind of part. */
export interface MakerStatement extends MakerEntry {
  readonly shall: readonly NamedOperation[];
  readonly shallNot: readonly NamedOperation[];
  readonly may: readonly NamedOperation[];
  readonly conditions: readonly string[];
}

/** The part of a vehicle pack that facts are derived from. */
export interface MakerStatements {
  /** Pack and version, as the report names it. */
  readonly pack: string;
  readonly maker: string;
  readonly models: readonly string[];
  readonly statements: readonly MakerStatement[];
  readonly parts?: readonly MakerPart[];
  readonly documents?: readonly SupersededDocument[];
}

/** What is known of a rule id that a plan names. */
export type RuleStanding =
  | { readonly kind: 'current' }
  /** It ended with a version; `replacedBy` is the rule in force that took its place, where there is one. */
  | { readonly kind: 'ended'; readonly with: string; readonly replacedBy?: string }
  /** It begins with a later version than the one that judges. */
  | { readonly kind: 'later'; readonly with: string }
  | { readonly kind: 'no such rule'; readonly nearest: readonly string[] };

/** What of a plan's work asks for a check after the repair: something that befell a part, or was done to the vehicle. */
export interface CheckTrigger {
  readonly asksFor:
    | 'scan after the repair'
    | 'wheel alignment'
    | 'sensor calibration'
    | 'restraint completion'
    | 'road test'
    | 'hold point'
    | 'structural release';
  /** Of a hold point: which, by the words or the name that a plan gives it. */
  readonly point?: string;
  /** Words of which one stands in the name of the sensor that is to be answered for; empty where any answers. */
  readonly sensor: readonly string[];
  /** Kinds of part; empty where any is meant that holds one of `holds`. Both empty: no part is meant. */
  readonly kinds: readonly string[];
  readonly holds: readonly string[];
  /** Words in the name of the part: one of these, and none of those. */
  readonly named: readonly string[];
  readonly unlessNamed: readonly string[];
  /** Any of them; empty: any at all. */
  readonly was: readonly ('hit' | 'worked on' | 'taken off' | 'painted' | 'joined in')[];
  readonly work: readonly (
    | 'electric welding'
    | 'structural work'
    | 'structure joined'
    | 'restraint wiring repaired'
    | 'restraint unit off'
    | 'restraint unit deployed'
    | 'high voltage isolated'
    | 'wheels aligned'
  )[];
}

/** What has to come before what, by the days and hours of a plan. */
export interface DayOrder {
  readonly first: OrderEvent;
  readonly then: OrderEvent;
  /** Why, in a sentence. */
  readonly note?: string;
}

/** Usual settings of resistance spots, a list a pack, the last layer first. */
export type WeldWindows = readonly (readonly WeldWindow[])[];

/** A rule pack that judges the plan, by its exact version. */
export interface JudgingPack {
  readonly pack: string;
  readonly version: string;
  readonly digest: string;
}

export type PlanStage = 'draft' | 'start' | 'release';

/** What facts are derived with, beside the plan: all that would otherwise come from the clock or from rule packs. */
export interface DerivationContext {
  /** As-of date, days since 1970-01-01. */
  readonly asOfDay: number;
  readonly stage: PlanStage;
  readonly limits: ReadonlyMap<string, HeatLimit>;
  readonly practice: HeatPractice;
  /** Tensile strength, %, that hardened steel beside heat must keep by the rules of the packs. Left out: no rule asks it. */
  readonly leastTensileLeft?: number;
  readonly windows: WeldWindows;
  /** Tolerance of a point by axis and of a diagonal where the plan states none, mm; a pack sets it. Left out: nobody does. */
  readonly tolerances?: ReadonlyMap<'point' | 'opening', number>;
  /** Left out: nothing asks for a check. */
  readonly triggers?: readonly CheckTrigger[];
  /** Left out: no days are compared by rows of a pack. */
  readonly orders?: readonly DayOrder[];
  readonly makers: readonly MakerStatements[];
  /** What the packs know of a rule id; left out, every id counts as one of a rule in force. */
  readonly ruleStanding?: (id: string) => RuleStanding;
  /** What the digests of a signature are held against; left out where the plan bears none. */
  readonly signed?: { readonly planDigest: string; readonly packs: readonly JudgingPack[] };
  /** Conduction along a strip; handed in so that one run computes equal heats once. */
  readonly solveStrip: (strip: HeldSheet) => SheetAnswer;
  /** The same for a strip and a second sheet on it. */
  readonly solveLap: (lap: HeldLap) => LapAnswer;
}
