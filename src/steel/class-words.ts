import type { Material } from './material.ts';
import type { StrengthClass } from './strength-class.ts';

/** From the weakest to the strongest class that a word covers, depending on who speaks. */
export interface ClassRange {
  readonly word: string;
  readonly weakest: StrengthClass;
  readonly strongest: StrengthClass;
}

/**
 * Words for strength by comparison key. Where a class begins is not agreed: application guidelines of the steel industry count
 * martensitic and press-hardened steel among the advanced ones, older body design begins ultra-high at 550 MPa yield, and
 * "high tensile" of the workshop is all that is not mild. So each reaches up to press-hardened. Common practice.
 */
const ranges: readonly (readonly [spellings: RegExp, range: ClassRange])[] = [
  [
    /^(?:HSS|HTS|HTSS|HIGHSTRENGTH(?:STEEL)?|HIGHTENSILE(?:STEEL)?)$/,
    { word: 'high-strength', weakest: 'high-strength', strongest: 'press-hardened' },
  ],
  [
    /^(?:AHSS|ADVANCEDHIGHSTRENGTH(?:STEEL)?)$/,
    { word: 'advanced high-strength', weakest: 'advanced high-strength', strongest: 'press-hardened' },
  ],
  [
    /^(?:UHSS|VHSS|EHSS|XHSS|(?:ULTRA|VERY|EXTRA|SUPER)HIGH(?:STRENGTH|TENSILE)(?:STEEL)?)$/,
    { word: 'ultra-high-strength', weakest: 'advanced high-strength', strongest: 'press-hardened' },
  ],
  [
    /^(?:GIGAPASCAL|GPA|GIGA)(?:STEEL)$/,
    { word: 'gigapascal', weakest: 'ultra-high-strength', strongest: 'press-hardened' },
  ],
];

/** The material that a class word stands for: the strongest class of its range. Undefined for any other text. */
export function classWord(key: string): Material | undefined {
  const range = ranges.find(([spellings]) => spellings.test(key))?.[1];
  if (range === undefined) return undefined;
  return {
    designation: range.word,
    standard: 'word of the trade',
    family: 'class word without a grade',
    class: range.strongest,
    weakestClass: range.weakest,
    condition: 'unknown',
    mark: 'practice',
    from: 'trade word',
  };
}
