import type { Coating } from './coating/coating.ts';
import type { CoatingMass } from './coating/coating-mass.ts';
import type { GradeMark, GradeRow, GradeState } from './table/grade-row.ts';
import { classInFamily, steelFamily } from './steel-family.ts';
import type { StrengthClass } from './strength-class.ts';

/** How a designation was read: a row of the table, the way its standard forms names, a word of the trade, or a number. */
export type MaterialOrigin = 'table' | 'grammar' | 'trade word' | 'strength';

export interface Material {
  readonly designation: string;
  /** Standard and year; several, joined by " / ", where they list the grade alike. */
  readonly standard: string;
  /** Family in trade words: 'dual-phase', 'press-hardening steel', 'bake-hardening', … */
  readonly family: string;
  /** The class that counts: the strongest that the designation allows. */
  readonly class: StrengthClass;
  /** The weakest class that a word such as "high tensile" also covers; left out where the class is the only one. */
  readonly weakestClass?: StrengthClass;
  readonly tensileMinMpa?: number;
  readonly tensileMaxMpa?: number;
  readonly yieldMinMpa?: number;
  readonly yieldMaxMpa?: number;
  /** What is usual, not promised. */
  readonly yieldTypicalMpa?: number;
  readonly tensileTypicalMpa?: number;
  /** When the minimum tensile strength holds, as "ordered with T"; left out where it always does. */
  readonly tensileMinOnlyIf?: string;
  readonly coating?: Coating;
  readonly coatingMass?: CoatingMass;
  readonly condition: GradeState;
  /** Whether the row was seen in a public copy of the standard, is from memory, or is trade practice. */
  readonly mark: GradeMark;
  readonly from: MaterialOrigin;
}

export function materialOfRow(
  row: GradeRow,
  { coating, mass }: { readonly coating?: Coating; readonly mass?: CoatingMass },
  from: MaterialOrigin,
): Material {
  const bare = materialOfBareRow(row, from);
  if (coating === undefined && mass === undefined) return bare;
  return {
    ...bare,
    ...(coating === undefined ? {} : { coating }),
    ...(mass === undefined ? {} : { coatingMass: mass }),
  };
}

/** Rows of the table are asked for again and again, and nothing of them changes. */
const made = new WeakMap<GradeRow, Material>();

function materialOfBareRow(row: GradeRow, from: MaterialOrigin): Material {
  const known = made.get(row);
  if (known?.from === from) return known;
  const { designation, standard, familyKey, state, mark, ...strengths } = row;
  const family = steelFamily(familyKey);
  const material = {
    designation,
    standard,
    family: family.word,
    class: classInFamily(family, strengths.tensileMinMpa, strengths.yieldMinMpa),
    ...strengths,
    condition: state,
    mark,
    from,
  };
  made.set(row, material);
  return material;
}
