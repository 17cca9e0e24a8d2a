import type { Material } from '../material.ts';
import { pressHardenedFromMpa } from '../strength-class.ts';
import { materialOfYield, materialsOfEither, materialsOfTensile } from './strength-materials.ts';
import type { StatedStrength } from './strength-name.ts';
import { statedStrength } from './strength-name.ts';
import type { StrengthReading } from './strength-reading.ts';
import { readStrengthPair } from './strength-pair.ts';

/** Undefined for a text that states no strength with its unit. A strength never tells the family, so it is never sure. */
export function readStrength(shown: string): StrengthReading | undefined {
  const stated = statedStrength(shown);
  if (stated === undefined) return readStrengthPair(shown);
  if (stated.absurd)
    return {
      reason: `${shown} is no strength that sheet steel has (200 to 2500 MPa). State the tensile strength with its unit, as "1500 MPa".`,
    };
  if (stated.onlyMost === true)
    return {
      reason: `${shown} limits the strength from above only, which does not say how strong the steel is. State the grade, or the minimum tensile strength.`,
    };
  return { mpa: stated.mpa, readings: readingsOf(stated, shown), ...doubts(stated, shown) };
}

function readingsOf({ of, mpa, maxMpa, upToMpa }: StatedStrength, shown: string): readonly Material[] {
  if (of === 'tensile') return materialsOfTensile(shown, mpa, maxMpa, upToMpa);
  return of === 'yield' ? [materialOfYield(shown, mpa)] : materialsOfEither(shown, mpa, maxMpa, upToMpa);
}

function doubts(
  { of, mpa, maxMpa }: StatedStrength,
  shown: string,
): { readonly ambiguity: string; readonly assumed: readonly string[] } {
  const counts = 'The strongest reading counts; state the grade.';
  if (of === 'yield')
    return { ambiguity: `"${shown}" is a yield, not a grade: it names no family. ${counts}`, assumed: [] };
  const assumed = [`${shown} is taken as the minimum tensile strength where strengths are converted.`];
  if ((maxMpa ?? mpa) >= pressHardenedFromMpa)
    return {
      ambiguity: `"${shown}" is a strength, not a grade: it names no family, so it could be martensitic or press-hardened. The stronger counts; state the grade.`,
      assumed,
    };
  return {
    ambiguity:
      of === 'tensile'
        ? `"${shown}" is a tensile strength, not a grade: it names no family. ${counts}`
        : `"${shown}" is a strength, not a grade: it names no family, and a sheet may quote the yield as well as the tensile strength. ${counts}`,
    assumed,
  };
}
