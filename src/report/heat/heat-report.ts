import type { HeatAnswer } from '../../facts/heat/heat-question.ts';
import type { SeamAnswer } from '../../facts/heat/seam-question.ts';
import type { PlannedHeat } from '../../facts/heat/plan-heat.ts';
import type { NotJudgedReason, UsedPack } from '../plan-report.ts';

/** The answer to a heat without a plan, and what a reader needs beside it. */
export interface HeatAnswerReport extends AskedReport {
  readonly answer: HeatAnswer;
}

/** The same of a seam. */
export interface SeamAnswerReport extends AskedReport {
  readonly answer: SeamAnswer;
}

/** What a reader needs beside any of these answers. */
export interface AskedReport {
  /** What was asked about, as it was written. */
  readonly near: string;
  /** How words of the trade were read. */
  readonly readings: readonly string[];
  /** Packs that set the limit, with version and source. */
  readonly limitSource?: string;
  /** Name and version of the pack of each rule of distance. */
  readonly rulePack: string;
  readonly packs: readonly UsedPack[];
  readonly planish: string;
}

/** The heats of one plan. */
export interface HeatPlanReport {
  readonly file: string;
  readonly title?: string;
  readonly heats: readonly PlacedHeat[];
  readonly notJudged: readonly NotJudgedReason[];
}

export interface PlacedHeat {
  readonly heat: PlannedHeat;
  readonly line: number;
}

/** How sure the numbers are; said with every answer. */
export const howSure =
  'The arithmetic is within 1.5 % of the rise, which is added. What metal, surface and flame really are weighs more, about ±10 % (no measurement on a body stands behind it), the tempering curve about ±30 K. Not in it: flame that washes over the neighbour, hot gas in a cavity.';

/** The same of a seam, where formulas answer and nothing is simulated. */
export const seamHowSure =
  'The formula of Adams takes a fast source and loses nothing to air, clamps or backing: beside finite elements it lies 4 to 21 % high. The efficiency of the process is good to about ±10 %. Not in it: a seam on the very edge, flame and hot gas.';
