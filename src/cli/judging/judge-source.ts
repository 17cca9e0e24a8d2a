import type { DerivationContext } from '../../facts/context.ts';
import { deriveFacts } from '../../facts/derive-facts.ts';
import type { DerivedFacts } from '../../facts/derive-facts.ts';
import type { FactSheet } from '../../facts/sheet.ts';
import type { CompiledRules } from '../../judge/compile-rules.ts';
import type { Finding } from '../../judge/finding.ts';
import { judgePlan } from '../../judge/judge-plan.ts';
import type { PlanJudgement } from '../../judge/judge-plan.ts';
import type { ResolvedPacks } from '../../packs/layers/resolve-packs.ts';
import { placeOf } from '../../plan/source-text.ts';
import { findingRange } from '../../report/finding-range.ts';
import type { PlanReport, SeverityCounts } from '../../report/plan-report.ts';
import { againstPlaces, relatedPlaces } from '../../report/related-places.ts';
import { lockBeside } from './lock-finder.ts';
import { contextOf, pinnedRules } from './pinned-rules.ts';
import type { JudgingRun } from './pinned-rules.ts';
import { readPlanSource, withoutPacks } from '../plans/read-plan-source.ts';
import type { ReadPlan } from '../plans/read-plan-source.ts';
import { usedPack } from './used-pack.ts';

export type { JudgingRun } from './pinned-rules.ts';
export { isPlan, unread } from '../plans/read-plan-source.ts';

export type SourceAnswer =
  | {
      readonly kind: 'plan';
      readonly report: PlanReport;
      readonly packs?: ResolvedPacks;
      /** Where the plan's lock is not kept, a sentence each. */
      readonly drift?: readonly string[];
    }
  /** A pack or a scenario among the plans of a folder. */
  | { readonly kind: 'skipped' }
  | { readonly kind: 'not a plan' };

/**
 * Reads, derives and judges one plan. `named` files are judged whatever they hold; of a folder only plans are. From
 * `folder` upward its lock is looked for.
 */
export function judgeSource(
  run: JudgingRun,
  file: string,
  bytes: Uint8Array,
  named: boolean,
  folder = '.',
): SourceAnswer {
  const opened = openPlan(run, file, bytes, named, folder);
  if (opened.kind !== 'opened') return opened;
  const { packs, drift } = opened;
  return { kind: 'plan', packs, drift, report: judgeOpened(opened).report };
}

export interface JudgedPlan {
  readonly report: PlanReport;
  /** Every sheet but those that depend on what is found. */
  readonly sheets: readonly FactSheet[];
}

/** Derives and judges a plan that is open. */
export function judgeOpened(opened: OpenedPlan): JudgedPlan {
  const { plan, faults, packs, rules, context } = opened;
  const { sheets, measuring, afterwards } = deriveFacts(plan, faults, context);
  const judgement = judgePlan(sheets, rules(), context.stage, afterwards);
  return { sheets, report: planReport(opened, context.stage, packs, judgement, measuring) };
}

/** What the report says of a plan that was judged. */
export function planReport(
  { source, root, digest, title }: Omit<ReadPlan, 'kind'>,
  stage: DerivationContext['stage'],
  packs: ResolvedPacks,
  judgement: PlanJudgement,
  measuring: DerivedFacts['measuring'],
): PlanReport {
  return {
    file: source.path,
    stage,
    digest,
    packs: packs.layers.map(usedPack),
    ...(title === undefined ? {} : { title }),
    verdict: judgement.verdict,
    counts: countsOf(judgement.findings),
    asked: judgement.counts,
    setAside: packs.setAside,
    ...(measuring === undefined ? {} : { measuring }),
    lifted: judgement.lifts,
    notJudged: judgement.notJudged.map(({ rule, reason }) => ({ rule, sentence: reason })),
    findings: judgement.findings.map((finding) => ({
      finding,
      place: placeOf(source, findingRange(root, finding)),
      ...(finding.against === undefined ? {} : { against: againstPlaces(source, root, finding.against) }),
      related: () => relatedPlaces(source, root, finding),
    })),
  };
}

/** A plan that is read and checked against its form, with the packs that it is judged by. */
export interface OpenedPlan extends Omit<ReadPlan, 'kind'> {
  readonly kind: 'opened';
  readonly packs: ResolvedPacks;
  /** Compiled when first asked for. */
  readonly rules: () => CompiledRules;
  readonly drift: readonly string[];
  readonly context: DerivationContext;
}

/** The door for every command that takes plans; what cannot be judged comes out as its report. */
export function openPlan(
  run: JudgingRun,
  file: string,
  bytes: Uint8Array,
  named: boolean,
  folder = '.',
): OpenedPlan | SourceAnswer {
  const read = readPlanSource(file, bytes, named);
  if (read.kind !== 'read') return read;
  const { plan } = read;
  const pinned = pinnedRules(run, plan.rules, plan.vehicle, lockBeside(file, run.lockFor?.(folder)));
  if (!pinned.ok) return withoutPacks(read, pinned.sentences);
  const { packs, rules, drift } = pinned;
  const stage = run.stage ?? plan.stage ?? 'release';
  const { kind: _, ...contents } = read;
  return { kind: 'opened', ...contents, packs, rules, drift, context: contextOf(run, stage, packs, read) };
}

function countsOf(findings: readonly Finding[]): SeverityCounts {
  const count = { stop: 0, hold: 0, note: 0, accepted: 0 };
  for (const { severity, deviation } of findings) {
    count[severity] += 1;
    if (deviation !== undefined) count.accepted += 1;
  }
  return count;
}
