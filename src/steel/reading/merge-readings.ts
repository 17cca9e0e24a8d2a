import { designationKey } from '../designation-key.ts';
import { worseMark } from '../table/grade-row.ts';
import type { Material } from '../material.ts';
import { steelRank } from '../strength-class.ts';

/** All that a reading says beside its name, its standard, its mark and the mass of its coating. */
const compared = [
  'family',
  'class',
  'weakestClass',
  'tensileMinMpa',
  'tensileMaxMpa',
  'yieldMinMpa',
  'yieldMaxMpa',
  'yieldTypicalMpa',
  'tensileTypicalMpa',
  'tensileMinOnlyIf',
  'coating',
  'condition',
  'from',
] as const satisfies readonly (keyof Material)[];

/** Joins readings that differ in nothing but the standard, and puts the strongest first. */
export function mergeReadings(materials: readonly Material[]): readonly Material[] {
  const [only] = materials;
  if (only !== undefined && materials.length === 1) return materials;
  const merged: Material[] = [];
  for (const material of materials) {
    const at = merged.findIndex((one) => sayTheSame(one, material));
    const same = merged[at];
    if (same === undefined) merged.push(material);
    else {
      merged[at] = {
        ...same,
        standard: `${same.standard} / ${material.standard}`,
        mark: worseMark(same.mark, material.mark),
      };
    }
  }
  return strongestFirst(merged);
}

function sayTheSame(one: Material, other: Material): boolean {
  return (
    compared.every((name) => one[name] === other[name]) &&
    one.coatingMass?.grams === other.coatingMass?.grams &&
    one.coatingMass?.counted === other.coatingMass?.counted &&
    designationKey(one.designation) === designationKey(other.designation)
  );
}

export function strongestFirst(materials: readonly Material[]): readonly Material[] {
  return materials.toSorted(
    (a, b) =>
      (steelRank(b.class) ?? 0) - (steelRank(a.class) ?? 0) ||
      (b.tensileMinMpa ?? 0) - (a.tensileMinMpa ?? 0),
  );
}
