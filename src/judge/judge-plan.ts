import type { FactSheet } from '../facts/sheet.ts';
import type { Stage } from '../packs/pack.ts';
import type { CompiledRules } from './compile-rules.ts';
import { countNotApplied } from './count-not-applied.ts';
import { applyDeviations, outcomesOf } from './deviations.ts';
import type { Outcome, Permit } from './deviations.ts';
import { judgeSheets } from './judge-sheets.ts';
import type { Judgement } from './judge-sheets.ts';
import { orderFindings } from './order-findings.ts';
import { planOrder } from './plan-order.ts';
import { verdictOf } from './verdict.ts';
import type { Verdict } from './verdict.ts';

/** What the derivation makes of the findings: the sheets of deviations and sign-off, and the deviations in force. */
export interface Afterwards {
  readonly sheets: readonly FactSheet[];
  readonly permits: readonly Permit[];
}

export interface PlanJudgement extends Judgement {
  readonly verdict: Verdict;
}

/**
 * Judges a plan in two passes. A deviation is good or not depending on what was found, and the sign-off on whether anything
 * is left open; so their sheets are derived from the findings of the first pass and judged in the second. A
 * deviation accepts only what the first pass found, never what is found about deviations themselves.
 */
export function judgePlan(
  sheets: readonly FactSheet[],
  rules: CompiledRules,
  stage: Stage,
  afterwards: (outcomes: readonly Outcome[]) => Afterwards,
): PlanJudgement {
  const order = planOrder(sheets);
  const first = judgeSheets(sheets, rules, stage, order);
  const after = afterwards(outcomesOf(first.findings));
  const second = judgeSheets(after.sheets, rules, stage, order);
  const accepted = applyDeviations(first.findings, after.permits);
  const findings = orderFindings([...accepted, ...second.findings], order.parts);
  const notJudged = [...first.notJudged, ...second.notJudged];
  return {
    findings,
    lifts: [...first.lifts, ...second.lifts],
    notJudged,
    counts: {
      asked: first.counts.asked + second.counts.asked,
      passed: first.counts.passed + second.counts.passed,
      found: first.counts.found + second.counts.found,
      lifted: first.counts.lifted + second.counts.lifted,
      couldNotTell: first.counts.couldNotTell + second.counts.couldNotTell,
      failed: first.counts.failed + second.counts.failed,
      notApplied: countNotApplied(rules, stage, [...sheets, ...after.sheets]),
    },
    verdict: verdictOf(findings, notJudged),
  };
}
