import { designationKey } from './designation-key.ts';
import { worseMark } from './grade-row.ts';
import type { Material } from './material.ts';
import { steelRank } from './strength-class.ts';

/** Joins readings that differ in nothing but the standard, and puts the strongest first. */
export function mergeReadings(materials: readonly Material[]): readonly Material[] {
  const [only] = materials;
  if (only !== undefined && materials.length === 1) return materials;
  const byContent = new Map<string, Material>();
  for (const material of materials) {
    const { standard, mark, designation, ...content } = material;
    const id = JSON.stringify([
      designationKey(designation),
      Object.entries(content).sort(([a], [b]) => (a < b ? -1 : 1)),
    ]);
    const same = byContent.get(id);
    if (same === undefined) byContent.set(id, material);
    else {
      byContent.set(id, {
        ...same,
        standard: `${same.standard} / ${standard}`,
        mark: worseMark(same.mark, mark),
      });
    }
  }
  return strongestFirst([...byContent.values()]);
}

export function strongestFirst(materials: readonly Material[]): readonly Material[] {
  return materials.toSorted(
    (a, b) =>
      (steelRank(b.class) ?? 0) - (steelRank(a.class) ?? 0) ||
      (b.tensileMinMpa ?? 0) - (a.tensileMinMpa ?? 0),
  );
}
