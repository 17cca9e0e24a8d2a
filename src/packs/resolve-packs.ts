import type { HeatLimit, HeatPractice, MakerStatements } from '../facts/context.ts';
import { nearestWords } from '../plan/nearest-word.ts';
import type { CoveredVehicle } from '../vehicle/coverage.ts';
import { mergePractice } from './heat-practice.ts';
import { mergeLimits } from './merge-limits.ts';
import { packCovers } from './pack-covers.ts';
import type { Pack, Rule } from './pack.ts';
import { rulesInForce } from './rules-in-force.ts';
import { fitsRange, readVersion } from './semantic-version.ts';

/** One pack as it takes part in judging: the rules that its version holds. */
export interface Layer {
  readonly name: string;
  readonly version: string;
  readonly digest: string;
  readonly released: boolean;
  readonly rules: readonly Rule[];
}

export interface ResolvedPacks {
  /** `general` first, later layers after it. */
  readonly layers: readonly Layer[];
  readonly limits: ReadonlyMap<string, HeatLimit>;
  readonly practice: HeatPractice;
  readonly makers: readonly MakerStatements[];
  /** Packs that are here and known to be for other vehicles; of them only `makers` are kept, which say for themselves. */
  readonly setAside: readonly SetAside[];
}

export interface SetAside {
  readonly name: string;
  readonly version: string;
  readonly reason: string;
}

export type Resolution =
  { readonly ok: true; readonly packs: ResolvedPacks } | { readonly ok: false; readonly sentence: string };

/**
 * The layers that a plan is judged by: `general`, then those that it names, in its order, then the others that were given. A
 * pack that is named and not there, or there in another version, leaves the plan unjudged: half the rules are none.
 * With `vehicle`, the rules and limits of packs that are known to be for another one are set aside; where the plan says too
 * little to tell, they count. Without it, those of every pack count.
 */
export function resolvePacks(
  available: readonly Pack[],
  pins: readonly string[] | undefined,
  vehicle?: CoveredVehicle,
): Resolution {
  const ordered: Pack[] = [];
  for (const pack of available) {
    if (available.filter(({ name }) => name === pack.name).length > 1) {
      return refuse(`The pack ${pack.name} was given more than once.`);
    }
  }
  const general = available.find(({ name }) => name === 'general');
  if (general === undefined) return refuse('The general pack is not there.');
  ordered.push(general);
  for (const pin of pins ?? []) {
    const [name = '', range, ...more] = pin.split('@');
    const pack = available.find((one) => one.name === name);
    if (pack === undefined) {
      const near = nearestWords(
        name,
        available.map((one) => one.name),
      );
      const hint = near.length === 0 ? '' : ` Nearest known: \`${near.join('`, `')}\`.`;
      return refuse(
        `The plan asks for the pack \`${pin}\`, which is not here; give its folder with --rules.${hint}`,
      );
    }
    const version = readVersion(pack.version);
    const fits = range === undefined ? true : version && fitsRange(version, range);
    if (fits === undefined || more.length > 0) {
      return refuse(`\`${pin}\` is not a pack with a version; write ${name}@1 or ${name}@1.0.0.`);
    }
    if (!fits) return refuse(`The plan asks for \`${pin}\`; here is ${name} ${pack.version}.`);
    if (!ordered.includes(pack)) ordered.push(pack);
  }
  for (const pack of available) if (!ordered.includes(pack)) ordered.push(pack);
  return layered(ordered, vehicle);
}

function layered(packs: readonly Pack[], vehicle: CoveredVehicle | undefined): Resolution {
  const owners = new Map<string, string>();
  for (const pack of packs) {
    // The loader refuses both; a pack made otherwise would lose its rules, or what the maker forbids, without a word.
    if (readVersion(pack.version) === undefined) {
      return refuse(
        `The version of the pack ${pack.name} cannot be read; it is three numbers, such as 1.0.0.`,
      );
    }
    if (pack.vehicle === undefined && pack.provisions.length > 0) {
      return refuse(`The pack ${pack.name} holds statements of a maker and names no vehicle.`);
    }
    for (const { id } of pack.rules) {
      const owner = owners.get(id);
      if (owner !== undefined)
        return refuse(`The packs ${owner} and ${pack.name} both have a rule \`${id}\`.`);
      owners.set(id, pack.name);
    }
  }
  const setAside: SetAside[] = [];
  const counting = packs.filter((pack) => {
    const answer = vehicle === undefined ? undefined : packCovers(pack, vehicle);
    if (answer?.covers !== 'no') return true;
    const reason = answer.reason.replace('The reference', 'The pack');
    setAside.push({ name: pack.name, version: pack.version, reason });
    return false;
  });
  const merged = mergeLimits(counting);
  if (!merged.ok) return refuse(merged.sentence);
  const practised = mergePractice(counting);
  if (!practised.ok) return refuse(practised.sentence);
  return {
    ok: true,
    packs: {
      layers: counting.map(({ name, version, digest, released, rules }) => ({
        name,
        version,
        digest,
        released,
        rules: rulesInForce(rules, version),
      })),
      limits: merged.limits,
      practice: practised.practice,
      makers: packs.flatMap(makerStatements),
      setAside,
    },
  };
}

function makerStatements(pack: Pack): readonly MakerStatements[] {
  const { vehicle } = pack;
  if (vehicle === undefined || pack.provisions.length === 0) return [];
  return [
    {
      pack: `${pack.name} ${pack.version}`,
      maker: vehicle.maker,
      models: vehicle.models,
      statements: pack.provisions.map((provision) =>
        provision.bodies === undefined && vehicle.bodies !== undefined
          ? { ...provision, bodies: vehicle.bodies }
          : provision,
      ),
    },
  ];
}

function refuse(sentence: string): Resolution {
  return { ok: false, sentence };
}
