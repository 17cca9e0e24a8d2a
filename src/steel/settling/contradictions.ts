import type { Material } from '../material.ts';
import { steelFamilyFloor } from '../steel-family.ts';
import type { StrengthClass } from '../strength-class.ts';
import { classOfTensile, pressHardenedFromMpa, steelRank } from '../strength-class.ts';
import { classFitsStrength, strengthFits } from '../strength/strength-fit.ts';

export interface Contradiction {
  readonly between: readonly ('grade' | 'strength' | 'class')[];
  readonly sentence: string;
}

export interface Stated {
  readonly readings: readonly Material[];
  readonly tensileMpa?: number;
  readonly class?: StrengthClass;
}

/** What in a statement of grade, strength and class cannot all be true of one part. */
export function contradictions(stated: Stated): readonly Contradiction[] {
  const { readings, tensileMpa, class: statedClass } = stated;
  const [first] = readings;
  const found: Contradiction[] = [];
  const fits =
    tensileMpa === undefined || first === undefined || readings.some((one) => strengthFits(one, tensileMpa));
  if (first !== undefined && tensileMpa !== undefined && !fits) {
    found.push({
      between: ['grade', 'strength'],
      sentence: `${named(first)} ${standsAt(first)}, but the strength is stated as ${tensileMpa} MPa.${deliveredHint(first, tensileMpa)}`,
    });
  }
  if (statedClass === undefined) return found;
  const agrees =
    first !== undefined &&
    readings.some((one) => classAgrees(one, statedClass, fits ? tensileMpa : undefined));
  if (first !== undefined && !agrees) {
    found.push({
      between: ['grade', 'class'],
      sentence: `${named(first)} ${first.weakestClass === undefined ? `is ${first.class}` : standsAt(first)}, but the class is stated as ${statedClass}.`,
    });
  }
  if (tensileMpa !== undefined && !(agrees && fits) && !classFitsStrength(statedClass, tensileMpa)) {
    const band =
      steelRank(statedClass) === undefined
        ? 'more than it can reach'
        : `that of ${classOfTensile(tensileMpa)} steel`;
    found.push({
      between: ['strength', 'class'],
      sentence: `The class is stated as ${statedClass}, but the strength, ${tensileMpa} MPa, is ${band}.`,
    });
  }
  return found;
}

/** The class of the grade, of its family (DP980 is advanced by family, ultra by strength), or of its tensile band. */
function classAgrees(material: Material, stated: StrengthClass, tensileMpa: number | undefined): boolean {
  if (stated === material.class) return true;
  // A bare strength names no family that could begin lower.
  if (material.from !== 'strength' && stated === steelFamilyFloor(material.family)) return true;
  if (steelRank(material.class) === undefined) return false;
  if (stated === 'ultra-high-strength' && isUltraForSome(material)) return true;
  return [material.tensileMinMpa, tensileMpa].some(
    (mpa) => mpa !== undefined && classOfTensile(mpa) === stated,
  );
}

/** From 690 MPa some bodies call a steel ultra-high-strength whatever its family (ASTM A1011, UHSS Grade 90); the stronger word counts. */
function isUltraForSome({ class: own, tensileMinMpa, yieldMinMpa }: Material): boolean {
  return own === 'advanced high-strength' && (tensileMinMpa ?? yieldMinMpa ?? 0) >= ultraForSomeMpa;
}

const ultraForSomeMpa = 690;

/** The grade at the head of a sentence; a trade word gets its capital. */
function named(material: Material): string {
  const { designation } = material;
  if (material.weakestClass !== undefined) return `What "${designation}" stands for`;
  if (!/\d/.test(designation)) return designation.charAt(0).toUpperCase() + designation.slice(1);
  return material.class === 'press-hardened' ? `${designation} (${material.condition})` : designation;
}

function standsAt(material: Material): string {
  const { tensileMinMpa, tensileMaxMpa, yieldMinMpa, weakestClass } = material;
  if (weakestClass !== undefined) return `covers ${weakestClass} to ${material.class}`;
  if (tensileMinMpa !== undefined) {
    return tensileMaxMpa === undefined
      ? `has at least ${tensileMinMpa} MPa tensile strength`
      : `has ${tensileMinMpa}–${tensileMaxMpa} MPa tensile strength`;
  }
  if (tensileMaxMpa !== undefined) return `has at most ${tensileMaxMpa} MPa tensile strength`;
  if (yieldMinMpa !== undefined) return `has at least ${yieldMinMpa} MPa yield strength`;
  return `is ${material.class}`;
}

function deliveredHint(material: Material, tensileMpa: number): string {
  if (material.class !== 'press-hardened' || tensileMpa >= pressHardenedFromMpa) return '';
  if (material.weakestClass !== undefined) return '';
  return ' That may be its strength before hardening; on the body it counts as hardened.';
}
