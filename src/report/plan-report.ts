import type { MeasuringShown } from '../facts/measuring/measuring-shown.ts';
import type { Stage } from '../packs/pack.ts';
import type { SetAside } from '../packs/layers/resolve-packs.ts';
import type { Counts } from '../judge/judge-sheets.ts';
import type { Finding, Lift, Severity } from '../judge/finding.ts';
import type { Verdict } from '../judge/verdict.ts';
import type { Place } from '../plan/source-text.ts';

/** A place in the plan's file; lines and columns count from 1, columns in UTF-16 code units. */
export interface PlacedFinding {
  readonly finding: Finding;
  readonly place: Place;
  /** Places of the entries that contradict it. */
  readonly against?: readonly Place[];
  /** Places that belong to it, found when asked for: most forms do not show them. Absent when the plan is not at hand. */
  readonly related?: () => readonly RelatedPlace[];
}

export interface RelatedPlace {
  /** What stands there, in a few words. */
  readonly what: string;
  readonly place: Place;
}

/** Why a plan, or one rule on it, could not be judged. */
export interface NotJudgedReason {
  readonly sentence: string;
  readonly place?: Place;
  readonly rule?: string;
}

export interface SeverityCounts {
  readonly stop: number;
  readonly hold: number;
  readonly note: number;
  /** Holds that a deviation accepts; counted in `hold` too. */
  readonly accepted: number;
}

/** What a report says of one plan. Everything is computed before; a form only writes it down. */
export interface PlanReport {
  /** Path as shown, with `/`: whole where the argument was, else relative to the working folder. */
  readonly file: string;
  readonly stage?: Stage;
  /** `sha256:` and the digest of the file's bytes; absent when it could not be read. */
  readonly digest?: string;
  /** The packs that it was judged by, in the order of their layers; absent when it could not be judged. */
  readonly packs?: readonly UsedPack[];
  /** Vehicle and job in a few words, for the head of the text. */
  readonly title?: string;
  readonly verdict: Verdict;
  readonly counts: SeverityCounts;
  /** What was asked of the plan; absent when it could not be read. */
  readonly asked?: Counts;
  /** Packs that were given, are for other vehicles, and were not asked. */
  readonly setAside?: readonly SetAside[];
  /** The measured points; absent when none has a deviation. */
  readonly measuring?: MeasuringShown;
  readonly lifted: readonly Lift[];
  readonly notJudged: readonly NotJudgedReason[];
  readonly findings: readonly PlacedFinding[];
}

export interface UsedPack {
  readonly pack: string;
  readonly version: string;
  readonly digest: string;
  readonly released: boolean;
  /** The newest release that was there, where it comes after the version that was used. */
  readonly newer?: string;
}

/** A rule as a pack states it, without any plan. */
export interface RuleHelp {
  readonly id: string;
  readonly pack: string;
  readonly topic: string;
  readonly severity: Severity;
  readonly instead: string;
  readonly why: string;
  readonly source: string;
}

/** Which part of the files a run judged: `index` of `of`, from 1. */
export interface Shard {
  readonly index: number;
  readonly of: number;
}

/** What is true of the whole run. */
export interface RunHead {
  readonly planish: string;
  readonly packs: readonly UsedPack[];
  readonly factSchema: number;
  /** ISO 8601 calendar date. */
  readonly asOf: string;
  /** Absent when all files were judged. */
  readonly shard?: Shard;
  /** The rules in force, for the forms that list them; absent when the packs are not at hand. */
  readonly rules?: () => readonly RuleHelp[];
}

export interface RunTail {
  readonly verdict: Verdict;
  readonly plans: number;
  /** How many plans have each verdict. */
  readonly verdicts: Readonly<Record<Verdict, number>>;
}

/** One form of the report. Plans come one at a time, so that memory does not grow with their number. */
export interface ReportForm {
  readonly begin: (head: RunHead) => string;
  readonly plan: (plan: PlanReport) => string;
  readonly end: (tail: RunTail) => string;
}
