import type { HeatLimit, MakerStatements } from '../facts/context.ts';
import { nearestWords } from '../plan/nearest-word.ts';
import type { Limit, Pack, Rule } from './pack.ts';
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
  readonly makers: readonly MakerStatements[];
}

export type Resolution =
  { readonly ok: true; readonly packs: ResolvedPacks } | { readonly ok: false; readonly sentence: string };

/**
 * The layers that a plan is judged by: `general`, then those that it names, in its order, then the others that were given. A
 * pack that is named and not there, or there in another version, leaves the plan unjudged: half the rules are none.
 */
export function resolvePacks(available: readonly Pack[], pins: readonly string[] | undefined): Resolution {
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
    const fits = range === undefined || version === undefined ? true : fitsRange(version, range);
    if (fits === undefined || more.length > 0) {
      return refuse(`\`${pin}\` is not a pack with a version; write ${name}@1 or ${name}@1.0.0.`);
    }
    if (!fits) return refuse(`The plan asks for \`${pin}\`; here is ${name} ${pack.version}.`);
    if (!ordered.includes(pack)) ordered.push(pack);
  }
  for (const pack of available) if (!ordered.includes(pack)) ordered.push(pack);
  return layered(ordered);
}

function layered(packs: readonly Pack[]): Resolution {
  const owners = new Map<string, string>();
  const limits = new Map<string, Limit>();
  for (const pack of packs) {
    for (const { id } of pack.rules) {
      const owner = owners.get(id);
      if (owner !== undefined)
        return refuse(`The packs ${owner} and ${pack.name} both have a rule \`${id}\`.`);
      owners.set(id, pack.name);
    }
    for (const limit of pack.limits) {
      const before = limits.get(limit.victim);
      if (before !== undefined && isLooser(limit, before)) {
        return refuse(
          `The pack ${pack.name} loosens the limit for \`${limit.victim}\`; a later pack may only tighten it.`,
        );
      }
      limits.set(limit.victim, before === undefined ? limit : tighter(before, limit));
    }
  }
  return {
    ok: true,
    packs: {
      layers: packs.map(({ name, version, digest, released, rules }) => ({
        name,
        version,
        digest,
        released,
        rules: rulesInForce(rules, version),
      })),
      limits,
      makers: packs.flatMap(makerStatements),
    },
  };
}

function isLooser(later: Limit, before: Limit): boolean {
  const above = (a: number | undefined, b: number | undefined): boolean =>
    a !== undefined && b !== undefined && a > b;
  return (
    above(later.holdAboveCelsius, before.holdAboveCelsius) ||
    above(later.stopAboveCelsius, before.stopAboveCelsius) ||
    above(later.timeAbove?.celsius, before.timeAbove?.celsius) ||
    above(later.timeAbove?.atMostSeconds, before.timeAbove?.atMostSeconds)
  );
}

/** What the later pack leaves out stays as it was. */
function tighter(before: Limit, later: Limit): Limit {
  return { ...before, ...later };
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
