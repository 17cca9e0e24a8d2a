import { carbonEquivalents } from './carbon-equivalent.ts';
import type { CarbonEquivalents } from './carbon-equivalent.ts';
import type { KnownComposition } from './composition.ts';
import { compositionOf } from './composition.ts';
import type { Material } from '../material.ts';

export interface Weldability extends CarbonEquivalents {
  readonly kind: KnownComposition['kind'];
  readonly source: string;
}

/**
 * Carbon equivalents of the reading or sheet that hardens most beside a weld. Undefined where no composition is on record for one of
 * them: that one might harden more.
 */
export function weldability(readings: readonly Material[]): Weldability | undefined {
  let worst: Weldability | undefined;
  for (const { designation } of readings) {
    const found = compositionOf(designation.replace(/\+.*/, ''));
    if (found === undefined) return undefined;
    const { ce, cet, pcm } = carbonEquivalents(found.composition);
    if (worst === undefined || ce > worst.ce)
      worst = { ce, cet, pcm, kind: found.kind, source: found.source };
  }
  return worst;
}
