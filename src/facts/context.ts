import type { HeldLap, LapAnswer } from '../heat/held-lap.ts';
import type { HeldSheet, SheetAnswer } from '../heat/held-sheet.ts';

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

/** One entry of a vehicle pack: what the maker's document says of one kind of part. */
export interface MakerStatement {
  readonly part: string;
  readonly sides?: readonly string[];
  readonly bodies?: readonly string[];
  readonly years: { readonly from: number; readonly to: number };
  readonly document: string;
  readonly revision?: string;
  readonly published?: string;
  readonly page?: string;
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
}

export type PlanStage = 'draft' | 'start' | 'release';

/** What facts are derived with, beside the plan: all that would otherwise come from the clock or from rule packs. */
export interface DerivationContext {
  /** As-of date, days since 1970-01-01. */
  readonly asOfDay: number;
  readonly stage: PlanStage;
  readonly limits: ReadonlyMap<string, HeatLimit>;
  readonly practice: HeatPractice;
  readonly makers: readonly MakerStatements[];
  /** Conduction along a strip; handed in so that one run computes equal heats once. */
  readonly solveStrip: (strip: HeldSheet) => SheetAnswer;
  /** The same for a strip and a second sheet on it. */
  readonly solveLap: (lap: HeldLap) => LapAnswer;
}
