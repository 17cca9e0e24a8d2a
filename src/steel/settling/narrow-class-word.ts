import type { Material } from '../material.ts';
import type { StrengthClass } from '../strength-class.ts';
import { classOfTensile, pressHardenedFromMpa, steelRank } from '../strength-class.ts';

/**
 * A class word ("high tensile") beside a stated class or tensile strength: what lies inside the range of the word takes its
 * place. Outside of it nothing is narrowed, since the two contradict each other.
 */
export function narrowClassWord(
  material: Material,
  tensileMpa: number | undefined,
  statedClass: StrengthClass | undefined,
): Material {
  if (material.weakestClass === undefined) return material;
  const { weakestClass, ...word } = material;
  const band =
    tensileMpa === undefined || tensileMpa >= pressHardenedFromMpa ? undefined : classOfTensile(tensileMpa);
  const inside = [statedClass, band].filter((one) => one !== undefined);
  if (inside.length === 0) return material;
  const ranks = inside.map((one) => steelRank(one) ?? -1);
  const low = steelRank(weakestClass) ?? 0;
  const high = steelRank(material.class) ?? 0;
  if (ranks.some((rank) => rank < low || rank > high)) return material;
  const [first, second] = inside;
  if (first === undefined) return material;
  const counts = second === undefined || (ranks[0] ?? 0) >= (ranks[1] ?? 0) ? first : second;
  return { ...word, class: counts };
}
