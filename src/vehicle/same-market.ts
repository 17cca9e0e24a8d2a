/** What a vehicle built for the whole of a region may have been built for, and the other way round. */
const within: Readonly<Record<string, readonly string[]>> = { 'north-america': ['united-states', 'canada'] };

/** Whether a vehicle built for the one market may be of the other. */
export function maySameMarket(one: string, other: string): boolean {
  return one === other || within[one]?.includes(other) === true || within[other]?.includes(one) === true;
}
