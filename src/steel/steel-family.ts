import type { StrengthClass } from './strength-class.ts';
import { classOfTensile, pressHardenedFromMpa, steelRank, strongest } from './strength-class.ts';

export interface SteelFamily {
  /** The family in trade words, as shown to users. */
  readonly word: string;
  /** The weakest class a member of the family can have. */
  readonly floor: StrengthClass;
  /** True where the name keeps the family back: the strongest class counts that any family has at such a strength. */
  readonly byStrongest?: true;
}

/** Families by their key in the grade table. Which class a family belongs to is common practice. */
const families: Readonly<Record<string, SteelFamily>> = {
  mild: { word: 'mild steel', floor: 'mild' },
  high_strength_if: { word: 'interstitial-free high-strength', floor: 'high-strength' },
  isotropic: { word: 'isotropic', floor: 'high-strength' },
  rephosphorised: { word: 'rephosphorised', floor: 'high-strength' },
  solid_solution: { word: 'solid-solution strengthened', floor: 'high-strength' },
  bake_hardening: { word: 'bake-hardening', floor: 'high-strength' },
  dent_resistant_non_bh: { word: 'dent-resistant', floor: 'high-strength' },
  structural: { word: 'structural', floor: 'high-strength' },
  hsla: { word: 'high-strength low-alloy', floor: 'high-strength' },
  hsla_ultra_high: { word: 'ultra-high-strength low-alloy', floor: 'ultra-high-strength' },
  // The application guidelines of the steel industry count it among the multiphase steels, which are advanced from 440 MPa.
  ferrite_bainite: { word: 'ferrite-bainite', floor: 'advanced high-strength' },
  cold_hardened: { word: 'cold-hardened strip', floor: 'high-strength' },
  recovery_annealed: { word: 'recovery-annealed', floor: 'high-strength' },
  dual_phase: { word: 'dual-phase', floor: 'advanced high-strength' },
  dual_phase_high_ductility: { word: 'dual-phase of high ductility', floor: 'advanced high-strength' },
  trip: { word: 'TRIP', floor: 'advanced high-strength' },
  twip: { word: 'TWIP', floor: 'advanced high-strength' },
  quench_partition: { word: 'quench-and-partition', floor: 'advanced high-strength' },
  complex_phase: { word: 'complex-phase', floor: 'advanced high-strength' },
  unnamed: { word: 'steel whose family the name keeps back', floor: 'mild', byStrongest: true },
  martensitic: { word: 'martensitic', floor: 'ultra-high-strength' },
  press_hardening: { word: 'press-hardening steel', floor: 'press-hardened' },
  // The same boron steels are quenched and tempered for machine parts and press-hardened for bodies; a grade on a body
  // part does not say which, so the stronger use counts.
  quenched_tempered_boron: { word: 'boron steel', floor: 'press-hardened' },
  stainless: { word: 'stainless', floor: 'stainless' },
  stainless_austenitic: { word: 'austenitic stainless', floor: 'stainless' },
  stainless_ferritic: { word: 'ferritic stainless', floor: 'stainless' },
  aluminium: { word: 'aluminium', floor: 'aluminium' },
  aluminium_5xxx: { word: 'aluminium 5xxx', floor: 'aluminium' },
  aluminium_6xxx: { word: 'aluminium 6xxx', floor: 'aluminium' },
  aluminium_7xxx: { word: 'aluminium 7xxx', floor: 'aluminium' },
  aluminium_casting: { word: 'aluminium casting', floor: 'aluminium' },
  magnesium: { word: 'magnesium', floor: 'magnesium' },
  composite: { word: 'fibre composite', floor: 'composite' },
  composite_cfrp: { word: 'carbon-fibre composite', floor: 'composite' },
  composite_gfrp: { word: 'glass-fibre composite', floor: 'composite' },
  composite_thermoplastic: { word: 'thermoplastic composite', floor: 'composite' },
  plastic: { word: 'plastic without fibres', floor: 'plastic' },
};

/** Throws an Error for a key that is not in the table of families: the data and this file must agree. */
export function steelFamily(key: string): SteelFamily {
  const family = Object.hasOwn(families, key) ? families[key] : undefined;
  if (family === undefined) throw new Error(`the grade table names a family without a class: ${key}`);
  return family;
}

/** From this minimum yield in MPa low-alloy sheet stands at 585 MPa or more (S550MC 600, EN 10149-2; 550X 620, SAE J2340). */
const advancedFromYieldMpa = 550;

/**
 * Class of a member of a family. The family sets the least; from 590 MPa tensile strength, or 550 MPa yield, a steel is never weaker
 * than its band, whatever its family: hot-rolled low-alloy steel of 700 MPa is welded and heated like no high-strength steel. Yield
 * bounds the tensile strength from below where only the yield is known.
 */
export function classInFamily(
  family: SteelFamily,
  tensileMinMpa: number | undefined,
  yieldMinMpa: number | undefined,
): StrengthClass {
  const known = Math.max(tensileMinMpa ?? 0, yieldMinMpa ?? 0);
  if (steelRank(family.floor) === undefined || known <= 0) return family.floor;
  const band = classOfTensile(known);
  if (family.byStrongest === true) return strongestAt(band, tensileMinMpa, yieldMinMpa);
  const byYield: StrengthClass =
    (yieldMinMpa ?? 0) >= advancedFromYieldMpa ? 'advanced high-strength' : family.floor;
  const byBand = band === 'mild' || band === 'high-strength' ? family.floor : band;
  return strongest([family.floor, byYield, byBand]) ?? family.floor;
}

/** Lowest minimum tensile strength (SAE J2745) and yield (EN 10338) of multiphase sheet in the grade table, in MPa. */
const multiphaseFrom = { tensileMpa: 440, yieldMpa: 250 };

function strongestAt(
  band: StrengthClass,
  tensileMinMpa: number | undefined,
  yieldMinMpa: number | undefined,
): StrengthClass {
  if ((tensileMinMpa ?? yieldMinMpa ?? 0) >= pressHardenedFromMpa) return 'press-hardened';
  const multiphase =
    tensileMinMpa === undefined
      ? (yieldMinMpa ?? 0) >= multiphaseFrom.yieldMpa
      : tensileMinMpa >= multiphaseFrom.tensileMpa;
  return (multiphase ? strongest([band, 'advanced high-strength']) : band) ?? band;
}

/** Floor of the family that has this trade word; undefined for a word that is no family's. */
export function steelFamilyFloor(word: string): StrengthClass | undefined {
  return familyOfWord(word)?.floor;
}

/** Class that a member of the family with this trade word has at a tensile strength in MPa; undefined for a word that is no family's. */
export function classOfFamilyAt(word: string, tensileMpa: number): StrengthClass | undefined {
  const family = familyOfWord(word);
  return family === undefined ? undefined : classInFamily(family, tensileMpa, undefined);
}

function familyOfWord(word: string): SteelFamily | undefined {
  return Object.values(families).find((family) => family.word === word);
}
