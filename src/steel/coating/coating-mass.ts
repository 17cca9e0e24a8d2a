export interface CoatingMass {
  readonly grams: number;
  readonly counted: 'both sides together' | 'each side';
}

/** How a standard writes the mass of a metallic coating behind a grade. */
export type MassNotation =
  /** EN 10346 and GB/T 2518: g/m² on both sides together, Z100; EN 10152: tenths of a micrometre each side, ZE50/50. */
  | 'european'
  /** VDA 239-100 and the Japanese federation: g/m² each side, GI50/50, 45/45. */
  | 'each side'
  /** JIS G 3302 and G 3323: tens of g/m² on both sides together, Z27 (which is 275). */
  | 'japanese'
  /** ASTM A653, A463, A792: hundredths of an ounce a square foot on both sides together, G60, A40, T1-40, AZ50. */
  | 'american';

export interface WrittenMass {
  readonly code: string;
  readonly first: string;
  readonly second?: string;
  readonly notation: MassNotation;
}

/** Zinc has 7.14 g/cm³. */
const zincGramsPerMicrometre = 7.14;

/** Avoirdupois ounce and foot by NIST SP 811: 1 oz/ft² is 305.15 g/m². */
const gramsPerOunceOnSquareFoot = 305.15;

/** Of a coating written in full; a mass in hundredths of an ounce is rounded to whole grams. */
export function coatingMass({ code, first, notation }: WrittenMass): CoatingMass {
  const figure = Number(first);
  if (notation === 'each side') return { grams: figure, counted: 'each side' };
  if (notation === 'japanese')
    return { grams: figure === 27 ? 275 : figure * 10, counted: 'both sides together' };
  if (notation === 'american')
    return { grams: Math.round((figure / 100) * gramsPerOunceOnSquareFoot), counted: 'both sides together' };
  return code === 'ZE' || code === 'ZN'
    ? { grams: Math.round((figure / 10) * zincGramsPerMicrometre), counted: 'each side' }
    : { grams: figure, counted: 'both sides together' };
}

/**
 * Masses by coating code that sheet is ordered in, from memory of EN 10346, GB/T 2518, EN 10152, EN 10271, JIS G 3302 and G 3323,
 * and ASTM A653, A463 and A792. The steps of cold hardening (C290, C340, C390, C440, C490, C590, C690) are none of them, so that Z for C is found.
 */
const listed: Readonly<
  Record<Exclude<MassNotation, 'each side'>, Readonly<Record<string, readonly number[]>>>
> = {
  european: {
    Z: [
      50, 60, 70, 80, 90, 100, 110, 120, 130, 140, 150, 160, 180, 200, 220, 225, 250, 275, 300, 350, 450, 600,
    ],
    ZF: [60, 70, 75, 80, 90, 100, 110, 120, 140, 180],
    ZA: [60, 70, 80, 90, 95, 120, 130, 150, 185, 200, 255, 300],
    ZM: [
      40, 50, 60, 70, 80, 90, 100, 110, 120, 130, 140, 150, 160, 175, 180, 190, 200, 220, 250, 275, 300, 310,
      430,
    ],
    AZ: [50, 60, 70, 80, 90, 100, 120, 150, 165, 170, 185, 200],
    AS: [40, 50, 60, 80, 100, 120, 150, 180, 200],
    T1: [40, 75, 120, 180, 300],
    T2: [75, 90, 135, 195, 300],
    ZE: [0, 10, 15, 20, 25, 30, 35, 40, 50, 60, 75, 80, 100],
    ZN: [0, 20, 25, 30, 40, 50, 60, 75, 100],
  },
  japanese: {
    Z: [6, 8, 10, 12, 14, 18, 20, 22, 25, 27, 35, 37, 43, 45, 50, 55, 60],
    F: [4, 6, 8, 10, 12, 18],
    K: [4, 6, 8, 10, 12, 14, 18, 20, 22, 25, 27, 35, 43, 45],
  },
  american: {
    G: [1, 20, 30, 40, 50, 60, 65, 70, 75, 90, 100, 115, 140, 165, 185, 210, 235, 300, 360],
    A: [1, 25, 40, 60],
    T1: [13, 25, 40, 60, 100],
    T2: [25, 30, 45, 65, 100],
    AZ: [30, 35, 40, 50, 55, 60, 70],
  },
};

/** Each side in g/m²; the table of VDA 239-100 was not seen, its coatings in use lie between 18 and 140. */
const eachSide = { least: 10, most: 150 };

/** Whether sheet is ordered with such a mass. */
export function isListedMass({ code, first, second, notation }: WrittenMass): boolean {
  return [first, second].every((text) => {
    if (text === undefined) return true;
    const figure = Number(text);
    if (notation === 'each side') return figure >= eachSide.least && figure <= eachSide.most;
    return Object.hasOwn(listed[notation], code) && listed[notation][code]?.includes(figure) === true;
  });
}
