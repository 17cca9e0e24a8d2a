import type { Pack } from '../pack.ts';

/** What a vehicle built for the whole of a region may have been built for, and the other way round. */
const within: Readonly<Record<string, readonly string[]>> = { 'north-america': ['united-states', 'canada'] };

/** Why a market pack is known not to be for a vehicle built for `market`; in doubt it is for it. */
export function otherMarket({ markets }: Pack, market: string | undefined): string | undefined {
  if (markets === undefined || market === undefined) return undefined;
  const counts = markets.some(
    (one) =>
      one === market || within[one]?.includes(market) === true || within[market]?.includes(one) === true,
  );
  return counts ? undefined : `The pack is for the market ${markets.join(', ')}, not for ${market}.`;
}
