import type { Fact, UnknownFact } from '../facts/fact.ts';
import { lookUp, ownFact } from '../facts/sheet.ts';
import type { FactSheet } from '../facts/sheet.ts';
import type { Stage } from '../packs/pack.ts';
import { settleRule } from './ask-rule.ts';
import { comparePointers } from './compare-pointers.ts';
import type { CompiledRules } from './compile-rules.ts';
import type { CompiledRule } from './compiled-rule.ts';
import { countNotApplied } from './count-not-applied.ts';
import { draftFinding, whereabouts } from './draft-finding.ts';
import type { DraftFinding } from './draft-finding.ts';
import type { Finding, Lift } from './finding.ts';
import { orderFindings } from './order-findings.ts';
import { planOrder } from './plan-order.ts';
import type { PlanOrder } from './plan-order.ts';
import { rulesIn } from './rule-tree.ts';
import type { RuleTree } from './rule-tree.ts';
import { tellOnce, withHanging } from './tell-once.ts';
import { truthOf } from './truth.ts';
import type { Truth } from './truth.ts';
import { speakingForStops, unknownHolds } from './unknown-holds.ts';
import type { Question } from './unknown-holds.ts';
import { withFingerprints } from './with-fingerprints.ts';
import { withoutAlike } from './without-alike.ts';

/** A rule that failed while it was asked. Whatever it would have found is unknown, so the plan is not judged. */
export interface NotJudged {
  readonly rule: string;
  readonly pack: string;
  /** The sheet on which it failed first. */
  readonly pointer: string;
  readonly reason: string;
}

/** How often rules were put to sheets, and what came of it. `asked` is the sum of the five after it. */
export interface Counts {
  readonly asked: number;
  readonly passed: number;
  readonly found: number;
  readonly lifted: number;
  /** Hung on an unknown fact. */
  readonly couldNotTell: number;
  readonly failed: number;
  /** Rules that were put to no sheet: none of their kind in this plan, or a later stage. */
  readonly notApplied: number;
}

export interface Judgement {
  /** In the order of `orderFindings`. */
  readonly findings: readonly Finding[];
  readonly lifts: readonly Lift[];
  readonly notJudged: readonly NotJudged[];
  readonly counts: Counts;
}

/** For a fact that no sheet holds; the derivation should have put it there as unknown. */
const missing: UnknownFact = { known: false, reason: 'The plan gives nothing from which it could be told' };

interface Run {
  readonly rules: CompiledRules;
  readonly order: PlanOrder;
  readonly drafts: DraftFinding[];
  readonly lifts: Lift[];
  readonly failures: Map<CompiledRule, NotJudged>;
  readonly questions: Question[];
  readonly answered: (Omit<Question, 'rule'> & { readonly by: DraftFinding })[];
  readonly entries: Map<string, DraftFinding>;
  readonly counts: { asked: number; found: number; lifted: number; couldNotTell: number; failed: number };
}

/**
 * Puts every rule that judges at `stage` to every sheet of its kind. The result does not depend on the order of sheets,
 * nor on that of rules except where two rules ask the same unknown at the same severity. `order` is that of the
 * whole plan; without it, it is read off the sheets.
 */
export function judgeSheets(
  sheets: readonly FactSheet[],
  rules: CompiledRules,
  stage: Stage,
  order: PlanOrder = planOrder(sheets),
): Judgement {
  const run: Run = {
    rules,
    order,
    drafts: [],
    lifts: [],
    failures: new Map(),
    questions: [],
    answered: [],
    entries: new Map(),
    counts: { asked: 0, found: 0, lifted: 0, couldNotTell: 0, failed: 0 },
  };
  for (const sheet of sheets) {
    const { tree, count } = rules.atStage(sheet.kind, stage);
    run.counts.asked += count;
    askTree(run, sheet, tree, false);
  }
  const forStops = speakingForStops(run.questions, run.answered);
  const told = tellOnce(run.questions, run.entries);
  const holds = unknownHolds(told.questions, run.answered, order, rules.dictionary);
  const drafts = run.drafts.map((draft) => {
    const marked = forStops.has(draft) ? { ...draft, standsForStop: true } : draft;
    return withHanging(marked, told.hanging.get(draft));
  });
  const { asked, found, lifted, couldNotTell, failed } = run.counts;
  return {
    findings: withFingerprints(withoutAlike(orderFindings([...drafts, ...holds], order.parts))),
    lifts: orderLifts(run.lifts),
    notJudged: [...run.failures].sort(([a], [b]) => a.order - b.order).map(([, failure]) => failure),
    counts: {
      asked,
      passed: asked - found - lifted - couldNotTell - failed,
      found,
      lifted,
      couldNotTell,
      failed,
      notApplied: countNotApplied(rules, stage, sheets),
    },
  };
}

/** A rule passes where the way to it ends at a line that is false. `hangs`: a line on the way is unknown. */
function askTree(run: Run, sheet: FactSheet, { rules, branches }: RuleTree, hangs: boolean): void {
  for (const rule of rules) settle(run, sheet, rule, hangs);
  // Lines that ask for the same fact mostly stand together.
  let name: string | undefined;
  let fact: Fact = missing;
  for (const { line, below } of branches) {
    let truth: Truth;
    try {
      if (line.fact !== name) {
        fact = lookUp(sheet, line.fact) ?? missing;
        name = line.fact;
      }
      truth = truthOf(line.test, fact);
    } catch (error) {
      // A line that fails to be asked fails every rule behind it.
      for (const rule of rulesIn(below)) fail(run, rule, sheet, error);
      continue;
    }
    if (truth !== 'false') askTree(run, sheet, below, hangs || truth === 'unknown');
  }
}

function settle(run: Run, sheet: FactSheet, rule: CompiledRule, hangs: boolean): void {
  const factOf = (name: string): Fact => lookUp(sheet, name) ?? missing;
  try {
    const answer = settleRule(rule.rule, hangs, factOf);
    switch (answer.kind) {
      case 'passed':
        return;
      case 'found':
        found(run, rule, sheet, draftFinding(rule, sheet, factOf, run.order, run.rules.dictionary));
        return;
      case 'lifted':
        run.counts.lifted += 1;
        if (answer.by.some((line) => line.fact === 'provision.permits'))
          run.lifts.push(lift(rule, sheet, factOf));
        return;
      case 'unknown':
        run.counts.couldNotTell += 1;
        if (rule.rule.severity === 'note') return;
        // Only the first in the order of `when`: what comes after it matters only if the first turns out true. Asking all
        // at once buries the one missing word under its consequences.
        for (const name of answer.facts.slice(0, 1)) run.questions.push({ rule, ...unknownOn(sheet, name) });
    }
  } catch (error) {
    fail(run, rule, sheet, error);
  }
}

function fail(run: Run, rule: CompiledRule, sheet: FactSheet, error: unknown): void {
  run.counts.failed += 1;
  const before = run.failures.get(rule);
  if (before !== undefined && comparePointers(before.pointer, sheet.at) <= 0) return;
  const reason = error instanceof Error ? error.message : String(error);
  run.failures.set(rule, { rule: rule.rule.id, pack: rule.pack, pointer: sheet.at, reason });
}

function found(run: Run, { rule }: CompiledRule, sheet: FactSheet, by: DraftFinding): void {
  run.drafts.push(by);
  run.counts.found += 1;
  // A note fails nothing, so it cannot speak for a hold.
  if (rule.severity === 'note') return;
  if (sheet.kind === 'entry') run.entries.set(sheet.at, by);
  for (const line of rule.when) {
    if ('known' in line.test && !line.test.known) run.answered.push({ by, ...unknownOn(sheet, line.fact) });
  }
}

/** The unknown fact and the sheet that holds it; the sheet itself when none does. */
function unknownOn(sheet: FactSheet, name: string): Omit<Question, 'rule'> {
  const owner = ownerOf(sheet, name);
  const fact = owner === undefined ? undefined : ownFact(owner, name);
  return { owner: owner ?? sheet, name, fact: fact === undefined || fact.known ? missing : fact };
}

function ownerOf(sheet: FactSheet, name: string): FactSheet | undefined {
  if (ownFact(sheet, name) !== undefined) return sheet;
  for (const base of sheet.standsOn) {
    const owner = ownerOf(base, name);
    if (owner !== undefined) return owner;
  }
  return undefined;
}

function lift({ rule, pack }: CompiledRule, sheet: FactSheet, factOf: (name: string) => Fact): Lift {
  const { part, operation } = whereabouts(sheet);
  const by = factOf('provision.by');
  return {
    rule: rule.id,
    pack,
    ...(part === undefined ? {} : { part }),
    ...(operation === undefined ? {} : { operation }),
    pointer: sheet.at,
    by: by.known ? String(by.value) : 'a provision that the plan cites',
  };
}

function orderLifts(lifts: readonly Lift[]): readonly Lift[] {
  return [...lifts].sort(
    (a, b) => comparePointers(a.pointer, b.pointer) || (a.rule < b.rule ? -1 : a.rule > b.rule ? 1 : 0),
  );
}
