import type {
  CheckTrigger,
  DayOrder,
  HeatLimit,
  HeatPractice,
  MakerStatements,
  RuleStanding,
  WeldWindows,
} from '../../facts/context.ts';
import type { CoveredVehicle } from '../../vehicle/coverage.ts';
import { chooseVersions, refuse } from './choose-versions.ts';
import type { ChosenPack, LockedVersion, Refusal } from './choose-versions.ts';
import { otherMarket } from './market-covers.ts';
import { mergePractice } from './merge-practice.ts';
import { mergeLimits, mergeTolerances } from './merge-limits.ts';
import { packCovers } from './pack-covers.ts';
import { packLayers, placeKey } from '../pack.ts';
import type { Pack, PackLayer, Rule, Tolerance } from '../pack.ts';
import { raiseRules } from './raise-rules.ts';
import { ruleStanding } from './rule-standing.ts';

/** One pack as it takes part in judging: the rules that its version holds. */
export interface Layer {
  readonly name: string;
  readonly version: string;
  readonly digest: string;
  readonly released: boolean;
  readonly rules: readonly Rule[];
  /** The newest release that is here, where it comes after this version. */
  readonly newer?: string;
}

export interface ResolvedPacks {
  /** `general`, market, vehicle, shop; within each as named, then as given. */
  readonly layers: readonly Layer[];
  readonly limits: ReadonlyMap<string, HeatLimit>;
  readonly practice: HeatPractice;
  readonly windows: WeldWindows;
  /** Usual tolerances of the body, mm. */
  readonly tolerances: ReadonlyMap<Tolerance['of'], number>;
  /** Of all layers together: one that asks for nothing takes nothing away from another. */
  readonly triggers: readonly CheckTrigger[];
  readonly orders: readonly DayOrder[];
  readonly makers: readonly MakerStatements[];
  /** Packs that are here and known to be for other vehicles; of them only `makers` are kept, which say for themselves. */
  readonly setAside: readonly SetAside[];
  /** What is known of a rule id, in force or not. */
  readonly standingOf: (rule: string) => RuleStanding;
  /** Where the lock is not kept, a sentence each. */
  readonly drift: readonly string[];
}

export interface SetAside {
  readonly name: string;
  readonly version: string;
  readonly reason: string;
}

export type Resolution = { readonly ok: true; readonly packs: ResolvedPacks } | Refusal;

/** What of a plan's vehicle decides which packs are for it. */
export interface PlanVehicle extends CoveredVehicle {
  readonly market?: string | undefined;
}

/**
 * The layers that a plan is judged by, each in the newest version that is here and that the plan asks for. A pack that is named
 * and not there, or in no such version, leaves the plan unjudged: half the rules are none. With `vehicle`, the rules
 * and limits of packs that are known to be for another one are set aside; where the plan says too little to tell, they
 * count. Without it, those of every pack count. `locked` fixes versions; see `chooseVersions`.
 */
export function resolvePacks(
  available: readonly Pack[],
  pins: readonly string[] | undefined,
  vehicle?: PlanVehicle,
  locked?: ReadonlyMap<string, LockedVersion>,
): Resolution {
  const choice = chooseVersions(available, pins ?? [], locked);
  if (!choice.ok) return choice;
  const packs = inLayers(choice.chosen);
  const clash = clashIn(packs);
  if (clash !== undefined) return clash;
  const setAside: SetAside[] = [];
  const counting = packs.filter(({ at }) => {
    const reason = vehicle === undefined ? undefined : reasonAgainst(at, vehicle);
    if (reason === undefined) return true;
    setAside.push({ name: at.name, version: at.version, reason });
    return false;
  });
  const merged = mergeLimits(counting.map(({ at }) => at));
  if (!merged.ok) return merged;
  const practised = mergePractice(counting.map(({ at }) => at));
  if (!practised.ok) return practised;
  const tolerances = mergeTolerances(counting.map(({ at }) => at));
  if (!tolerances.ok) return tolerances;
  const raised = raiseRules(counting);
  if (!raised.ok) return raised;
  return {
    ok: true,
    packs: {
      layers: counting.map(({ at, newer }) => ({
        name: at.name,
        version: at.version,
        digest: at.digest,
        released: at.released,
        rules: raised.rules.get(at.name) ?? at.rules,
        ...(newer === undefined ? {} : { newer }),
      })),
      limits: merged.limits,
      practice: practised.practice,
      windows: windowsOf(counting.map(({ at }) => at)),
      tolerances: tolerances.mm,
      triggers: counting.flatMap(({ at }) => at.triggers ?? []),
      orders: counting.flatMap(({ at }) => at.orders ?? []),
      makers: packs.flatMap(({ at }) => makerStatements(at)),
      setAside,
      standingOf: (rule) => ruleStanding(counting, rule),
      drift: choice.drift,
    },
  };
}

function layerOf({ name, layer, vehicle }: Pack): PackLayer {
  if (name === 'general') return 'general';
  return layer ?? (vehicle === undefined ? 'shop' : 'vehicle');
}

/** From the bottom up; sorting keeps the order within a layer. */
function inLayers(packs: readonly ChosenPack[]): readonly ChosenPack[] {
  const rank = ({ whole }: ChosenPack): number => packLayers.indexOf(layerOf(whole));
  return packs.toSorted((a, b) => rank(a) - rank(b));
}

/** What makes packs unfit for each other. Ids are never used again, so those that ended count as well. */
function clashIn(packs: readonly ChosenPack[]): Refusal | undefined {
  const owners = new Map<string, string>();
  for (const { whole } of packs) {
    // The loader refuses it; what the maker forbids would be lost without a word.
    if (whole.vehicle === undefined && whole.provisions.length > 0) {
      return refuse(
        `The pack ${whole.name} holds statements of a maker and names no vehicle.`,
        whole.places?.[placeKey('provision', 0)],
      );
    }
    for (const { id } of whole.rules) {
      const owner = owners.get(id);
      if (owner !== undefined) {
        return refuse(
          `The packs ${owner} and ${whole.name} both have a rule \`${id}\`.`,
          whole.places?.[placeKey('rule', id)],
        );
      }
      owners.set(id, whole.name);
    }
  }
  return undefined;
}

function reasonAgainst(pack: Pack, vehicle: PlanVehicle): string | undefined {
  const answer = packCovers(pack, vehicle);
  if (answer.covers === 'no') return answer.reason.replace('The reference', 'The pack');
  return otherMarket(pack, vehicle.market);
}

/** A later layer knows its own sheets better: where it has a window, those under it are not asked. */
function windowsOf(packs: readonly Pack[]): WeldWindows {
  return packs.map(({ windows }) => windows).toReversed();
}

function makerStatements(pack: Pack): readonly MakerStatements[] {
  const { vehicle, provisions, parts = [], documents = [] } = pack;
  if (vehicle === undefined || provisions.length + parts.length + documents.length === 0) return [];
  const narrowed = <Item extends Pick<Pack['provisions'][number], 'bodies' | 'vins'>>(item: Item): Item => ({
    ...item,
    ...(item.bodies === undefined && vehicle.bodies !== undefined ? { bodies: vehicle.bodies } : {}),
    ...(item.vins === undefined && vehicle.vins !== undefined ? { vins: vehicle.vins } : {}),
  });
  return [
    {
      pack: `${pack.name} ${pack.version}`,
      maker: vehicle.maker,
      models: vehicle.models,
      statements: provisions.map(narrowed),
      parts: parts.map(narrowed),
      documents,
    },
  ];
}
