import type { Coating } from './coating.ts';
import type { GradeMark, GradeRow, GradeState } from './grade-row.ts';
import { classInFamily, steelFamily } from './steel-family.ts';
import type { StrengthClass } from './strength-class.ts';

export interface Material {
  readonly designation: string;
  /** Standard and year; several, joined by " / ", where they list the grade alike. */
  readonly standard: string;
  /** Family in trade words: 'dual-phase', 'press-hardening steel', 'bake-hardening', … */
  readonly family: string;
  readonly class: StrengthClass;
  readonly tensileMinMpa?: number;
  readonly tensileMaxMpa?: number;
  readonly yieldMinMpa?: number;
  readonly yieldMaxMpa?: number;
  readonly coating?: Coating;
  readonly condition: GradeState;
  /** Whether the row was seen in a public copy of the standard, is from memory, or is trade practice. */
  readonly mark: GradeMark;
}

export function materialOfRow(row: GradeRow, coating: Coating | undefined): Material {
  const { designation, standard, familyKey, state, mark, ...strengths } = row;
  const family = steelFamily(familyKey);
  return {
    designation,
    standard,
    family: family.word,
    class: classInFamily(family, strengths.tensileMinMpa, strengths.yieldMinMpa),
    ...strengths,
    ...(coating === undefined ? {} : { coating }),
    condition: state,
    mark,
  };
}
