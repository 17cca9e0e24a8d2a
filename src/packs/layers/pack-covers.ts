import { coverage } from '../../vehicle/coverage.ts';
import type { Coverage, CoveredVehicle } from '../../vehicle/coverage.ts';
import { sameName } from '../../vehicle/same-name.ts';
import type { Pack } from '../pack.ts';

const everyYear = { from: -Infinity, to: Infinity };

/** Whether a pack is for a vehicle; what it does not narrow (bodies, years, or everything) covers all. */
export function packCovers({ vehicle: covered }: Pack, vehicle: CoveredVehicle): Coverage {
  if (covered === undefined) return { covers: 'yes' };
  const { maker, models, bodies, years, vins } = covered;
  return coverage(vehicle, {
    maker,
    models,
    bodies: bodies ?? 'all',
    years: years ?? everyYear,
    vinRange: vins,
  });
}

/** Whether there can be a vehicle that both packs are for; only then is one of them a layer over the other. */
export function mayShareVehicle({ vehicle: one }: Pack, { vehicle: other }: Pack): boolean {
  if (one === undefined || other === undefined) return true;
  if (!sameName(one.maker, other.maker) || !shareName(one.models, other.models)) return false;
  if (one.bodies !== undefined && other.bodies !== undefined && !shareName(one.bodies, other.bodies))
    return false;
  const a = one.years ?? everyYear;
  const b = other.years ?? everyYear;
  return a.from <= b.to && b.from <= a.to;
}

function shareName(some: readonly string[], others: readonly string[]): boolean {
  return some.some((name) => others.some((other) => sameName(name, other)));
}
