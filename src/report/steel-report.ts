import type { ClassRule } from '../judge/class-rules.ts';
import type { DesignationAnswer } from '../steel/designation-answer.ts';

/** What a designation is, with what a rule pack says of its class. */
export interface SteelAnswer extends DesignationAnswer {
  readonly rules: readonly ClassRule[];
}

export interface SteelReport {
  readonly answers: readonly SteelAnswer[];
  /** Name and version of the pack that the rules come from. */
  readonly pack: string;
}
