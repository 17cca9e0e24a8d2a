import type { Pack, PackVehicle } from '../pack.ts';
import { inForce, rulesInForce } from './rules-in-force.ts';
import { compareVersions, readVersion } from './semantic-version.ts';

/** One version that a pack can be had in. */
export interface PackVersion {
  readonly version: string;
  readonly digest: string;
  readonly released: boolean;
}

/** Every version that a pack can be had in, the oldest first: what was released, and what its files give now. */
export function versionsOf(pack: Pack): readonly PackVersion[] {
  const released = (pack.releases ?? []).map(({ version, digest }) => ({ version, digest, released: true }));
  if (released.some(({ version }) => version === pack.version)) return released;
  return [...released, { version: pack.version, digest: pack.digest, released: pack.released }];
}

/** The pack as it was in one of its versions: nothing in it that begins later or ended before. */
export function packAt(pack: Pack, { version, digest, released }: PackVersion): Pack {
  const { vehicle: _, ...rest } = pack;
  const vehicle = vehicleAt(pack, version);
  return {
    ...rest,
    version,
    digest,
    released,
    facts: pack.releases?.find((release) => release.version === version)?.facts ?? pack.facts,
    ...(vehicle === undefined ? {} : { vehicle }),
    rules: rulesInForce(pack.rules, version),
    limits: inForce(pack.limits, version),
    allowances: inForce(pack.allowances, version),
    reaches: inForce(pack.reaches, version),
    windows: inForce(pack.windows, version),
    tolerances: inForce(pack.tolerances ?? [], version),
    triggers: inForce(pack.triggers ?? [], version),
    orders: inForce(pack.orders ?? [], version),
    provisions: inForce(pack.provisions, version),
    parts: inForce(pack.parts ?? [], version),
    documents: inForce(pack.documents ?? [], version),
    raises: inForce(pack.raises ?? [], version),
  };
}

function vehicleAt({ vehicle, vehicleBefore }: Pack, version: string): PackVehicle | undefined {
  const at = readVersion(version);
  const former = vehicleBefore?.find(({ until }) => {
    const end = readVersion(until);
    return at !== undefined && end !== undefined && compareVersions(at, end) < 0;
  });
  return former?.vehicle ?? vehicle;
}
