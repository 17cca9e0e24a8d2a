import type { Rule } from '../packs/pack.ts';

/** A rule with what is needed at every question and does not change between plans. */
export interface CompiledRule {
  readonly rule: Rule;
  readonly pack: string;
  /** Its place among all rules: layers in order, then as written. */
  readonly order: number;
  readonly fromRank: number;
}
