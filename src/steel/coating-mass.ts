import { designationKey } from './designation-key.ts';

export interface CoatingMass {
  readonly grams: number;
  readonly counted: 'both sides together' | 'each side';
}

/**
 * Mass of a metallic coating in g/m², as the designation counts it: EN 10346 both sides together (+Z100), EN 10152 in tenths of
 * a micrometre of zinc each side (+ZE50/50), VDA 239-100 and the Japanese federation each side (GI50/50, 45/45), JIS in tens of
 * grams on both (Z27 is 275). Undefined where none is written.
 */
export function coatingMass(text: string): CoatingMass | undefined {
  const key = designationKey(text);
  const electro = /\+ZE(\d{2,3})\/\d{2,3}/.exec(key)?.[1];
  if (electro !== undefined)
    return { grams: Math.round((Number(electro) / 10) * zincGramsPerMicrometre), counted: 'each side' };
  const european = /(?:\+(?:ZF|ZA|ZM|AZ|AS|Z)|(?<=[A-Z])(?:AS|Z)(?=\d{3}))(\d{2,3})(?!\d|\/)/.exec(key)?.[1];
  if (european !== undefined && key.includes('+'))
    return { grams: Number(european), counted: 'both sides together' };
  const side =
    /(?:GI|GA|EG|ZM|AS|AZ|ZA)(\d{2,3})\/\d{2,3}/.exec(key)?.[1] ??
    /^J[SA][CH].*?(\d{2})\/\d{2}$/.exec(key)?.[1];
  if (side !== undefined) return { grams: Number(side), counted: 'each side' };
  const japanese = /^S(?:GC|GH|GMC|GMH|G).*[ZFK](\d{2})$/.exec(key)?.[1];
  return japanese === undefined
    ? undefined
    : { grams: japanese === '27' ? 275 : Number(japanese) * 10, counted: 'both sides together' };
}

/** Zinc has 7.14 g/cm³. */
const zincGramsPerMicrometre = 7.14;
