import type { Material } from '../material.ts';
import { steelFamily } from '../steel-family.ts';
import type { StrengthClass } from '../strength-class.ts';
import { classOfTensile, pressHardenedFromMpa, steelRank } from '../strength-class.ts';

/** Share by which a stated strength may miss a grade's limits: the trade rounds 590 to 600 and 980 to 1000. Practice. */
const tradeStep = 0.1;

/** Upper bound over the minimum where a standard gives no maximum. Practice: in the table maxima reach 1.1 to 1.5 times. */
const spreadWithoutMaximum = 1.5;

/** Usual reach above the minimum, from the same maxima. */
const usualSpread = 1.25;

/** Highest tensile strength of mild sheet where no figure is tabled, in MPa: that of DC01, EN 10130. */
const mildMaximum = 410;

/** Strengths in MPa that no sheet of the material reaches. From general materials knowledge, rounded upwards. */
const ceilings: Readonly<Partial<Record<StrengthClass, number>>> = { aluminium: 700, magnesium: 450 };

/** Lowest minimum tensile strength in the grade table of a family that belongs to the class, in MPa. */
const familyMinima: Readonly<Partial<Record<StrengthClass, number>>> = {
  'high-strength': 280, // HC180P, EN 10268
  'advanced high-strength': 440, // DP 440T/250Y, SAE J2745
  'ultra-high-strength': 690, // UHSS Grade 90, ASTM A1011
  'press-hardened': pressHardenedFromMpa, // a hardened part; the softer grades of tailored blanks need their designation
};

/** Whether a stated tensile strength can be that of a material, within the trade's rounding. */
export function strengthFits(material: Material, tensileMpa: number): boolean {
  const ceiling = ceilings[material.class];
  if (ceiling !== undefined && tensileMpa > ceiling) return false;
  if (material.weakestClass !== undefined) return withinRange(material, tensileMpa);
  const lowest = material.tensileMinMpa ?? material.yieldMinMpa;
  if (material.class === 'press-hardened' && lowest === undefined && material.tensileTypicalMpa !== undefined)
    return isNearNominal(material.tensileTypicalMpa, tensileMpa);
  if (lowest !== undefined && tensileMpa < lowest * (1 - tradeStep)) return false;
  if (mayBeRolledHard(material)) return tensileMpa <= hardestStainlessMpa;
  if (material.tensileMaxMpa !== undefined) return tensileMpa <= material.tensileMaxMpa * (1 + tradeStep);
  const rank = steelRank(material.class);
  if (rank === undefined || material.class === 'press-hardened') {
    return lowest !== undefined || rank === undefined || withinOneClass(rank, tensileMpa);
  }
  if (material.tensileMinMpa !== undefined)
    return tensileMpa <= material.tensileMinMpa * spreadWithoutMaximum;
  if (material.yieldMinMpa !== undefined)
    return tensileMpa <= mostAboveYield(material.yieldMinMpa) * (1 + tradeStep);
  if (rank === 0 && tensileMpa > mildMaximum * (1 + tradeStep)) return false;
  return withinOneClass(rank, tensileMpa);
}

/** Hardened sheet of the nominal class 1500 has 1300 to 1650 MPa: nine tenths and an eighth more, with the trade's rounding. */
function isNearNominal(nominalMpa: number, tensileMpa: number): boolean {
  return tensileMpa >= nominalMpa * 0.8 && tensileMpa <= nominalMpa * 1.25;
}

/** Hardest strip of EN 10151 (+C1900), with some room; MPa, from memory. */
const hardestStainlessMpa = 2200;

/** One number stands for austenitic sheet annealed and rolled hard; a strength above the annealed one tells which. */
function mayBeRolledHard({ family, condition }: Material): boolean {
  if (condition === 'cold hardened') return false;
  return family === steelFamily('stainless_austenitic').word || family === steelFamily('stainless').word;
}

/**
 * Tensile strength that sheet of a given minimum yield reaches at most, MPa. In the table it is up to 1.7 times the yield, and of
 * soft sheet up to 200 MPa above it.
 */
function mostAboveYield(yieldMinMpa: number): number {
  return Math.max(1.7 * yieldMinMpa, yieldMinMpa + 200);
}

/**
 * Whether a strength that fits a material still lies above what its standard allows, or, without a maximum, above what is
 * usual. The trade's rounding excuses it as a slip, but not as a reason to count the weaker class.
 */
export function aboveLimits(material: Material, tensileMpa: number): boolean {
  const most = material.tensileMaxMpa ?? usualMostMpa(material);
  if (most !== undefined) return tensileMpa > most;
  // Without any figure the band of the stated strength is all that there is to go by.
  return (steelRank(classOfTensile(tensileMpa)) ?? 0) > (steelRank(material.class) ?? Infinity);
}

/** What sheet of a material without a tabled maximum usually has at most, MPa; undefined where it has no minimum either. */
export function usualMostMpa({ tensileMinMpa, yieldMinMpa }: Material): number | undefined {
  if (tensileMinMpa !== undefined) return tensileMinMpa * usualSpread;
  return yieldMinMpa === undefined ? undefined : mostAboveYield(yieldMinMpa);
}

/** Whether a stated class can go with a stated tensile strength when no grade tells the family. */
export function classFitsStrength(stated: StrengthClass, tensileMpa: number): boolean {
  if (steelRank(stated) === undefined) return tensileMpa <= (ceilings[stated] ?? Infinity);
  const band = classOfTensile(tensileMpa);
  if (stated === band) return true;
  // Families set floors above their band (dual phase begins at 440 MPa), and bodies disagree on the name from 980 MPa.
  if (band === 'ultra-high-strength')
    return stated === 'advanced high-strength' || stated === 'press-hardened';
  const stronger = (steelRank(stated) ?? 0) > (steelRank(band) ?? 0);
  return stronger && tensileMpa >= (familyMinima[stated] ?? Infinity);
}

/** A class word stands for every strength from its weakest class upwards. */
function withinRange(material: Material, tensileMpa: number): boolean {
  const weakest = steelRank(material.weakestClass ?? material.class) ?? 0;
  return (steelRank(classOfTensile(tensileMpa)) ?? 0) >= weakest;
}

function withinOneClass(rank: number, tensileMpa: number): boolean {
  return Math.abs(rank - (steelRank(classOfTensile(tensileMpa)) ?? 0)) <= 1;
}
