import type { Coating } from '../coating/coating.ts';
import type { CoatingMass } from '../coating/coating-mass.ts';
import type { CoatingMeaning } from './coating-meaning.ts';
import type { StrengthEquivalents } from './equivalents.ts';
import type { GradeMark, GradeState } from '../table/grade-row.ts';
import type { Hardness } from '../strength/hardness.ts';
import type { MaterialOrigin } from '../material.ts';
import type { StrengthClass } from '../strength-class.ts';
import type { Weldability } from './weldability.ts';

export interface StrengthRange {
  readonly min: number | null;
  readonly max: number | null;
  readonly unit: 'MPa';
}

/** One way to read a designation. */
export interface ReadingAnswer {
  readonly designation: string;
  readonly standard: string;
  readonly class: StrengthClass;
  /** The weakest class that a class word covers. */
  readonly weakest_class: StrengthClass | null;
  readonly family: string;
  readonly tensile: StrengthRange | null;
  readonly yield: StrengthRange | null;
  readonly coating: Coating | null;
  readonly condition: GradeState;
  readonly mark: GradeMark;
  readonly from: MaterialOrigin;
}

/** What a designation is: the form of `planish steel --format json`. What is not known is null. */
export interface DesignationAnswer {
  readonly given: string;
  readonly known: 'known' | 'ambiguous' | 'unknown';
  /** True where several standards share the name and all readings have the same class and family: no work hangs on which it is. */
  readonly same_class: boolean;
  /** False for a text that cannot be a designation at all: empty, unprintable, several grades in one. */
  readonly usable: boolean;
  /** The class that counts: the strongest of all readings. */
  readonly class: StrengthClass | null;
  readonly weakest_class: StrengthClass | null;
  readonly family: string | null;
  readonly tensile: StrengthRange | null;
  /** When the minimum tensile strength holds, as "ordered with T"; null where it always does. */
  readonly tensile_only_if: string | null;
  readonly yield: StrengthRange | null;
  /** What is usual, not promised, in MPa: body aluminium before and after the paint oven. */
  readonly typical: {
    readonly yield: number | null;
    readonly tensile: number | null;
    readonly unit: 'MPa';
  } | null;
  readonly coating: Coating | null;
  readonly coating_mass: CoatingMass | null;
  readonly coating_means: CoatingMeaning | null;
  /** Whether the part counts as hardened on the body. */
  readonly hardened: boolean | null;
  readonly condition: GradeState | null;
  readonly standard: string | null;
  readonly mark: GradeMark | null;
  readonly number_means: string | null;
  /** Sheet thickness for which the standard is written, in mm. */
  readonly thickness: { readonly min: number; readonly max: number; readonly unit: 'mm' } | null;
  /** The minimum tensile strength, or the strength that is stated without a grade, in other units. */
  readonly equivalents: StrengthEquivalents | null;
  /** Approximate, by ISO 18265. */
  readonly hardness: Hardness | null;
  readonly carbon_equivalents: Weldability | null;
  readonly blank: readonly string[] | null;
  readonly laminated: boolean;
  readonly readings: readonly ReadingAnswer[];
  /** Why it is ambiguous or unknown, and what would settle it. */
  readonly reason: string | null;
  /** What was taken for granted. */
  readonly note: string | null;
  readonly warnings: readonly string[];
  readonly nearest: readonly string[];
}
