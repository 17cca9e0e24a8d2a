import type { Material } from '../material.ts';
import { classOfFamilyAt } from '../steel-family.ts';
import type { StrengthClass } from '../strength-class.ts';
import { aboveLimits, strengthFits, usualMostMpa } from '../strength/strength-fit.ts';

/** A stated strength that the trade's rounding still excuses, and that lies outside what the grade promises. */
export interface StrengthDoubt {
  /** Names both numbers. */
  readonly sentence: string;
  /** True where the class by the stated strength is another than that of the grade. */
  readonly changesClass: boolean;
}

/**
 * Undefined where the strength lies inside the limits of a reading, and where it fits none: that is a contradiction and told as such.
 *
 * @param tensileMpa the stated tensile strength in MPa.
 */
export function strengthDoubt(
  readings: readonly Material[],
  tensileMpa: number,
  gradeClass: StrengthClass | undefined,
): StrengthDoubt | undefined {
  const fitting = readings.filter((one) => strengthFits(one, tensileMpa));
  const [first] = fitting;
  if (first === undefined || !fitting.every((one) => isOutside(one, tensileMpa))) return undefined;
  const byStrength = classOfFamilyAt(first.family, tensileMpa);
  const changesClass = byStrength !== undefined && gradeClass !== undefined && byStrength !== gradeClass;
  const limits = limitsOf(first, tensileMpa);
  const classes = changesClass
    ? ` By its grade it is ${gradeClass} steel, by its strength ${byStrength}.`
    : '';
  return {
    sentence: `The strength is stated as ${round(tensileMpa)} MPa, but ${first.designation} has ${limits}.${classes}`,
    changesClass,
  };
}

function isOutside(one: Material, tensileMpa: number): boolean {
  // A word covers a range; a strength outside it fits none.
  if (one.weakestClass !== undefined) return false;
  return isBelow(one, tensileMpa) || aboveLimits(one, tensileMpa);
}

/** Whole ksi are a number cut off: 590 MPa is read as 85 ksi, which is 586. */
const cutOffMpa = 7;

function isBelow({ tensileMinMpa }: Material, tensileMpa: number): boolean {
  return tensileMinMpa !== undefined && tensileMpa < tensileMinMpa - cutOffMpa;
}

function limitsOf(one: Material, tensileMpa: number): string {
  const { tensileMinMpa, tensileMaxMpa } = one;
  if (tensileMinMpa !== undefined && tensileMaxMpa !== undefined)
    return `${tensileMinMpa} to ${tensileMaxMpa} MPa`;
  if (tensileMaxMpa !== undefined) return `${tensileMaxMpa} MPa at most`;
  if (isBelow(one, tensileMpa)) return `${tensileMinMpa ?? 0} MPa at least`;
  const most = usualMostMpa(one);
  return most === undefined
    ? `no more than ${one.class} steel usually has`
    : `no maximum, and usually ${round(most)} MPa at most`;
}

function round(mpa: number): number {
  return Math.round(mpa);
}
