/** A metal as the formulas for one weld pass need it. */
export interface WeldMetal {
  /** Where the metal is all molten, °C. The higher, the hotter the neighbour comes out. */
  readonly meltCelsius: number;
  /** Density times specific heat, J/(mm³·K). The lower, the hotter the neighbour comes out. */
  readonly joulePerMm3K: number;
}

/**
 * Steel: figures of the worked example in the Welding Handbook (from memory).
 *
 * Aluminium: the upper end of the melting range of 6082, and density times specific heat of EN 1999-1-2 below
 * 100 °C; its mean up to melting is a tenth higher, so this errs high.
 *
 * Stainless (austenitic) and magnesium: upper end of the melting ranges printed in public property tables (1420 to
 * 1450, 600 °C; magnesium taken as the pure metal, 650), and the density times specific heat of cold metal, rounded
 * down: EN 1993-1-2 annex C (from memory) gives 0.0036, tables print 1.6 to 1.7 g/cm³ and 990 J/(kg·K). Both rise
 * with temperature, so both err high.
 */
export const weldMetals = {
  steel: { meltCelsius: 1510, joulePerMm3K: 0.0044 },
  aluminium: { meltCelsius: 650, joulePerMm3K: 0.0025 },
  stainless: { meltCelsius: 1455, joulePerMm3K: 0.0035 },
  magnesium: { meltCelsius: 650, joulePerMm3K: 0.0016 },
} as const satisfies Readonly<Record<string, WeldMetal>>;

export type WeldMetalName = keyof typeof weldMetals;
