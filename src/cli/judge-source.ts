import { createHash } from 'node:crypto';
import type { Plan } from '../generated/plan-types.ts';
import type { DerivationContext, PlanStage } from '../facts/context.ts';
import { deriveFacts } from '../facts/derive-facts.ts';
import { compileRules } from '../judge/compile-rules.ts';
import type { CompiledRules } from '../judge/compile-rules.ts';
import type { FactDictionary } from '../packs/fact-dictionary.ts';
import { judgePlan } from '../judge/judge-plan.ts';
import type { Finding } from '../judge/finding.ts';
import type { Pack } from '../packs/pack.ts';
import { resolvePacks } from '../packs/resolve-packs.ts';
import type { ResolvedPacks } from '../packs/resolve-packs.ts';
import { checkPlan } from '../plan/check-plan.ts';
import type { EntryFault } from '../plan/entry-fault.ts';
import { decodeText } from '../plan/decode-text.ts';
import type { ReadFault } from '../plan/fault.ts';
import type { LocatedNode } from '../plan/node.ts';
import { readYaml } from '../plan/read-yaml.ts';
import { placeOf } from '../plan/source-text.ts';
import type { SourceText } from '../plan/source-text.ts';
import { findingRange } from '../report/finding-range.ts';
import type { PlanReport, SeverityCounts } from '../report/plan-report.ts';
import { relatedPlaces } from '../report/related-places.ts';

/** What is the same for every plan of a run. */
export interface JudgingRun {
  readonly packs: readonly Pack[];
  readonly dictionary: FactDictionary;
  readonly asOfDay: number;
  /** Overrides what the plans ask. */
  readonly stage?: PlanStage;
  readonly solveStrip: DerivationContext['solveStrip'];
  /** Packs resolved and compiled for each set of pins, and each vehicle where packs tell vehicles apart, met so far. */
  readonly resolved: Map<string, PinnedRules>;
}

type PinnedRules =
  | { readonly ok: true; readonly packs: ResolvedPacks; readonly rules: () => CompiledRules }
  | { readonly ok: false; readonly sentence: string };

export type SourceAnswer =
  | { readonly kind: 'plan'; readonly report: PlanReport; readonly packs?: ResolvedPacks }
  /** A pack or a scenario among the plans of a folder. */
  | { readonly kind: 'skipped' }
  | { readonly kind: 'not a plan' };

const none: SeverityCounts = { stop: 0, hold: 0, note: 0, accepted: 0 };

/** Reads, derives and judges one plan. `named` files are judged whatever they hold; of a folder only plans are. */
export function judgeSource(run: JudgingRun, file: string, bytes: Uint8Array, named: boolean): SourceAnswer {
  const opened = openPlan(run, file, bytes, named);
  if (opened.kind !== 'opened') return opened;
  const { plan, faults, source, root, digest, packs, rules, context, title } = opened;
  const { stage } = context;
  const { sheets, afterwards } = deriveFacts(plan, faults, context);
  const judgement = judgePlan(sheets, rules(), stage, afterwards);
  return {
    kind: 'plan',
    packs,
    report: {
      file,
      stage,
      digest,
      ...(title === undefined ? {} : { title }),
      verdict: judgement.verdict,
      counts: countsOf(judgement.findings),
      asked: judgement.counts,
      setAside: packs.setAside,
      lifted: judgement.lifts,
      notJudged: judgement.notJudged.map(({ rule, reason }) => ({ rule, sentence: reason })),
      findings: judgement.findings.map((finding) => ({
        finding,
        place: placeOf(source, findingRange(root, finding)),
        related: () => relatedPlaces(source, root, finding),
      })),
    },
  };
}

/** A plan that is read and checked against its form, with the packs that it is judged by. */
export interface OpenedPlan {
  readonly kind: 'opened';
  readonly plan: Plan;
  readonly faults: readonly EntryFault[];
  readonly source: SourceText;
  readonly root: LocatedNode;
  readonly digest: string;
  readonly packs: ResolvedPacks;
  /** Compiled when first asked for. */
  readonly rules: () => CompiledRules;
  readonly context: DerivationContext;
  readonly title?: string;
}

/** The door for every command that takes plans; what cannot be judged comes out as its report. */
export function openPlan(
  run: JudgingRun,
  file: string,
  bytes: Uint8Array,
  named: boolean,
): OpenedPlan | SourceAnswer {
  const digest = `sha256:${createHash('sha256').update(bytes).digest('hex')}`;
  const decoded = decodeText(bytes);
  if (!decoded.ok) return notJudged({ path: file, text: decoded.text }, [decoded.fault], digest);
  const source: SourceText = { path: file, text: decoded.text };
  const yaml = readYaml(decoded.text);
  if (!yaml.ok) return notJudged(source, yaml.faults, digest);
  if (!named) {
    const kind = kindOf(yaml.root);
    if (kind !== 'plan') return { kind };
  }
  const checked = checkPlan(yaml.root);
  if (!checked.ok) return notJudged(source, checked.faults, digest);
  const { plan, faults } = checked;

  const pinned = pinnedRules(run, plan);
  if (!pinned.ok) return notJudged(source, [{ sentence: pinned.sentence, range: yaml.root.range }], digest);
  const stage = run.stage ?? plan.stage ?? 'release';
  const context: DerivationContext = {
    asOfDay: run.asOfDay,
    stage,
    limits: pinned.packs.limits,
    makers: pinned.packs.makers,
    solveStrip: run.solveStrip,
  };
  const { maker, model, body, model_year: year } = plan.vehicle;
  const vehicle = [maker, model, body, year].filter((word) => word !== undefined).join(' ');
  const job = plan.job?.number === undefined ? undefined : `job ${plan.job.number}`;
  const title = [vehicle === '' ? undefined : vehicle, job].filter((word) => word !== undefined).join(', ');
  return {
    kind: 'opened',
    plan,
    faults,
    source,
    root: yaml.root,
    digest,
    packs: pinned.packs,
    rules: pinned.rules,
    context,
    ...(title === '' ? {} : { title }),
  };
}

function pinnedRules(run: JudgingRun, { rules: pins, vehicle }: Plan): PinnedRules {
  const { maker, model, body, model_year: modelYear } = vehicle;
  // Only a pack that is for some vehicles makes the vehicle matter; else one answer serves every plan of the run.
  const which = run.packs.some((pack) => pack.vehicle !== undefined) ? { maker, model, body, modelYear } : {};
  const key = JSON.stringify([pins ?? [], which]);
  const before = run.resolved.get(key);
  if (before !== undefined) return before;
  const resolved = resolvePacks(run.packs, pins, which);
  const answer: PinnedRules = resolved.ok
    ? { ok: true, packs: resolved.packs, rules: once(() => compileRules(resolved.packs, run.dictionary)) }
    : resolved;
  run.resolved.set(key, answer);
  return answer;
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** What a YAML file of a folder is, by its top-level keys. */
function kindOf(root: LocatedNode): 'plan' | 'skipped' | 'not a plan' {
  if (root.kind !== 'map') return 'not a plan';
  if (root.entries.has('pack') || root.entries.has('scenario')) return 'skipped';
  return root.entries.has('format') && root.entries.has('parts') ? 'plan' : 'not a plan';
}

function notJudged(source: SourceText, faults: readonly ReadFault[], digest: string): SourceAnswer {
  return {
    kind: 'plan',
    report: {
      ...unread(source.path),
      digest,
      notJudged: faults.map(({ sentence, range }) =>
        range === undefined ? { sentence } : { sentence, place: placeOf(source, range) },
      ),
    },
  };
}

/** The report of a plan of which nothing could be judged. */
export function unread(file: string, sentence?: string): PlanReport {
  return {
    file,
    verdict: 'not judged',
    counts: none,
    lifted: [],
    notJudged: sentence === undefined ? [] : [{ sentence }],
    findings: [],
  };
}

function countsOf(findings: readonly Finding[]): SeverityCounts {
  const count = { stop: 0, hold: 0, note: 0, accepted: 0 };
  for (const { severity, deviation } of findings) {
    count[severity] += 1;
    if (deviation !== undefined) count.accepted += 1;
  }
  return count;
}
