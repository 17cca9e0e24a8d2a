import type { ClassRule } from '../../judge/class-rules.ts';
import type { DesignationAnswer } from '../../steel/answer/designation-answer.ts';

/** What a designation is, with the rules that speak of such a material, by their ids. */
export interface SteelAnswer extends DesignationAnswer {
  readonly rules: readonly string[];
}

/** What rules say of one kind of material that was met, as "press-hardened parts". */
export interface SteelRules {
  readonly of: string;
  readonly rules: readonly ClassRule[];
}

export interface SteelReport {
  readonly answers: readonly SteelAnswer[];
  /** In the order in which the materials were met, each once. */
  readonly rules: readonly SteelRules[];
  /** Name and version of the pack that the rules come from. */
  readonly pack: string;
}
