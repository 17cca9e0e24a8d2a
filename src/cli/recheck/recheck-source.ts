import { isDeepStrictEqual } from 'node:util';
import { deriveFacts } from '../../facts/derive-facts.ts';
import type { DerivedFacts } from '../../facts/derive-facts.ts';
import type { Plan } from '../../generated/plan-types.ts';
import { judgePlan } from '../../judge/judge-plan.ts';
import { leastTensileLeft } from '../../packs/heat-rules.ts';
import type { ResolvedPacks } from '../../packs/layers/resolve-packs.ts';
import { formatDay } from '../../quantity/format-day.ts';
import { readDate } from '../../quantity/iso-date.ts';
import type { PlanReport } from '../../report/plan-report.ts';
import { changeBetween } from '../../recheck/rechecked-plan.ts';
import type { RecheckedPlan } from '../../recheck/rechecked-plan.ts';
import type { EarlierPlan, EarlierReport } from './earlier-report.ts';
import { planReport } from '../judging/judge-source.ts';
import { contextOf, pinnedRules } from '../judging/pinned-rules.ts';
import type { JudgingRun, PinnedRules } from '../judging/pinned-rules.ts';
import { readPlanSource } from '../plans/read-plan-source.ts';
import type { ReadPlan, UnreadAnswer } from '../plans/read-plan-source.ts';
import { signedComputing, reportedComputing } from './recheck-record.ts';

/** What is the same for every plan of a recheck. `asOfDay` of the run is today's. */
export interface RecheckRun extends JudgingRun {
  /** `general@1.0`; empty: by what the record of each plan names, else by what the plan pins. */
  readonly from: readonly string[];
  readonly to: readonly string[];
  /** The day as of which all are judged; without it, the day of the report, or of the signature, or today. */
  readonly givenDay?: number;
  readonly earlier?: EarlierReport;
  /** Whether two sets of packs derive the same facts, as far as met. */
  readonly sameFacts: WeakMap<ResolvedPacks, WeakMap<ResolvedPacks, boolean>>;
}

export type RecheckAnswer =
  { readonly kind: 'plan'; readonly plan: RecheckedPlan } | Exclude<UnreadAnswer, { readonly kind: 'plan' }>;

/** Reads one plan once, derives its facts once where both versions derive the same, and has it judged by both. */
export function recheckSource(
  run: RecheckRun,
  file: string,
  bytes: Uint8Array,
  named: boolean,
): RecheckAnswer {
  const read = readPlanSource(file, bytes, named);
  if (read.kind === 'plan') return { kind: 'plan', plan: unjudged(read.report) };
  if (read.kind !== 'read') return read;
  const { plan } = read;
  const record = run.earlier?.find(file, read.digest);
  const asked = pinsOf(run, plan, record);
  const then = pinnedRules(run, asked.then, plan.vehicle, undefined);
  const now = pinnedRules(run, asked.now, plan.vehicle, undefined);
  if (!then.ok || !now.ok) {
    const sentences = [...(then.ok ? [] : then.sentences), ...(now.ok ? [] : now.sentences)];
    return { kind: 'plan', plan: unjudged(without(read, sentences)) };
  }
  return { kind: 'plan', plan: judgeTwice(run, read, { then, now }, record) };
}

type Pinned = PinnedRules & { readonly ok: true };

function judgeTwice(
  run: RecheckRun,
  read: ReadPlan,
  { then, now }: { readonly then: Pinned; readonly now: Pinned },
  record: EarlierPlan | undefined,
): RecheckedPlan {
  const { plan, faults } = read;
  const stage = run.stage ?? plan.stage ?? 'release';
  const onDay = { ...run, asOfDay: dayFor(run, plan, record) };
  const derived = deriveFacts(plan, faults, contextOf(onDay, stage, then.packs, read));
  const judgedBy = (by: Pinned, { sheets, measuring, afterwards }: DerivedFacts): PlanReport => {
    const judgement = judgePlan(sheets, by.rules(), stage, (found) => afterwards(found, by.packs.standingOf));
    return planReport(read, stage, by.packs, judgement, measuring);
  };
  const before = judgedBy(then, derived);
  const after = isSamePacks(then.packs, now.packs)
    ? before
    : judgedBy(
        now,
        derivesTheSame(run, then.packs, now.packs)
          ? derived
          : deriveFacts(plan, faults, contextOf(onDay, stage, now.packs, read)),
      );
  const computing =
    record === undefined
      ? signedComputing(plan.sign_off)
      : reportedComputing(record, before, derived.sheets, then.packs, run.dictionary);
  const verdictThen = computing?.verdictThen ?? before.verdict;
  const failed = verdictThen === before.verdict ? [...before.notJudged, ...after.notJudged] : after.notJudged;
  return {
    file: read.source.path,
    ...(read.title === undefined ? {} : { title: read.title }),
    stage,
    digest: read.digest,
    asOf: formatDay(onDay.asOfDay),
    then: verdictThen,
    now: after.verdict,
    ...(failed.length > 0
      ? { change: 'not judged' as const, reasons: [] }
      : changeBetween(verdictThen, after.verdict, stage, { then: before.findings, now: after.findings })),
    notJudged: failed,
    ...(computing === undefined ? {} : { computing }),
  };
}

/** The pins of a plan with those of the command line, or of its record, in place of its own for the same packs. */
function pinsOf(
  run: RecheckRun,
  { rules = [], sign_off: signed }: Plan,
  record: EarlierPlan | undefined,
): { readonly then: readonly string[]; readonly now: readonly string[] } {
  const recorded =
    record?.isSameContent === true
      ? (record.plan.packs ?? []).map(({ pack, version }) => `${pack}@${version}`)
      : pinsSigned(signed);
  const from = run.from.length > 0 ? run.from : recorded;
  const to = run.to.length > 0 ? run.to : [...from, ...rules].map(nameOf);
  return { then: withPins(rules, from), now: withPins(rules, to) };
}

/** The packs that a signature names, as pins. */
function pinsSigned(signed: Plan['sign_off']): readonly string[] {
  return (signed?.digests?.packs ?? []).flatMap(({ pack, version }) =>
    pack === undefined || version === undefined ? [] : [`${pack}@${version}`],
  );
}

function withPins(own: readonly string[], pins: readonly string[]): readonly string[] {
  const named = new Set(pins.map(nameOf));
  return [...new Set([...own.filter((pin) => !named.has(nameOf(pin))), ...pins])];
}

function nameOf(pin: string): string {
  return pin.split('@')[0] ?? pin;
}

function dayFor(run: RecheckRun, { sign_off: signed }: Plan, record: EarlierPlan | undefined): number {
  if (run.givenDay !== undefined) return run.givenDay;
  const written = record?.head.asOf ?? signed?.date;
  const day = written === undefined ? undefined : readDate(written);
  // A signature of a day to come was not given yet.
  return day?.ok === true && day.day <= run.asOfDay ? day.day : run.asOfDay;
}

function isSamePacks({ layers: one }: ResolvedPacks, { layers: other }: ResolvedPacks): boolean {
  return (
    one.length === other.length &&
    one.every(({ name, digest }, index) => name === other[index]?.name && digest === other[index].digest)
  );
}

/** Limits, windows and statements of makers go into facts; the rules do not. */
function derivesTheSame(run: RecheckRun, one: ResolvedPacks, other: ResolvedPacks): boolean {
  const met = run.sameFacts.get(one) ?? new WeakMap<ResolvedPacks, boolean>();
  run.sameFacts.set(one, met);
  const before = met.get(other);
  if (before !== undefined) return before;
  const answer = isDeepStrictEqual(factsFrom(one), factsFrom(other));
  met.set(other, answer);
  return answer;
}

function factsFrom({
  limits,
  practice,
  windows,
  tolerances,
  triggers,
  orders,
  makers,
  layers,
}: ResolvedPacks): readonly unknown[] {
  return [limits, practice, windows, tolerances, triggers, orders, makers, leastTensileLeft(layers)];
}

function without({ source: { path }, digest }: ReadPlan, sentences: readonly string[]): PlanNotJudged {
  const each = [...new Set(sentences)].map((sentence) => ({ sentence }));
  return { file: path, digest, notJudged: each };
}

type PlanNotJudged = Pick<PlanReport, 'file' | 'notJudged'> & { readonly digest?: string };

/** A plan of which nothing could be judged. */
export function unjudged({ file, digest, notJudged }: PlanNotJudged): RecheckedPlan {
  return {
    file,
    ...(digest === undefined ? {} : { digest }),
    change: 'not judged',
    reasons: [],
    notJudged,
  };
}
