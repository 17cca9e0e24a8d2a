import type { Material } from '../material.ts';
import { steelFamily } from '../steel-family.ts';
import type { StrengthClass } from '../strength-class.ts';

/** From the weakest to the strongest class that a word covers, depending on who speaks. */
interface ClassRange {
  readonly word: string;
  /** Key of the family table where the word names a family; left out for a word of strength alone. */
  readonly familyKey?: string;
  readonly weakest: StrengthClass;
  readonly strongest: StrengthClass;
}

/**
 * Words for strength by comparison key. Where a class begins is not agreed: application guidelines of the steel industry count
 * martensitic and press-hardened steel among the advanced ones, older body design begins ultra-high at 550 MPa yield, and
 * "high tensile" of the workshop is all that is not mild. So each reaches up to press-hardened. A word for a family covers the
 * classes that its grades have in the table of grades. Common practice.
 */
const ranges: readonly (readonly [spellings: RegExp, range: ClassRange])[] = [
  [
    /^(?:HSS?|HTS|HTSS|HIGHSTRENGTH|HIGHTENSILE|HITENSILE|HI(?:GH)?TEN)$/,
    { word: 'high-strength', weakest: 'high-strength', strongest: 'press-hardened' },
  ],
  [
    /^(?:AHSS?|ADVANCEDHIGHSTRENGTH)$/,
    { word: 'advanced high-strength', weakest: 'advanced high-strength', strongest: 'press-hardened' },
  ],
  [
    /^(?:[UVEX]HSS?|UHTS|(?:ULTRA|VERY|EXTRA|SUPER)HIGH(?:STRENGTH|TENSILE))$/,
    { word: 'ultra-high-strength', weakest: 'advanced high-strength', strongest: 'press-hardened' },
  ],
  [
    /^(?:GIGAPASCAL|GPA|GIGA)$/,
    { word: 'gigapascal', weakest: 'ultra-high-strength', strongest: 'press-hardened' },
  ],
  [
    /^(?:3RDGEN(?:ERATION)?|THIRDGEN(?:ERATION)?|GEN3|3G)(?:AHSS|ADVANCEDHIGHSTRENGTH)?$/,
    { word: 'third-generation', weakest: 'advanced high-strength', strongest: 'press-hardened' },
  ],
  [
    /^(?:HSLA|(?:HIGHSTRENGTH)?LOWALLOY|MICROALLOYED|MICROALLOY)$/,
    { word: 'low-alloy', familyKey: 'hsla', weakest: 'high-strength', strongest: 'ultra-high-strength' },
  ],
  [
    /^(?:DP|DUALPHASE)$/,
    {
      word: 'dual-phase',
      familyKey: 'dual_phase',
      weakest: 'advanced high-strength',
      strongest: 'ultra-high-strength',
    },
  ],
  [
    /^(?:TRIP|TRANSFORMATIONINDUCEDPLASTICITY)$/,
    { word: 'TRIP', familyKey: 'trip', weakest: 'advanced high-strength', strongest: 'ultra-high-strength' },
  ],
  [
    /^(?:TWIP)$/,
    { word: 'TWIP', familyKey: 'twip', weakest: 'advanced high-strength', strongest: 'ultra-high-strength' },
  ],
  [
    /^(?:CP|COMPLEXPHASE|MULTIPHASE)$/,
    {
      word: 'complex-phase',
      familyKey: 'complex_phase',
      weakest: 'advanced high-strength',
      strongest: 'ultra-high-strength',
    },
  ],
  [
    /^(?:QP|QUENCHANDPARTITION(?:ED|ING)?)$/,
    {
      word: 'quench-and-partition',
      familyKey: 'quench_partition',
      weakest: 'advanced high-strength',
      strongest: 'ultra-high-strength',
    },
  ],
  [
    // Hardened boron steel is martensite too.
    /^(?:MS|MART|MARTENSITIC|MARTENSITE)$/,
    {
      word: 'martensitic',
      familyKey: 'martensitic',
      weakest: 'ultra-high-strength',
      strongest: 'press-hardened',
    },
  ],
  [
    /^(?:FB|FERRITEBAINITE|FERRITICBAINITIC)$/,
    {
      word: 'ferrite-bainite',
      familyKey: 'ferrite_bainite',
      weakest: 'advanced high-strength',
      strongest: 'advanced high-strength',
    },
  ],
  [
    /^(?:BH|BAKEHARDEN(?:ING|ABLE|ED))$/,
    {
      word: 'bake-hardening',
      familyKey: 'bake_hardening',
      weakest: 'high-strength',
      strongest: 'high-strength',
    },
  ],
  [
    // Soft deep-drawing sheet such as DC06 is interstitial-free as well.
    /^(?:IF|INTERSTITIALFREE)$/,
    {
      word: 'interstitial-free',
      familyKey: 'high_strength_if',
      weakest: 'mild',
      strongest: 'high-strength',
    },
  ],
];

/** What stands for the standard of a class word. */
export const wordOfTheTrade = 'word of the trade';

/** The material that a class word stands for: the strongest class of its range. Undefined for any other text. */
export function classWord(key: string): Material | undefined {
  const bare = key.replaceAll('.', '').replace(/(?:STEEL|SHEET)S?$/, '');
  const range = ranges.find(([spellings]) => spellings.test(bare))?.[1];
  if (range === undefined || (bare === key && /^(?:GPA|3G|HS)$/.test(bare))) return undefined;
  return {
    designation: range.word,
    standard: wordOfTheTrade,
    family: range.familyKey === undefined ? 'class word without a grade' : steelFamily(range.familyKey).word,
    class: range.strongest,
    weakestClass: range.weakest,
    condition: 'unknown',
    mark: 'practice',
    from: 'trade word',
  };
}
