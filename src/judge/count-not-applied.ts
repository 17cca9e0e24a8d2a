import type { FactSheet } from '../facts/sheet.ts';
import type { Stage } from '../packs/pack.ts';
import type { CompiledRules } from './compile-rules.ts';

/** Rules that were put to no sheet: none of their kind is there, or they judge from a later stage on. */
export function countNotApplied(rules: CompiledRules, stage: Stage, sheets: readonly FactSheet[]): number {
  const kinds = new Set<string>(sheets.map((sheet) => sheet.kind));
  let count = 0;
  for (const [kind, group] of rules.byKind) {
    count += group.length - (kinds.has(kind) ? rules.atStage(kind, stage).count : 0);
  }
  return count;
}
