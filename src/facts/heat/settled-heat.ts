import type { HeatLimit } from '../context.ts';
import type { NeighbourHeat } from './neighbour-heat.ts';

/**
 * What a limit may be held against. Where the plan is silent the worst stands as long as it keeps the limit; where it does not, the
 * stated numbers count if they are over the limit by themselves, and else it is not known: silence neither passes nor
 * condemns.
 */
export function settledHeat(heat: NeighbourHeat, limit: HeatLimit | undefined): NeighbourHeat {
  if (!heat.ok || heat.silence === undefined) return heat;
  const { silence, ...worst } = heat;
  const most = limit?.holdAboveCelsius ?? limit?.stopAboveCelsius;
  const { sureCelsius, reason } = silence;
  if (most !== undefined && heat.peakCelsius <= most) return worst;
  const isSure = sureCelsius !== undefined && (most === undefined || sureCelsius > most);
  if (isSure) return { ...worst, peakCelsius: sureCelsius };
  return most === undefined && limit !== undefined ? worst : { ok: false, reason };
}
