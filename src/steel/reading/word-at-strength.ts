import type { KnownDesignation } from './known-designation.ts';
import { noteOf } from './known-designation.ts';
import { readOne } from './read-one.ts';
import { steelFamily } from '../steel-family.ts';
import type { StrengthClass } from '../strength-class.ts';
import { steelRank } from '../strength-class.ts';
import { strengthFits } from '../strength/strength-fit.ts';

/** Letters by which the trade names a family with one figure, by the word of the family. */
const letters: ReadonlyMap<string, string> = new Map(
  (
    [
      ['dual_phase', 'DP'],
      ['trip', 'TRIP'],
      ['twip', 'TWIP'],
      ['complex_phase', 'CP'],
      ['quench_partition', 'QP'],
      ['ferrite_bainite', 'FB'],
      ['hsla', 'HSLA'],
      ['bake_hardening', 'BH'],
      ['high_strength_if', 'IF'],
      ['press_hardening', 'PHS'],
    ] as const
  ).map(([key, short]) => [steelFamily(key).word, short]),
);

/** Below this a press-hardened word with a figure may speak of the sheet before hardening or of a soft zone, in MPa. */
const hardenedFromMpa = 900;

/** The word for the strongest, and the least yield from which any body speaks of it, in MPa (older body design). */
const ultraWord = 'ultra-high-strength';
const ultraFromMpa = 550;

/**
 * A word of the trade with a strength beside it: `dual phase 780` is DP780, `boron 1500 MPa` PHS1500; of `UHSS 1500` the readings of the
 * strength that the word covers. Undefined where the two do not go together.
 */
export function wordAtStrength(
  word: KnownDesignation,
  strength: KnownDesignation,
  texts: { readonly word: string; readonly strength: string },
): KnownDesignation | undefined {
  const [named] = word.readings;
  if (named === undefined || word.readings.length > 1) return undefined;
  const tensile = strength.readings.find((one) => one.tensileMinMpa !== undefined);
  const mpa = strength.statedMpa ?? tensile?.tensileMinMpa;
  const short = letters.get(named.family);
  if (mpa !== undefined && tensile !== undefined && short !== undefined) {
    const isSoft = short === 'PHS' && mpa < hardenedFromMpa;
    const grade = isSoft ? undefined : readOne(`${short}${mpa}`);
    if (grade?.known === true) return grade;
  }
  if (steelRank(named.class) === undefined)
    return mpa !== undefined && strengthFits(named, mpa) ? word : undefined;
  const isCovered = strength.readings.every(
    (one) =>
      rankOf(one.class) >= rankOf(named.weakestClass ?? named.class) &&
      rankOf(one.class) <= rankOf(named.class),
  );
  const isTooSoft = named.designation === ultraWord && (mpa ?? 0) < ultraFromMpa;
  if (named.weakestClass === undefined || !isCovered || isTooSoft) return undefined;
  const ambiguity = `"${texts.word}" and "${texts.strength}" go together and name no grade. The strongest that both cover counts; state the grade.`;
  return {
    ...strength,
    ambiguity,
    ...noteOf(strength.assumed === undefined ? [] : [strength.assumed], ambiguity),
  };
}

function rankOf(of: StrengthClass): number {
  return steelRank(of) ?? -1;
}
