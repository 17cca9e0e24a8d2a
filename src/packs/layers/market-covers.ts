import { maySameMarket } from '../../vehicle/same-market.ts';
import type { Pack } from '../pack.ts';

/** Why a market pack is known not to be for a vehicle built for `market`; in doubt it is for it. */
export function otherMarket({ markets }: Pack, market: string | undefined): string | undefined {
  if (markets === undefined || market === undefined) return undefined;
  const counts = markets.some((one) => maySameMarket(one, market));
  return counts ? undefined : `The pack is for the market ${markets.join(', ')}, not for ${market}.`;
}
