import { diameterOf } from './button.ts';
import { eurocodeShear } from './eurocode-spot.ts';
import type { LappedSpot } from './eurocode-spot.ts';
import { plugFusedMm } from './plug.ts';
import { sized, unsized } from './sized.ts';
import type { Sized } from './sized.ts';

export interface Row {
  readonly count: number;
  /** A plug is credited by its own formula, a spot by its button. */
  readonly kind: 'spot' | 'plug';
  /** Button of a spot, mm; 5 √t where it is left out. */
  readonly buttonMm?: number;
}

/** What a row joins; the same on both sides of a comparison. */
export interface RowStack {
  readonly governingMm: number;
  readonly thinnerMm: number;
  readonly thickerMm: number;
  /** Of the thinner sheet, MPa; 1 where only the ratio of two rows is asked for. */
  readonly tensileMpa: number;
}

/** A factory spot is taken at 5 √t: what machines are set up for. A larger repair spot is credited with no more. */
const setUpMultiple = 5;

/**
 * What a row of spots or plugs bears in shear, kN: count times the strength of one (EN 1993-1-3, from memory), each at full
 * credit. It compares two rows; it certifies none.
 */
export function rowShear({ count, kind, buttonMm }: Row, stack: RowStack): Sized {
  if (!Number.isInteger(count) || count < 0) return unsized(`A row of ${count} joints is none.`);
  const setUpMm = diameterOf(setUpMultiple, stack.governingMm);
  const fusedMm = kind === 'plug' ? plugFusedMm(stack.thinnerMm) : Math.min(buttonMm ?? setUpMm, setUpMm);
  const spot: LappedSpot = { fusedMm, ...stack };
  const one = eurocodeShear(spot);
  return one.ok ? sized(count * one.value) : one;
}

/** Strength of the new row by that of the factory's, both at full credit. */
export function rowRatio(made: Row, factory: Row, stack: Omit<RowStack, 'tensileMpa'>): Sized {
  if (factory.count === 0) return unsized('The factory put no row there.');
  const now = rowShear(made, { tensileMpa: 1, ...stack });
  const before = rowShear(factory, { tensileMpa: 1, ...stack });
  if (!now.ok) return now;
  return before.ok ? sized(now.value / before.value) : before;
}
