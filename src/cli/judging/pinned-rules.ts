import type { DerivationContext, PlanStage } from '../../facts/context.ts';
import type { Plan } from '../../generated/plan-types.ts';
import { compileRules } from '../../judge/compile-rules.ts';
import type { CompiledRules } from '../../judge/compile-rules.ts';
import type { FactDictionary } from '../../packs/fact-dictionary.ts';
import { leastTensileLeft } from '../../packs/heat-rules.ts';
import type { Pack } from '../../packs/pack.ts';
import { lockName } from '../../packs/layers/read-lock.ts';
import { resolvePacks } from '../../packs/layers/resolve-packs.ts';
import type { PlanVehicle, ResolvedPacks } from '../../packs/layers/resolve-packs.ts';
import { planDigest } from '../../plan/plan-canonical.ts';
import { faultLine } from './given-packs.ts';
import type { FoundLock, LockFinder } from './lock-finder.ts';
import type { ReadPlan } from '../plans/read-plan-source.ts';
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
  /** Pass over the pins of packs that are not here; for one who is about to write such a pack. Never for a verdict. */
  readonly passesOverMissing?: boolean;
  /** Packs resolved and compiled for each set of pins, and each vehicle where packs tell vehicles apart: those met last. */
  readonly resolved: Map<string, PinnedRules>;
}

export type PinnedRules =
  | {
      readonly ok: true;
      readonly packs: ResolvedPacks;
      readonly rules: () => CompiledRules;
      /** Where the lock was not kept. */
      readonly drift: readonly string[];
    }
  | { readonly ok: false; readonly sentences: readonly string[] };

/** The packs that the pins of a plan ask for, for a vehicle, with their rules; each set of them is resolved once in a run. */
export function pinnedRules(
  run: JudgingRun,
  stated: readonly string[] | undefined,
  vehicle: Plan['vehicle'],
  lock: FoundLock | undefined,
): PinnedRules {
  const isHere = (pin: string): boolean => run.packs.some(({ name }) => name === pin.split('@')[0]?.trim());
  const pins = run.passesOverMissing === true ? stated?.filter(isHere) : stated;
  const which = decidingVehicle(run.packs, vehicle);
  const key = JSON.stringify([pins ?? [], which, lock?.file]);
  const before = run.resolved.get(key);
  const answer = before ?? resolvePinned(run, pins, which, lock);
  keepNewest(run.resolved, key, answer);
  return answer;
}

/** Each takes a tenth of a megabyte, and an archive has as many vehicles as plans: what was asked for longest ago goes. */
const mostResolved = 64;

function keepNewest<Value>(kept: Map<string, Value>, key: string, value: Value): void {
  kept.delete(key);
  const [oldest] = kept.keys();
  if (kept.size >= mostResolved && oldest !== undefined) kept.delete(oldest);
  kept.set(key, value);
}

/** Read off all rules, once for all plans that these packs judge. */
const leasts = new WeakMap<ResolvedPacks, number | 'none'>();

function leastOf(packs: ResolvedPacks): number | undefined {
  const least = leasts.get(packs) ?? leastTensileLeft(packs.layers) ?? 'none';
  leasts.set(packs, least);
  return least === 'none' ? undefined : least;
}

/** What facts are derived with when these packs judge. */
export function contextOf(
  run: JudgingRun,
  stage: PlanStage,
  packs: ResolvedPacks,
  { plan, root }: Pick<ReadPlan, 'plan' | 'root'>,
): DerivationContext {
  const least = leastOf(packs);
  return {
    asOfDay: run.asOfDay,
    stage,
    limits: packs.limits,
    practice: packs.practice,
    ...(least === undefined ? {} : { leastTensileLeft: least }),
    windows: packs.windows,
    tolerances: packs.tolerances,
    triggers: packs.triggers,
    orders: packs.orders,
    makers: packs.makers,
    ruleStanding: packs.standingOf,
    solveStrip: run.solveStrip,
    solveLap: run.solveLap,
    // Most plans are not signed, and a digest costs as much as reading a part of the plan.
    ...(plan.sign_off?.digests === undefined
      ? {}
      : { signed: { planDigest: planDigest(root), packs: packs.layers.map(usedPack) } }),
  };
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
  const { lock, file = lockName } = found ?? {};
  if (lock?.ok === false) {
    return {
      ok: false,
      sentences: lock.faults.map((fault) => faultLine(fault.sentence, { ...fault, file })),
    };
  }
  if (lock === undefined && run.mustBeLocked === true) {
    const sentence = `No ${lockName} lies beside the plan or above it; \`planish packs lock\` writes one.`;
    return { ok: false, sentences: [sentence] };
  }
  const resolved = resolvePacks(run.packs, pins, which, lock?.versions);
  if (!resolved.ok) return { ok: false, sentences: [faultLine(resolved.sentence, resolved.place)] };
  const { packs } = resolved;
  const drift = packs.drift.map((sentence) => `${file}: ${sentence}`);
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
