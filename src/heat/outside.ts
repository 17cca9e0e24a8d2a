/** One number, the least and the most that can be computed with, and its unit. */
export type Bound = readonly [what: string, value: number, least: number, most: number, unit: string];

/** The sentence for the first number that lies outside its range (NaN does); undefined when all lie inside. */
export function firstOutside(bounds: readonly Bound[]): string | undefined {
  const off = bounds.find(([, value, least, most]) => !(value >= least && value <= most));
  if (!off) return undefined;
  const [what, value, least, most, unit] = off;
  const range = [`${least} to ${most}`, unit].join(' ').trim();
  return `${what} ${[value, unit].join(' ').trim()} is outside what can be computed: ${range}`;
}
