import { findUnit } from '../../quantity/find-unit.ts';

/** MPa in one of a unit of stress that plans may use, as `ksi`. Throws an Error for any other word: a fault of the program. */
export function mpaPerUnit(spelling: string): number {
  const unit = findUnit(spelling, 'stress');
  if (unit === undefined || unit === 'unclear') throw new Error(`no unit of stress: ${spelling}`);
  return (unit.times ?? 1) / (unit.over ?? 1);
}

/** MPa in one kgf/mm²: kilograms-force are a unit of force in plans, here they stand on a square millimetre. */
export function mpaPerKgfOnMm2(): number {
  const unit = findUnit('kgf', 'force');
  if (unit === undefined || unit === 'unclear') throw new Error('no unit of force: kgf');
  return ((unit.times ?? 1) / (unit.over ?? 1)) * 1000;
}
