import type { ClassMarks } from './class-marks.ts';
import type { PlanMarks } from './mark.ts';

/** What a run of marking says; the forms only write it down. */
export interface MarkReport {
  readonly planish: string;
  /** Name and version of each pack that the plans were judged by. */
  readonly packs: readonly string[];
  readonly scenario: { readonly id: string; readonly title?: string };
  /** ISO 8601 calendar date. */
  readonly asOf: string;
  readonly stage: string;
  /** Share of the points from which a plan passes, 0 to 1. */
  readonly passShare: number;
  readonly of: number;
  readonly students: readonly StudentReport[];
  readonly class: ClassMarks;
  /** Files that were not marked, with the reason. */
  readonly leftOut: readonly string[];
}

export interface StudentReport {
  readonly marks: PlanMarks;
  readonly feedback: readonly string[];
}

/** What the marks do not say of themselves, at the end of each form that a person reads. */
export const markCautions =
  'Marks say how a plan on paper agrees with the key, not how a repair would turn out. A trainer decides; the maker’s procedure for the vehicle at hand comes before any key.';

/** Points with at most two decimals. */
export function pointsText(points: number): string {
  return String(Math.round(points * 100) / 100);
}

export function percentText(share: number): string {
  return `${String(Math.round(share * 1000) / 10)} %`;
}
