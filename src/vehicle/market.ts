export const markets = [
  'united-states',
  'canada',
  'north-america',
  'china',
  'european-union',
  'united-kingdom',
  'japan',
  'korea',
  'australia',
  'india',
  'mexico',
  'other',
] as const;

export type Market = (typeof markets)[number];

export interface MarketRules {
  readonly checkDigit: boolean;
  /** The tenth place encodes the model year. */
  readonly yearCode: boolean;
  /** The seventh place of a light vehicle tells which of two model years, thirty apart, the tenth means. */
  readonly seventhPlace: boolean;
  /** The serial of a light vehicle ends in five digits, any other in four. */
  readonly serialDigits: boolean;
}

const federal: MarketRules = { checkDigit: true, yearCode: true, seventhPlace: true, serialDigits: true };
// GB 16735 takes over check digit and year code (contents page of the 2004 edition). Nothing was found on the seventh
// place or the serial there, so they decide nothing.
const china: MarketRules = { checkDigit: true, yearCode: true, seventhPlace: false, serialDigits: false };
const free: MarketRules = { checkDigit: false, yearCode: false, seventhPlace: false, serialDigits: false };

/**
 * What a market requires of a vehicle identification number. United States: 49 CFR 565. Canada: Canada Motor Vehicle
 * Safety Standard 115, aligned with it (from memory). European Union and United Kingdom: neither is mandatory.
 * Japan, Korea, Australia, India, Mexico and the rest: treated as not required (common practice, no source read).
 */
export function marketRules(market: Market): MarketRules {
  switch (market) {
    case 'united-states':
    case 'canada':
    case 'north-america':
      return federal;
    case 'china':
      return china;
    case 'european-union':
    case 'united-kingdom':
    case 'japan':
    case 'korea':
    case 'australia':
    case 'india':
    case 'mexico':
    case 'other':
      return free;
  }
}
