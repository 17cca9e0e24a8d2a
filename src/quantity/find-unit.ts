import { dimensions } from './dimension.ts';
import type { Dimension } from './dimension.ts';
import { milliForMega, units } from './units.ts';
import type { Unit } from './units.ts';

/** `unclear`: the letters fit two units of this dimension that only case tells apart. */
export type FoundUnit = Unit | 'unclear' | undefined;

/**
 * The unit that a spelling stands for. The exact spelling counts first; any other mixture of upper and lower case
 * is accepted as long as it can mean one unit only (`1500 MPA`, but not `5 MOHM`: milliohm or megohm).
 */
export function findUnit(spelling: string, dimension: Dimension): FoundUnit {
  const known = spellings.get(dimension);
  return known?.exact.get(spelling) ?? known?.anyCase.get(spelling.toLowerCase());
}

interface Spellings {
  readonly exact: ReadonlyMap<string, Unit | 'unclear'>;
  readonly anyCase: ReadonlyMap<string, Unit | 'unclear'>;
}

const spellings: ReadonlyMap<Dimension, Spellings> = new Map(
  dimensions.map((dimension) => [dimension, spellingsOf(dimension)]),
);

function spellingsOf(dimension: Dimension): Spellings {
  const exact = new Map<string, Unit | 'unclear'>();
  const anyCase = new Map<string, Unit | 'unclear'>();
  for (const unit of units[dimension]) {
    for (const spelling of [unit.symbol, ...(unit.also ?? [])]) {
      exact.set(spelling, unit);
      const lower = spelling.toLowerCase();
      const other = anyCase.get(lower);
      anyCase.set(lower, other === undefined || other === unit ? unit : 'unclear');
    }
  }
  for (const spelling of milliForMega.keys()) {
    if (anyCase.has(spelling.toLowerCase())) exact.set(spelling, 'unclear');
  }
  return { exact, anyCase };
}
