import type { Operation } from '../../generated/plan-types.ts';

/** Cut by a flame or by plasma: what stays is heated as beside a weld. */
export function isThermalCut({ cut_with: means }: Operation): boolean {
  return means === 'plasma' || means === 'flame';
}
