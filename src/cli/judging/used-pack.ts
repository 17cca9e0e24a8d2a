import type { Layer } from '../../packs/layers/resolve-packs.ts';
import type { UsedPack } from '../../report/plan-report.ts';

/** A pack as a report names it. */
export function usedPack({ name, version, digest, released, newer }: Layer): UsedPack {
  return { pack: name, version, digest, released, ...(newer === undefined ? {} : { newer }) };
}
