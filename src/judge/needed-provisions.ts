import type { Fact } from '../facts/fact.ts';
import { lookUp } from '../facts/sheet.ts';
import type { FactSheet } from '../facts/sheet.ts';
import type { Rule, Stage } from '../packs/pack.ts';
import { askRule } from './ask-rule.ts';
import { rankOfStage } from './compile-rules.ts';
import type { CompiledRules } from './compile-rules.ts';

/** A statement of the maker that would have to be there for an operation to be let through. */
export interface NeededProvision {
  /** Pointer of the sheet that is stopped or held without it. */
  readonly at: string;
  /** The statement as the fact provision.to_type_in writes it: a flow mapping of YAML. */
  readonly toTypeIn: string;
  /** Rules that it could lift. */
  readonly rules: readonly string[];
}

const missing: Fact = { known: false, reason: 'The plan gives nothing from which it could be told' };

/** What a plan would need: where a stop or hold that only the maker's statement lifts finds, or cannot tell. Each statement once. */
export function neededProvisions(
  sheets: readonly FactSheet[],
  rules: CompiledRules,
  stage: Stage,
): readonly NeededProvision[] {
  const needed = new Map<string, { readonly at: string; readonly rules: Set<string> }>();
  for (const sheet of sheets) {
    const toTypeIn = lookUp(sheet, 'provision.to_type_in');
    if (toTypeIn?.known !== true) continue;
    for (const { rule, fromRank } of rules.byKind.get(sheet.kind) ?? []) {
      if (fromRank > rankOfStage(stage) || rule.severity === 'note' || !isLiftable(rule)) continue;
      const { kind } = askRule(rule, (name) => lookUp(sheet, name) ?? missing);
      if (kind !== 'found' && kind !== 'unknown') continue;
      const text = String(toTypeIn.value);
      const one = needed.get(text) ?? { at: sheet.at, rules: new Set<string>() };
      one.rules.add(rule.id);
      needed.set(text, one);
    }
  }
  return [...needed].map(([text, { at, rules: ids }]) => ({ at, toTypeIn: text, rules: [...ids] }));
}

function isLiftable({ unless }: Rule): boolean {
  return unless.some((lines) =>
    lines.some(
      ({ fact, test }) => fact === 'provision.permits' && 'anyOf' in test && test.anyOf.includes(true),
    ),
  );
}
