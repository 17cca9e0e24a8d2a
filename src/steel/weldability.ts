import { carbonEquivalents } from './carbon-equivalent.ts';
import type { CarbonEquivalents } from './carbon-equivalent.ts';
import type { KnownComposition } from './composition.ts';
import { compositionOf } from './composition.ts';
import type { Material } from './material.ts';

export interface Weldability extends CarbonEquivalents {
  readonly kind: KnownComposition['kind'];
  readonly source: string;
}

/** Carbon equivalents of the reading that hardens most beside a weld; undefined where no composition is on record for any. */
export function weldability(readings: readonly Material[]): Weldability | undefined {
  let worst: Weldability | undefined;
  for (const { designation } of readings) {
    const found = compositionOf(designation.replace(/\+.*/, ''));
    if (found === undefined) continue;
    const equivalents = carbonEquivalents(found.composition);
    if (worst === undefined || equivalents.ce > worst.ce)
      worst = { ...equivalents, kind: found.kind, source: found.source };
  }
  return worst;
}
