import type { Dimension } from './dimension.ts';

export interface Sense {
  readonly article: string;
  readonly lowest: number;
  readonly highest: number;
}

const absoluteZero = -273.15;

/**
 * What can be meant at all, in the canonical unit. Not limits of the trade (those are in the rule packs): the
 * upper ends are far beyond any car and catch slipped digits and wrong prefixes before arithmetic is done with them.
 */
export const sense: Readonly<Record<Dimension, Sense>> = {
  temperature: { article: 'a temperature', lowest: absoluteZero, highest: 10_000 },
  'temperature difference': { article: 'a temperature difference', lowest: -10_000, highest: 10_000 },
  length: { article: 'a length', lowest: 0, highest: 1_000_000 },
  time: { article: 'a time', lowest: 0, highest: 3_200_000_000 },
  stress: { article: 'a stress', lowest: 0, highest: 1_000_000 },
  force: { article: 'a force', lowest: 0, highest: 10_000 },
  current: { article: 'a current', lowest: 0, highest: 1000 },
  voltage: { article: 'a voltage', lowest: 0, highest: 1_000_000 },
  energy: { article: 'an energy', lowest: 0, highest: 10_000_000_000 },
  'energy per length': { article: 'an energy per length', lowest: 0, highest: 1000 },
  'energy per area': { article: 'an energy per area', lowest: 0, highest: 1_000_000 },
  power: { article: 'a power', lowest: 0, highest: 10_000_000 },
  speed: { article: 'a speed', lowest: 0, highest: 100_000 },
  insulation: { article: 'an insulation resistance per volt', lowest: 0, highest: 1e12 },
  resistance: { article: 'a resistance', lowest: 0, highest: 1e15 },
  angle: { article: 'an angle', lowest: -360, highest: 360 },
  mass: { article: 'a mass', lowest: 0, highest: 100_000 },
  percent: { article: 'a percentage', lowest: -100, highest: 1000 },
};

/** One sentence when a value cannot be meant, undefined when it can. `text` is what the plan wrote. */
export function senseFault(value: number, limits: Sense, unit: string, text: string): string | undefined {
  const { article, lowest, highest } = limits;
  if (value >= lowest && value <= highest) return undefined;
  if (lowest === absoluteZero && value < lowest)
    return `"${text}" is below absolute zero, which is ${lowest} ${unit}.`;
  if (lowest === 0 && value < 0) return `"${text}" is negative, and ${article} cannot be.`;
  return `"${text}" is out of all proportion: ${article} is read from ${lowest} to ${highest} ${unit}.`;
}
