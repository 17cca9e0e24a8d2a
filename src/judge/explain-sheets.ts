import type { Fact } from '../facts/fact.ts';
import { lookUp } from '../facts/sheet.ts';
import type { FactSheet } from '../facts/sheet.ts';
import type { Line, RuleSeverity, Stage } from '../packs/pack.ts';
import { askRule } from './ask-rule.ts';
import { rankOfStage } from './compile-rules.ts';
import type { CompiledRules } from './compile-rules.ts';
import type { CompiledRule } from './compiled-rule.ts';
import { truthOf } from './truth.ts';
import type { Truth } from './truth.ts';

/** One line of a rule beside the fact that it met. */
export interface SeenLine {
  readonly line: Line;
  readonly fact: Fact;
  readonly truth: Truth;
}

/** What came of putting a rule to a sheet; `later stage`: it was not put, `failed`: it could not be. */
export type Outcome = 'found' | 'unknown' | 'lifted' | 'passed' | 'later stage' | 'failed';

/** A rule and what it saw on one sheet. */
export interface ExplainedRule {
  readonly rule: string;
  readonly pack: string;
  readonly severity: RuleSeverity;
  readonly from: Stage;
  readonly outcome: Outcome;
  readonly when: readonly SeenLine[];
  readonly unless: readonly (readonly SeenLine[])[];
}

export interface ExplainedSheet {
  readonly kind: string;
  readonly at: string;
  readonly rules: readonly ExplainedRule[];
}

const missing: Fact = { known: false, reason: 'The plan gives nothing from which it could be told' };

/** Puts every rule to the given sheets once more and keeps what each line saw. The verdict is not made here. */
export function explainSheets(
  sheets: readonly FactSheet[],
  rules: CompiledRules,
  stage: Stage,
): readonly ExplainedSheet[] {
  return sheets.map((sheet) => ({
    kind: sheet.kind,
    at: sheet.at,
    rules: (rules.byKind.get(sheet.kind) ?? []).map((rule) => explained(rule, sheet, stage)),
  }));
}

function explained({ rule, pack, fromRank }: CompiledRule, sheet: FactSheet, stage: Stage): ExplainedRule {
  const factOf = (name: string): Fact => lookUp(sheet, name) ?? missing;
  const { id, severity, from } = rule;
  const about = { rule: id, pack, severity, from };
  const see = (lines: readonly Line[]): readonly SeenLine[] =>
    lines.map((line) => {
      const fact = factOf(line.fact);
      return { line, fact, truth: truthOf(line.test, fact) };
    });
  if (fromRank > rankOfStage(stage)) return { ...about, outcome: 'later stage', when: [], unless: [] };
  try {
    const outcome = askRule(rule, factOf).kind;
    return { ...about, outcome, when: see(rule.when), unless: rule.unless.map(see) };
  } catch {
    return { ...about, outcome: 'failed', when: [], unless: [] };
  }
}
