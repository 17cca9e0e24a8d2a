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
import { lockName } from '../packs/read-lock.ts';
import { resolvePacks } from '../packs/resolve-packs.ts';
import type { PlanVehicle, ResolvedPacks } from '../packs/resolve-packs.ts';
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
import type { FoundLock, LockFinder } from './lock-finder.ts';
import { faultLine } from './given-packs.ts';
import { usedPack } from './used-pack.ts';

/** What is the same for every plan of a run. */
export interface JudgingRun {
  readonly packs: readonly Pack[];
  readonly dictionary: FactDictionary;
  readonly asOfDay: number;
  /** Overrides what the plans ask. */
  readonly stage?: PlanStage;
  readonly solveStrip: DerivationContext['solveStrip'];
  /** Where the locks of plans lie; without it, none is looked for. */
  readonly lockFor?: LockFinder;
  /** Refuse a plan whose packs are not those of its lock. */
  readonly mustBeLocked?: boolean;
  readonly solveLap: DerivationContext['solveLap'];
  /** Packs resolved and compiled for each set of pins, and each vehicle where packs tell vehicles apart, met so far. */
  readonly resolved: Map<string, PinnedRules>;
}

type PinnedRules =
  | {
      readonly ok: true;
      readonly packs: ResolvedPacks;
      readonly rules: () => CompiledRules;
      /** Where the lock was not kept. */
      readonly drift: readonly string[];
    }
  | { readonly ok: false; readonly sentences: readonly string[] };

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

const none: SeverityCounts = { stop: 0, hold: 0, note: 0, accepted: 0 };

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
  const { plan, faults, source, root, digest, packs, rules, drift, context, title } = opened;
  const { stage } = context;
  const { sheets, measuring, afterwards } = deriveFacts(plan, faults, context);
  const judgement = judgePlan(sheets, rules(), stage, afterwards);
  return {
    kind: 'plan',
    packs,
    drift,
    report: {
      file,
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
  readonly drift: readonly string[];
  readonly context: DerivationContext;
  readonly title?: string;
}

/** The door for every command that takes plans; what cannot be judged comes out as its report. */
export function openPlan(
  run: JudgingRun,
  file: string,
  bytes: Uint8Array,
  named: boolean,
  folder = '.',
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

  const pinned = pinnedRules(run, plan, run.lockFor?.(folder));
  if (!pinned.ok) {
    const range = rulesRange(yaml.root);
    return notJudged(
      source,
      pinned.sentences.map((sentence) => ({ sentence, range })),
      digest,
    );
  }
  const stage = run.stage ?? plan.stage ?? 'release';
  const context: DerivationContext = {
    asOfDay: run.asOfDay,
    stage,
    limits: pinned.packs.limits,
    practice: pinned.packs.practice,
    windows: pinned.packs.windows,
    tolerances: pinned.packs.tolerances,
    triggers: pinned.packs.triggers,
    makers: pinned.packs.makers,
    ruleStanding: pinned.packs.standingOf,
    solveStrip: run.solveStrip,
    solveLap: run.solveLap,
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
    drift: pinned.drift,
    context,
    ...(title === '' ? {} : { title }),
  };
}

/** Where the plan says by which packs it is judged, as far as it does. */
function rulesRange(root: LocatedNode): LocatedNode['range'] {
  const entry = root.kind === 'map' ? root.entries.get('rules') : undefined;
  return entry?.value.range ?? root.range;
}

function pinnedRules(
  run: JudgingRun,
  { rules: pins, vehicle }: Plan,
  lock: FoundLock | undefined,
): PinnedRules {
  const which = decidingVehicle(run.packs, vehicle);
  const key = JSON.stringify([pins ?? [], which, lock?.file]);
  const before = run.resolved.get(key);
  if (before !== undefined) return before;
  const answer = resolvePinned(run, pins, which, lock);
  run.resolved.set(key, answer);
  return answer;
}

/** Only a pack that is for some vehicles makes the vehicle matter; else one answer serves every plan of the run. */
function decidingVehicle(packs: readonly Pack[], vehicle: Plan['vehicle']): PlanVehicle {
  const { maker, model, body, model_year: modelYear, vin, market } = vehicle;
  const ofVehicles = packs.some((pack) => pack.vehicle !== undefined);
  const ofNumbers = packs.some((pack) => pack.vehicle?.vins !== undefined);
  const ofMarkets = packs.some((pack) => pack.markets !== undefined);
  return {
    ...(ofVehicles ? { maker, model, body, modelYear } : {}),
    ...(ofNumbers ? { vin } : {}),
    ...(ofMarkets ? { market } : {}),
  };
}

function resolvePinned(
  run: JudgingRun,
  pins: readonly string[] | undefined,
  which: PlanVehicle,
  found: FoundLock | undefined,
): PinnedRules {
  const { lock } = found ?? {};
  if (lock?.ok === false) {
    return { ok: false, sentences: lock.faults.map((fault) => faultLine(fault.sentence, fault)) };
  }
  if (lock === undefined && run.mustBeLocked === true) {
    const sentence = `No ${lockName} lies beside the plan or above it; \`planish packs lock\` writes one.`;
    return { ok: false, sentences: [sentence] };
  }
  const resolved = resolvePacks(run.packs, pins, which, lock?.versions);
  if (!resolved.ok) return { ok: false, sentences: [faultLine(resolved.sentence, resolved.place)] };
  const { packs } = resolved;
  const drift = packs.drift.map((sentence) => `${found?.file ?? lockName}: ${sentence}`);
  if (drift.length > 0 && run.mustBeLocked === true) return { ok: false, sentences: drift };
  return { ok: true, packs, rules: once(() => compileRules(packs, run.dictionary)), drift };
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
